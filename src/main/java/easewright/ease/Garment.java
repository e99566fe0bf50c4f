package easewright.ease;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What a garment is, in the words that ease tables use of garments, so that only tables for such a garment are shown.
 *
 * @param words in lower case; none where it is not known, and then every table applies
 */
public record Garment(List<String> words) {
    public static final Garment UNKNOWN = new Garment(List.of());

    /** None that tables name: only those that hold for all garments apply. */
    public static final Garment OTHER = named("any garment");

    /** What tables say that hold for all garments. */
    private static final Set<String> ANY = Set.of("", "any garment", "all garments");

    private static final List<String> LEGS = List.of("trousers", "shorts");
    private static final List<String> KNIT_LEGS = List.of("leggings", "trousers", "shorts");
    private static final List<String> UPPER = List.of("dress", "bodice", "top", "blouse", "shirt");

    private static final Set<EdgeRole> UPPER_EDGES =
            EnumSet.of(EdgeRole.ARMHOLE, EdgeRole.CAP, EdgeRole.SHOULDER, EdgeRole.NECK);
    private static final Set<LevelKind> UPPER_LEVELS =
            EnumSet.of(LevelKind.BUST, LevelKind.UNDERBUST, LevelKind.UPPER_ARM, LevelKind.NECK);
    private static final Set<LevelKind> SKIRT_LEVELS = EnumSet.of(LevelKind.WAIST, LevelKind.HIGH_HIP, LevelKind.HIP);

    public Garment {
        words = words.stream()
                .map(w -> w.strip().toLowerCase(Locale.ROOT))
                .filter(w -> !w.isEmpty())
                .distinct()
                .toList();
    }

    /** A garment by one word or several with commas between. */
    public static Garment named(String text) {
        return new Garment(Arrays.asList(text.split(",", -1)));
    }

    /** What a pattern is said to be, or else what its marks show. */
    public static Garment of(Pattern pattern) {
        Garment said = said(pattern);
        return said.words().isEmpty() ? byMarks(pattern) : said;
    }

    /** What a pattern is said to be; {@link #UNKNOWN} where nobody said. */
    public static Garment said(Pattern pattern) {
        return named(pattern.garment());
    }

    /**
     * What the marks of a pattern show: a crotch, trousers, or of a knit leggings; armhole, cap, shoulder or neck, or a level above the waist,
     * something for the upper body; neither, but waist or hip, a skirt. A jacket or a coat looks like a shirt here.
     */
    public static Garment byMarks(Pattern pattern) {
        Set<EdgeRole> roles = EnumSet.noneOf(EdgeRole.class);
        for (Piece piece : pattern.pieces()) {
            for (Edge edge : piece.edges()) {
                roles.add(edge.role());
            }
        }
        Set<LevelKind> levels = EnumSet.noneOf(LevelKind.class);
        for (Level level : pattern.levels()) {
            levels.add(level.kind());
        }
        boolean legs = roles.contains(EdgeRole.CROTCH);
        boolean upper = UPPER_EDGES.stream().anyMatch(roles::contains)
                || UPPER_LEVELS.stream().anyMatch(levels::contains);
        if (legs && upper) {
            return UNKNOWN;
        }
        if (legs) {
            return new Garment(pattern.cloth().knit() ? KNIT_LEGS : LEGS);
        }
        if (upper) {
            return new Garment(UPPER);
        }
        return SKIRT_LEVELS.stream().anyMatch(levels::contains) ? named("skirt") : UNKNOWN;
    }

    /** Whether a word of a table stands for all garments. */
    public static boolean isAny(String word) {
        return ANY.contains(word);
    }

    /** Whether a table for the garments named, with commas between, holds for this one. */
    public boolean fits(String garments) {
        if (words.isEmpty()) {
            return true;
        }
        for (String each : garments.split(",", -1)) {
            String word = each.strip().toLowerCase(Locale.ROOT);
            if (isAny(word) || words.contains(word)) {
                return true;
            }
        }
        return false;
    }
}
