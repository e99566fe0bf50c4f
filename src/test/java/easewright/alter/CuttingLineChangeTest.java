package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.measure.PieceMeasures;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Seam changes of pieces drawn by their cutting line keep the promises on the stitching line, where the garment is
 * sewn; each case is named by its seed.
 */
class CuttingLineChangeTest {
    private static final List<Level> LEVELS = List.of(Level.of("mid", LevelKind.HIP), Level.of("top", LevelKind.WAIST));
    private static final int CASES = 250;

    private interface Property {
        void on(String seed, Piece before, SeamChange change, Piece after) throws Refusal;
    }

    /** Nothing is refused: every amount here fits its piece. */
    private static void forAll(long firstSeed, Property property) throws Refusal {
        for (long seed = firstSeed; seed < firstSeed + CASES; seed++) {
            RandomCut random = new RandomCut(seed);
            Piece piece = random.piece("cloth");
            SeamChange change = change(random);
            Pattern after = change.apply(pattern(LEVELS, piece)).pattern();
            property.on("seed " + seed, piece, change, after.pieces().get(0));
        }
    }

    private static SeamChange change(RandomCut random) {
        SeamChange change = SeamChange.at(random.chance(0.7) ? "mid" : "top", random.between(-40, 50))
                .withTaper(random.chance(0.5) ? Taper.SMOOTH : Taper.STRAIGHT);
        return random.chance(0.3) ? change.carriedToHem() : change;
    }

    /** Taken back, this one would end 0.01 mm or more beside where it began. */
    @Test
    void whatCouldNotBeTakenBackExactlyIsRefused() {
        RandomCut random = new RandomCut(503_861);
        Piece piece = random.piece("cloth");
        SeamChange change = change(random);
        assertThat(change.carryToHem()).isTrue();
        assertThatThrownBy(() -> change.apply(pattern(LEVELS, piece)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("way-back-lost"));
    }

    @Test
    void stitchedGirthChangesByTheAmountAskedFor() throws Refusal {
        forAll(1, (seed, before, change, after) -> {
            double gain =
                    girth(pattern(LEVELS, after), change.level()) - girth(pattern(LEVELS, before), change.level());
            assertThat(gain).as(seed).isCloseTo(change.amount(), within(1e-6));
        });
    }

    @Test
    void thereAndBackRestoresTheOutline() throws Refusal {
        forAll(100_001, (seed, before, change, after) -> {
            Pattern back = change.withAmount(-change.amount())
                    .apply(pattern(LEVELS, after))
                    .pattern();
            Outline was = before.outline();
            for (Segment s : back.pieces().get(0).outline().segments()) {
                for (int i = 0; i < 8; i++) {
                    assertThat(was.nearest(s.at(i / 8.0)).distance()).as(seed).isLessThan(1e-6);
                }
            }
        });
    }

    @Test
    void otherEdgesKeepTheirStitchingLineAndTheDrawnLineItsCorners() throws Refusal {
        forAll(200_001, (seed, before, change, after) -> {
            if (change.carryToHem() || change.level().equals("top")) {
                return;
            }
            PieceMeasures was = Measures.of(before, LEVELS);
            PieceMeasures is = Measures.of(after, LEVELS);
            for (Edge edge : before.edges()) {
                Edge same = after.edge(edge.name()).orElseThrow();
                assertThat(same).as(seed).isEqualTo(edge);
                for (Point end : new Point[] {edge.from(), edge.to()}) {
                    assertThat(was.stitch().point(end).distance(is.stitch().point(end)))
                            .as("%s, stitched end of %s", seed, edge.name())
                            .isLessThan(1e-6);
                }
                if (!edge.name().equals("side") && !edge.name().equals("inseam")) {
                    assertThat(is.edge(edge.name()).orElseThrow().mm())
                            .as("%s, length of %s", seed, edge.name())
                            .isCloseTo(was.edge(edge.name()).orElseThrow().mm(), within(1e-6));
                    assertThat(same.on(after.outline()).segments())
                            .as("%s, drawn %s", seed, edge.name())
                            .isEqualTo(edge.on(before.outline()).segments());
                }
            }
            assertThat(is.level("top").orElseThrow().net())
                    .as(seed)
                    .isCloseTo(was.level("top").orElseThrow().net(), within(1e-6));
        });
    }

    @Test
    void dartsAndEveryCornerOutsideTheChangeAreTheSameToTheLastBit() throws Refusal {
        forAll(300_001, (seed, before, change, after) -> {
            assertThat(after.darts()).as(seed).isEqualTo(before.darts());
            assertThat(after.levels()).as(seed).isEqualTo(before.levels());
            Set<Point> now =
                    after.outline().segments().stream().map(Segment::start).collect(Collectors.toSet());
            for (Edge edge : before.edges()) {
                if (!edge.isProtected()) {
                    continue;
                }
                for (Segment segment : edge.on(before.outline()).segments()) {
                    boolean touchesChange =
                            edge.name().equals("crotch") && change.level().equals("top");
                    assertThat(touchesChange || now.contains(segment.start()))
                            .as("%s, %s", seed, edge.name())
                            .isTrue();
                }
            }
        });
    }
}
