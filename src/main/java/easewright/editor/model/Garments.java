package easewright.editor.model;

import easewright.ease.EaseTable;
import easewright.ease.EaseTables;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** For which garment the ease is judged: tables for another garment say nothing about this one. */
final class Garments {
    /** Begins the garment line of a table that is for every garment. */
    private static final String ANY = "any";

    /** Garments with a crotch seam. */
    private static final Set<String> WITH_LEGS = Set.of("trousers", "shorts", "leggings", "swimwear");

    private Garments() {}

    /** The garments that tables for a level of the pattern speak of, in the order of the tables. */
    static List<String> of(Pattern pattern) {
        Set<String> words = new LinkedHashSet<>();
        pattern.levels()
                .forEach(level -> EaseTables.standard()
                        .at(level.kind(), pattern.cloth().knit())
                        .forEach(table -> words.addAll(words(table))));
        return List.copyOf(words);
    }

    /** The garment that the pattern most likely is by its levels and its crotch seam; empty where none is likely. */
    static Optional<String> likely(Pattern pattern) {
        boolean bust = has(pattern, LevelKind.BUST);
        boolean legs =
                pattern.pieces().stream().flatMap(p -> p.edges().stream()).anyMatch(e -> e.role() == EdgeRole.CROTCH);
        return of(pattern).stream()
                .filter(word -> WITH_LEGS.contains(word) == legs)
                .filter(word -> isForBust(word, pattern.cloth().knit()) == bust)
                .findFirst();
    }

    private static boolean has(Pattern pattern, LevelKind kind) {
        return pattern.levels().stream().anyMatch(l -> l.kind() == kind);
    }

    private static boolean isForBust(String word, boolean knit) {
        return EaseTables.standard().at(LevelKind.BUST, knit).stream().anyMatch(t -> words(t).contains(word));
    }

    /** Whether a table speaks of the garment; those for every garment always do. */
    static boolean fits(EaseTable table, Optional<String> garment) {
        return words(table).isEmpty() || garment.filter(words(table)::contains).isPresent();
    }

    /** The garments of a table, a word each; none for a table for every garment. */
    private static List<String> words(EaseTable table) {
        String line = table.garment().toLowerCase(Locale.ROOT);
        return line.startsWith(ANY) ? List.of() : List.of(line.split(",\\s*"));
    }

    /** Whether a least ease is meant for the garment. */
    static boolean fits(Minimum minimum, Optional<String> garment) {
        return garment.map(Garment::named).orElse(Garment.UNKNOWN).fits(minimum.garment());
    }
}
