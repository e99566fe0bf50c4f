package easewright.print;

import easewright.measure.Girth;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which cautions a garment calls for. They never forbid: each names its rule and leaves the rest to the law of the
 * place and to those licensed to judge (docs/cautions.md says when each is shown, and its sources).
 */
public final class Cautions {
    /**
     * Girths below which a body is taken for a child's, mm: smaller than the smallest women's size in the charts in
     * common use (common practice). A small adult reads a caution too many; the other way round would be worse.
     */
    private static final Map<LevelKind, Double> CHILD_BELOW =
            Map.of(LevelKind.BUST, 760.0, LevelKind.WAIST, 580.0, LevelKind.HIP, 820.0);

    /** A small child is at most this tall, mm: EN 14682 forbids cords at the neck up to there (second-hand). */
    private static final double CHILD_HEIGHT = 1340;

    /** A change of girth that counts, mm. */
    private static final double CHANGED = 0.5;

    private Cautions() {}

    /** A caution: its words are in the bundle, under {@code caution.<code>}. */
    public record Caution(String code, Map<String, Object> values) {
        public Caution {
            values = Map.copyOf(values);
        }
    }

    /**
     * The cautions in order of weight.
     *
     * @param before as it was, where it was changed
     * @param uses   what the maker says of the garment
     */
    public static List<Caution> of(Optional<Reading> before, Reading after, Set<Use> uses) {
        List<Caution> cautions = new ArrayList<>();
        boolean small = isSmall(after.pattern());
        boolean child = small || uses.contains(Use.CHILD);
        List<String> wider = changed(before, after, CHANGED);
        if (child || uses.contains(Use.NIGHTWEAR)) {
            String code = uses.contains(Use.NIGHTWEAR) ? "nightwear" : "perhaps-nightwear";
            cautions.add(new Caution(code, Map.of()));
            if (!wider.isEmpty()) {
                cautions.add(new Caution("nightwear-wider", Map.of("levels", wider)));
            }
        }
        if (child || uses.contains(Use.CORDS)) {
            cautions.add(new Caution("cords", Map.of()));
        }
        if (child && !changed(before, after, -CHANGED, LevelKind.NECK).isEmpty()) {
            cautions.add(new Caution("child-neck", Map.of()));
        }
        boolean presses = after.findings().stream().anyMatch(f -> f.code().equals("not-for-compression"));
        if (presses || uses.contains(Use.COMPRESSION)) {
            cautions.add(new Caution("compression", Map.of()));
        }
        if (uses.contains(Use.PROTECTIVE)) {
            cautions.add(new Caution("protective", Map.of()));
        }
        if (!after.pattern().changes().isEmpty()) {
            cautions.add(new Caution("toile", Map.of()));
        }
        cautions.add(new Caution("test-square", Map.of()));
        return List.copyOf(cautions);
    }

    private static boolean isSmall(Pattern pattern) {
        Map<String, LevelKind> kinds = new TreeMap<>();
        for (Level level : pattern.levels()) {
            kinds.put(level.name(), level.kind());
        }
        List<BodyMeasure> measures = new ArrayList<>(pattern.body().measures());
        pattern.bodies().values().forEach(body -> measures.addAll(body.measures()));
        for (BodyMeasure measure : measures) {
            LevelKind kind = kinds.getOrDefault(measure.level(), LevelKind.OTHER);
            String name = measure.name().toLowerCase(java.util.Locale.ROOT);
            boolean tall = name.equals("stature") || name.equals("height");
            if (measure.mm() < CHILD_BELOW.getOrDefault(kind, 0.0) || (tall && measure.mm() <= CHILD_HEIGHT)) {
                return true;
            }
        }
        return false;
    }

    private static List<String> changed(Optional<Reading> before, Reading after, double least) {
        return changed(before, after, least, null);
    }

    /** Names of the levels whose girth grew by at least so much, or shrank by at least so much if negative. */
    private static List<String> changed(Optional<Reading> before, Reading after, double least, LevelKind only) {
        List<String> names = new ArrayList<>();
        for (Girth girth : after.measures().girths()) {
            double grown = before.flatMap(b -> b.measures().girth(girth))
                    .map(old -> girth.finished() - old.finished())
                    .orElse(0.0);
            boolean counts = least > 0 ? grown >= least : grown <= least;
            if (counts && (only == null || girth.level().kind() == only)) {
                names.add(girth.title());
            }
        }
        return names;
    }
}
