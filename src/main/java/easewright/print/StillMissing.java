package easewright.print;

import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.pattern.Pattern;
import easewright.pattern.SetAside;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Wishes that are open because a change is switched off: whoever cuts would take the change for made. */
public final class StillMissing {
    private StillMissing() {}

    /** Which, and by how much, what is missing apart from what is too much, each in a sentence; empty where there are none. */
    public static Optional<String> of(Pattern pattern, EaseSheet sheet, Words words) {
        Set<String> levels = pattern.aside().stream()
                .map(SetAside::note)
                .flatMap(note -> Optional.ofNullable(note.settings().get("level")).stream())
                .collect(Collectors.toSet());
        List<EaseLine> open = sheet.lines().stream()
                .filter(line -> levels.contains(line.level().name()))
                .toList();
        String said = Stream.of(said("ease.still-missing", 1, open, words), said("ease.still-over", -1, open, words))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }

    /** @param sign of the amounts that this sentence is about: 1 of what is missing, -1 of what is too much */
    private static Optional<String> said(String key, int sign, List<EaseLine> open, Words words) {
        List<String> each = open.stream()
                .filter(line -> words.shown(line.missing().orElse(0)) * sign > 0)
                .map(line -> one(line, words))
                .toList();
        return each.isEmpty() ? Optional.empty() : Optional.of(words.of(key, Map.of("each", String.join(", ", each))));
    }

    private static String one(EaseLine line, Words words) {
        double mm = Math.abs(line.missing().orElseThrow());
        return line.size()
                .map(size -> words.of(
                        "ease.still-missing.in-size", Map.of("level", line.name(), "missing", mm, "size", size)))
                .orElseGet(() -> words.of("ease.still-missing.one", Map.of("level", line.name(), "missing", mm)));
    }
}
