package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.topology.Validity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Centre lines, length, lengths of edges and slashes by their gap on random pieces: the amount, there and back, what
 * stays, turned and mirrored sheets; each case is named by its seed.
 */
class OtherWaysPropertiesTest {
    private static final List<Level> LEVELS =
            List.of(Level.of("level", LevelKind.HIP), Level.of("top", LevelKind.WAIST));
    private static final int WAYS = 6;

    private static Piece piece(RandomCloth random) {
        Piece piece = random.piece("cloth");
        return piece.toBuilder()
                .darts(List.of())
                .edges(piece.edges().stream()
                        .map(e -> e.role() == EdgeRole.FOLD ? e.withProtected(false) : e)
                        .toList())
                .build();
    }

    private static Point along(Piece piece, String edge, double share) {
        Curve run = piece.edge(edge).orElseThrow().on(piece.outline());
        return run.pointAtLength(run.length() * share);
    }

    private static Alteration change(RandomCloth random, Piece piece, int way) {
        EdgeRef fold = EdgeRef.of("cloth", "fold");
        Point hem = along(piece, "hem", random.between(0.3, 0.7));
        Point top = along(piece, "top", random.between(0.3, 0.7));
        Point side = along(piece, "side", 0.5);
        return switch (way) {
            case 0 -> CentreChange.parallel("level", random.between(-40, 50), fold);
            case 1 -> CentreChange.wedge("level", random.between(-30, 40), fold);
            case 2 -> Lengthen.below("level", random.between(10, 40), random.between(-30, 60));
            case 3 -> EdgeLength.slashed(EdgeRef.of("cloth", "hem"), random.between(0, 40));
            case 4 -> new HingedSlash("cloth", top, hem, random.between(0, 40), side, true);
            default -> new ParallelSlash("cloth", top, hem, random.between(0, 40), side, true);
        };
    }

    private static double missed(Pattern before, Pattern after, Alteration change) {
        if (change instanceof CentreChange centre) {
            return girth(after, "level") - girth(before, "level") - centre.amount();
        }
        if (change instanceof Lengthen length) {
            double fold = sewn(after, "fold") - sewn(before, "fold");
            double widths = Math.abs(girth(after, "level") - girth(before, "level"));
            return Math.abs(fold - length.amount()) + widths;
        }
        if (change instanceof EdgeLength edge) {
            return sewn(after, "hem") - sewn(before, "hem") - edge.amount();
        }
        if (change instanceof HingedSlash slash) {
            // The edge at the hinge keeps its length, the open one grows by the gap.
            double hem = sewn(after, "hem") - sewn(before, "hem") - slash.gap();
            return Math.abs(hem) + Math.abs(sewn(after, "top") - sewn(before, "top"));
        }
        return girth(after, "level") - girth(before, "level") - 2 * ((ParallelSlash) change).amount();
    }

    private static double sewn(Pattern pattern, String edge) {
        return Measures.of(pattern).pieces().get(0).edge(edge).orElseThrow().mm();
    }

    @Test
    void promises() throws Refusal {
        Worst[] amounts = new Worst[WAYS];
        Worst[] back = new Worst[WAYS];
        int[] refused = new int[WAYS];
        int cases = RandomCloth.cases(250);
        for (int way = 0; way < WAYS; way++) {
            amounts[way] = new Worst("way " + way + ", amount, mm");
            back[way] = new Worst("way " + way + " there and back, mm");
            for (long seed = 1 + 10_000L * way; seed <= cases + 10_000L * way; seed++) {
                RandomCloth random = new RandomCloth(seed);
                Piece piece = piece(random);
                Pattern before = pattern(LEVELS, piece);
                Alteration change = change(random, piece, way);
                Altered after;
                try {
                    after = change.apply(before);
                } catch (Refusal refusal) {
                    assertThat(refusal.code()).as("way %d seed %d", way, seed).isNotBlank();
                    refused[way]++;
                    continue;
                }
                amounts[way].meet(seed, Math.abs(missed(before, after.pattern(), change)));
                Outline is = after.pattern().pieces().get(0).outline();
                assertThat(Validity.isSimple(is))
                        .as("way %d seed %d", way, seed)
                        .isTrue();
                assertThat(change.withAmount(0).apply(before).pattern()).isSameAs(before);
                assertThat(Ways.from(change.note())).isEqualTo(change);
                Optional<Alteration> opposite = change.opposite();
                boolean takesBack = way < 2
                        || change.note().settings().getOrDefault("amount", "1").charAt(0) != '-';
                if (opposite.isPresent() && takesBack) {
                    Outline restored = opposite.get()
                            .apply(after.pattern())
                            .pattern()
                            .pieces()
                            .get(0)
                            .outline();
                    back[way].meet(seed, Worst.apart(restored, piece.outline()));
                }
            }
            assertThat(refused[way]).as("way %d refused of %d", way, cases).isLessThan(cases / 4);
            // The edge that closes a gap may run straight where its hem is curved.
            amounts[way].within(1e-6);
            back[way].within(1e-6);
        }
    }

    @Test
    void turningAndMirroringTheSheetChangesNothing() throws Refusal {
        Worst worst = new Worst("centre, length and edges turned and mirrored, mm");
        for (long seed = 70_001; seed < 70_001 + RandomCloth.cases(300); seed++) {
            RandomCloth random = new RandomCloth(seed);
            Piece piece = piece(random);
            // Places are left out: what names its places by coordinates is turned in the test of slashes.
            Alteration change = change(random, piece, (int) (seed % 4));
            Affine map = random.sheet(0.7);
            try {
                Outline here = change.apply(pattern(LEVELS, piece))
                        .pattern()
                        .pieces()
                        .get(0)
                        .outline();
                Outline there = change.apply(pattern(LEVELS, RandomCloth.mapped(piece, map)))
                        .pattern()
                        .pieces()
                        .get(0)
                        .outline();
                Outline wanted = here.transformed(map);
                worst.meet(seed, Worst.apart(there, wanted));
            } catch (Refusal refusal) {
                assertThat(refusal.code()).as("seed %d", seed).isNotBlank();
            }
        }
        worst.within(1e-6);
    }
}
