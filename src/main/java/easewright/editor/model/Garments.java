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
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * For which garment the ease is judged: tables for another garment say nothing about this one.
 *
 * @param all    the garments that tables for a level of the pattern speak of, in the order of the tables
 * @param likely the one that the pattern most likely is by its levels and its crotch seam; empty where none is likely
 */
public record Garments(List<String> all, Optional<String> likely) {
    /** Begins the garment line of a table that is for every garment. */
    private static final String ANY = "any";

    /** Garments with a crotch seam. */
    private static final Set<String> WITH_LEGS = Set.of("trousers", "shorts", "leggings", "swimwear");

    /** Lines are read once: the sheet is made anew with every movement of a hand. */
    private static final Map<String, List<String>> READ = new ConcurrentHashMap<>();

    public Garments {
        all = List.copyOf(all);
    }

    public static Garments of(Pattern pattern) {
        boolean knit = pattern.cloth().knit();
        Set<String> words = new LinkedHashSet<>();
        pattern.levels()
                .forEach(level ->
                        EaseTables.standard().at(level.kind(), knit).forEach(table -> words.addAll(words(table))));
        boolean bust = pattern.levels().stream().anyMatch(l -> l.kind() == LevelKind.BUST);
        boolean legs =
                pattern.pieces().stream().flatMap(p -> p.edges().stream()).anyMatch(e -> e.role() == EdgeRole.CROTCH);
        Optional<String> likely = words.stream()
                .filter(word -> WITH_LEGS.contains(word) == legs)
                .filter(word -> isForBust(word, knit) == bust)
                .findFirst();
        return new Garments(List.copyOf(words), likely);
    }

    /** The one it is judged as: what the user chose, else the likely one; an empty word is a choice of none. */
    Optional<String> judged(Optional<String> chosen) {
        return chosen.filter(c -> c.isEmpty() || all.contains(c))
                .or(() -> likely)
                .filter(c -> !c.isEmpty());
    }

    private static boolean isForBust(String word, boolean knit) {
        return EaseTables.standard().at(LevelKind.BUST, knit).stream().anyMatch(t -> words(t).contains(word));
    }

    /** Whether a table speaks of the garment; those for every garment always do. */
    static boolean fits(EaseTable table, Optional<String> garment) {
        List<String> named = words(table);
        return named.isEmpty() || garment.filter(named::contains).isPresent();
    }

    /** Whether a least ease is meant for the garment. */
    static boolean fits(Minimum minimum, Optional<String> garment) {
        return garment.map(Garment::named).orElse(Garment.UNKNOWN).fits(minimum.garment());
    }

    /** The garments of a table, a word each; none for a table for every garment. */
    private static List<String> words(EaseTable table) {
        return READ.computeIfAbsent(table.garment(), Garments::split);
    }

    private static List<String> split(String garments) {
        String line = garments.toLowerCase(Locale.ROOT);
        return line.startsWith(ANY) ? List.of() : List.of(line.split(",\\s*"));
    }
}
