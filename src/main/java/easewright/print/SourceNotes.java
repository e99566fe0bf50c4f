package easewright.print;

import easewright.text.NoteNumbers;
import easewright.text.Words;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sources as numbered notes, each told once however often it is referred to. */
public final class SourceNotes {
    private final Words words;
    private final NoteNumbers<String> sources = new NoteNumbers<>();
    private final Map<String, Map<String, Set<String>>> levelsByStanding = new LinkedHashMap<>();

    public SourceNotes(Words words) {
        this.words = words;
    }

    /**
     * The mark of a source, such as {@code [2]}.
     *
     * @param standing how well the figure is known
     * @param level    where the figure is for; told only where figures of one source differ in standing
     */
    String mark(String source, String standing, String level) {
        levelsByStanding
                .computeIfAbsent(source, s -> new LinkedHashMap<>())
                .computeIfAbsent(standing, s -> new LinkedHashSet<>())
                .add(level);
        return sources.mark(source);
    }

    /** Each source behind its mark, with how well its figures are known: which of them, where they differ in that. */
    public List<String> lines() {
        return sources.lines(this::told);
    }

    private String told(String source) {
        Map<String, Set<String>> standings = levelsByStanding.get(source);
        String told = source;
        for (Map.Entry<String, Set<String>> each : standings.entrySet()) {
            String known = words.known(told, each.getKey());
            if (!known.equals(told) && standings.size() > 1) {
                known = words.of("ease.source-at", Map.of("source", known, "levels", List.copyOf(each.getValue())));
            }
            told = known;
        }
        return told;
    }
}
