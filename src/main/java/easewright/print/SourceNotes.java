package easewright.print;

import easewright.text.NoteNumbers;
import easewright.text.Words;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Sources as numbered notes, each told once however often it is referred to. */
public final class SourceNotes {
    private static final Map<String, String> STANDINGS = Map.of(
            "published", "ease.standing.published",
            "second-hand", "ease.standing.second-hand",
            "from memory", "ease.standing.from-memory",
            "common practice", "ease.standing.common-practice");

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

    /** Each source behind its mark, with its standing. */
    public List<String> lines() {
        return sources.lines(source -> words.of("ease.source", Map.of("source", source, "standing", standing(source))));
    }

    private String standing(String source) {
        Map<String, Set<String>> standings = levelsByStanding.get(source);
        if (standings.size() == 1) {
            return standings.keySet().iterator().next();
        }
        return standings.entrySet().stream()
                .map(e -> words.of(
                        "ease.standing-at", Map.of("standing", e.getKey(), "levels", List.copyOf(e.getValue()))))
                .collect(Collectors.joining("; "));
    }

    /** What the words for the standing of the figures mean, as far as they were used. */
    public String legend() {
        return levelsByStanding.values().stream()
                .flatMap(standings -> standings.keySet().stream())
                .distinct()
                .filter(STANDINGS::containsKey)
                .map(standing -> words.of(STANDINGS.get(standing)))
                .collect(Collectors.joining(" "));
    }
}
