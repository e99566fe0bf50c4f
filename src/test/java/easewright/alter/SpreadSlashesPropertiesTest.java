package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The promises of every alteration, held by slashes on random pieces; each case is named by its seed. */
class SpreadSlashesPropertiesTest {
    private static final List<Level> LEVELS =
            List.of(Level.of("level", LevelKind.HIP), Level.of("top", LevelKind.WAIST));

    private static Point along(Piece piece, String edge, double share) {
        Curve run = piece.edge(edge).orElseThrow().on(piece.outline());
        return run.pointAtLength(run.length() * share);
    }

    /** One to three slashes from hem to top or the other way, drawn so that none crosses another. */
    private static SpreadSlashes change(RandomCloth random, Piece piece, boolean hinged) {
        List<Slash> slashes = new ArrayList<>();
        int many = 1 + (int) random.between(0, 3);
        boolean up = random.chance(0.7);
        for (int i = 0; i < many; i++) {
            // The fold is where the top starts and where the hem ends.
            double share = (i + random.between(0.25, 0.75)) / many;
            Point top = along(piece, "top", 0.1 + 0.25 * share + random.between(0, 0.02));
            Point hem = along(piece, "hem", 0.95 - 0.8 * share);
            slashes.add(Slash.of("cloth", up ? hem : top, up ? top : hem).withWeight(random.between(0.5, 2)));
        }
        // Each slash makes its own wedge or strip of cloth.
        double amount = random.between(-25, 40);
        return hinged
                ? SpreadSlashes.hinged("level", amount, slashes.toArray(Slash[]::new))
                : SpreadSlashes.parallel("level", amount, slashes.toArray(Slash[]::new));
    }

    private static void forAll(long firstSeed, int asked, double cutting, Cases.Property<SpreadSlashes> property)
            throws Refusal {
        Cases.all(firstSeed, asked, seed -> oneOf(seed, cutting), property);
    }

    private static Cases.Case<SpreadSlashes> oneOf(long seed, double cutting) {
        RandomCloth random = new RandomCloth(seed);
        Piece piece = random.piece("cloth", cutting);
        return new Cases.Case<>(pattern(LEVELS, piece), change(random, piece, random.chance(0.6)));
    }

    @Test
    void girthChangesByTheAmountAskedFor() throws Refusal {
        Worst worst = new Worst("slashes, girth, mm");
        forAll(1, 1200, 0.05, (seed, before, change, after) -> {
            double miss = girth(after.pattern(), "level") - girth(before, "level") - change.amount();
            worst.meet(seed, Math.abs(miss));
            assertThat(Validity.isSimple(after.pattern().pieces().get(0).outline()))
                    .as("seed %d", seed)
                    .isTrue();
        });
        worst.within(1e-6);
    }

    @Test
    void theCentreStaysAsItWas() throws Refusal {
        forAll(20_001, 300, 0, (seed, before, change, after) -> {
            Piece was = before.pieces().get(0);
            Piece is = after.pattern().pieces().get(0);
            Set<Segment> old = Collections.newSetFromMap(new IdentityHashMap<>());
            old.addAll(is.outline().segments());
            assertThat(old)
                    .as("seed %d", seed)
                    .contains(was.outline()
                            .segments()
                            .get(was.outline().segments().size() - 1));
            assertThat(is.edge("fold")).isEqualTo(was.edge("fold"));
            assertThat(is.grainDirection()).isEqualTo(was.grainDirection());
            // A strip may carry the marked place along the level; the level itself stays.
            assertThat(is.level("level").orElseThrow().through().orElseThrow().y())
                    .isEqualTo(was.level("level")
                            .orElseThrow()
                            .through()
                            .orElseThrow()
                            .y());
            if (change.open() == SpreadSlashes.Opening.HINGED && change.amount() > 0) {
                String far = change.slashes().get(0).to().y() < 100 ? "top" : "hem";
                double length = was.edge(far).orElseThrow().on(was.outline()).length();
                assertThat(is.edge(far).orElseThrow().on(is.outline()).length())
                        .as("seed %d", seed)
                        .isCloseTo(length, within(1e-6));
            }
        });
    }

    @Test
    void thereAndBackRestoresTheOutline() throws Refusal {
        Worst worst = new Worst("slashes there and back, mm");
        forAll(40_001, 500, 0.05, (seed, before, change, after) -> {
            Alteration back = change.opposite().orElseThrow();
            if (change.amount() < 0) {
                // What was folded away is gone where the cut edges did not meet.
                return;
            }
            Pattern restored = back.apply(after.pattern()).pattern();
            Outline was = before.pieces().get(0).outline();
            for (Segment s : restored.pieces().get(0).outline().segments()) {
                for (int i = 0; i < 6; i++) {
                    worst.meet(seed, was.nearest(s.at(i / 6.0)).distance());
                }
            }
            assertThat(change.withAmount(0).apply(before).pattern()).isSameAs(before);
            assertThat(Ways.from(change.note())).isEqualTo(change);
            assertThat(Ways.from(back.note())).isEqualTo(back);
        });
        worst.within(1e-6);
    }

    @Test
    void turningAndMirroringTheSheetChangesNothing() throws Refusal {
        forAll(60_001, 300, 0, (seed, before, change, after) -> {
            Affine map = new RandomCloth(-seed).sheet(3);
            Piece piece = before.pieces().get(0);
            Pattern mapped = pattern(LEVELS, RandomCloth.mapped(piece, map));
            List<Slash> slashes = change.slashes().stream()
                    .map(s -> new Slash("cloth", map.apply(s.from()), map.apply(s.to()), Optional.empty(), s.weight()))
                    .toList();
            SpreadSlashes there = new SpreadSlashes("level", change.amount(), slashes, change.open(), false, false);
            Outline is = there.apply(mapped).pattern().pieces().get(0).outline();
            Outline wanted = after.pattern().pieces().get(0).outline().transformed(map);
            assertThat(Worst.apart(is, wanted)).as("seed %d", seed).isLessThan(1e-6);
        });
    }

    /** For a small amount the outline moves in proportion. */
    @Test
    void smallAmountsAreNearlyLinear() throws Refusal {
        forAll(80_001, 200, 0, (seed, before, change, after) -> {
            Point one = farthest(change.withAmount(0.02).apply(before));
            Point two = farthest(change.withAmount(0.04).apply(before));
            Point none = farthest(change.withAmount(1e-7).apply(before));
            assertThat(two.minus(none).minus(one.minus(none).times(2)).norm())
                    .as("seed %d", seed)
                    .isLessThan(1e-4);
        });
    }

    private static Point farthest(Altered altered) {
        return altered.pattern().pieces().get(0).edge("side").orElseThrow().to();
    }

    /** A piece drawn by its cutting line turns about its stitching line, so that the seam at the hinge keeps its length. */
    @Test
    void cuttingLinesKeepTheSewnSeamAtTheHinge() throws Refusal {
        Worst seam = new Worst("slashes of cutting lines, sewn seam at the hinge, mm");
        Worst back = new Worst("slashes of cutting lines there and back, mm");
        Worst girth = new Worst("slashes of cutting lines, girth, mm");
        for (long seed = 90_001; seed < 90_001 + RandomCloth.cases(120); seed++) {
            RandomCloth random = new RandomCloth(seed);
            Piece piece = RandomCloth.cutting(random.piece("cloth"), random.between(5, 20));
            Pattern before = pattern(LEVELS, piece);
            boolean up = random.chance(0.5);
            Point hem = along(piece, "hem", 0.5);
            Point top = along(piece, "top", 0.3);
            SpreadSlashes change = SpreadSlashes.hinged(
                    "level", random.between(5, 40), Slash.of("cloth", up ? hem : top, up ? top : hem));
            Pattern after = change.apply(before).pattern();
            String far = up ? "top" : "hem";
            seam.meet(seed, Math.abs(sewn(after, far) - sewn(before, far)));
            girth.meet(seed, Math.abs(girth(after, "level") - girth(before, "level") - change.amount()));
            Pattern restored = change.opposite().orElseThrow().apply(after).pattern();
            for (Segment s : restored.pieces().get(0).outline().segments()) {
                for (int i = 0; i < 4; i++) {
                    back.meet(seed, piece.outline().nearest(s.at(i / 4.0)).distance());
                }
            }
        }
        girth.within(1e-6);
        seam.within(0.02);
        back.within(1e-6);
    }

    private static double sewn(Pattern pattern, String edge) {
        return Measures.of(pattern).pieces().get(0).edge(edge).orElseThrow().mm();
    }
}
