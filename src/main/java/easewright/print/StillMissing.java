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

/** Wishes that are open because a change is switched off: whoever cuts would take the change for made. */
public final class StillMissing {
    private StillMissing() {}

    /** Which, and by how much, in a sentence; empty where there are none. */
    public static Optional<String> of(Pattern pattern, EaseSheet sheet, Words words) {
        Set<String> levels = pattern.aside().stream()
                .map(SetAside::note)
                .flatMap(note -> Optional.ofNullable(note.settings().get("level")).stream())
                .collect(Collectors.toSet());
        List<String> missing = sheet.lines().stream()
                .filter(line -> levels.contains(line.level().name()))
                .filter(line -> words.shown(line.missing().orElse(0)) > 0)
                .map(line -> one(line, words))
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(words.of("ease.still-missing", Map.of("each", String.join(", ", missing))));
    }

    private static String one(EaseLine line, Words words) {
        double mm = line.missing().orElseThrow();
        return line.size()
                .map(size -> words.of(
                        "ease.still-missing.in-size", Map.of("level", line.name(), "missing", mm, "size", size)))
                .orElseGet(() -> words.of("ease.still-missing.one", Map.of("level", line.name(), "missing", mm)));
    }
}
