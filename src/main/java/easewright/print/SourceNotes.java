package easewright.print;

import easewright.text.Words;
import java.util.ArrayList;
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
        return "[" + (List.copyOf(levelsByStanding.keySet()).indexOf(source) + 1) + "]";
    }

    /** Each source behind its mark, with its standing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        levelsByStanding.forEach((source, standings) -> {
            List<String> told = new ArrayList<>();
            standings.forEach((standing, levels) -> told.add(
                    standings.size() == 1
                            ? standing
                            : words.of(
                                    "ease.standing-at", Map.of("standing", standing, "levels", List.copyOf(levels)))));
            lines.add("[" + (lines.size() + 1) + "] "
                    + words.of("ease.source", Map.of("source", source, "standing", String.join("; ", told))));
        });
        return lines;
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
