package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Darts however they are drawn and marked. */
class DartsTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Level HIP = Level.of("hip", LevelKind.HIP);
    private static final String PLAIN = "0,0 200,0 200,500 0,500";
    private static final String CUT = "0,0 80,0 92,100 104,0 200,0 200,500 0,500";

    private static Dart dart(String mouth1, String mouth2, String point) {
        return new Dart(
                "d",
                Sketch.point(mouth1),
                Sketch.point(mouth2),
                Sketch.point(point),
                Optional.empty(),
                Optional.of("waist"));
    }

    private static Piece piece(String shape, double level, Dart... darts) {
        return Piece.bare("p", Sketch.outline(shape)).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(0, 0), new Point(200, 0)),
                        Edge.of("hem", EdgeRole.HEM, new Point(200, 500), new Point(0, 500))))
                .levels(List.of(LevelMark.through("hip", new Point(10, level))))
                .darts(List.of(darts))
                .build();
    }

    private static EdgeLength waist(Piece piece) {
        return Measures.of(piece, List.of()).edge("waist").orElseThrow();
    }

    private static LevelWidth width(Piece piece) {
        return Measures.width(piece, HIP).orElseThrow();
    }

    @Test
    void mouthsInEitherOrder() {
        for (String shape : List.of(PLAIN, CUT)) {
            for (Dart d : List.of(dart("80,0", "104,0", "92,100"), dart("104,0", "80,0", "92,100"))) {
                assertThat(waist(piece(shape, 50, d)).mm()).isCloseTo(176, EXACT);
                assertThat(width(piece(shape, 50, d)).net()).isCloseTo(188, EXACT);
                assertThat(width(piece(shape, 50, d)).width()).isCloseTo(200, EXACT);
            }
        }
    }

    @Test
    void twoDartsOnOneEdge() {
        Piece two = piece(PLAIN, 50, dart("60,0", "70,0", "65,100"), dart("120,0", "140,0", "130,80"));
        assertThat(waist(two).mm()).isCloseTo(170, EXACT);
        assertThat(waist(two).dartMm()).isCloseTo(30, EXACT);
        assertThat(width(two).dartIntake()).isCloseTo(5 + 20 * 30.0 / 80, EXACT);
    }

    @Test
    void aLevelAlongAnEdgeWithADart() {
        Piece along =
                piece(PLAIN, 50, dart("80,0", "104,0", "92,100")).withLevels(List.of(LevelMark.along("hip", "waist")));
        assertThat(width(along).width()).isCloseTo(200, EXACT);
        assertThat(width(along).dartIntake()).isCloseTo(24, EXACT);
        assertThat(width(along).net()).isCloseTo(176, EXACT);
    }

    @Test
    void aDartOfAnotherEdgeTakesNothingFromThisOne() {
        Dart below = new Dart(
                "d", new Point(80, 500), new Point(104, 500), new Point(92, 400), Optional.empty(), Optional.of("hem"));
        assertThat(waist(piece(PLAIN, 50, below)).mm()).isCloseTo(200, EXACT);
        assertThat(Measures.of(piece(PLAIN, 50, below), List.of())
                        .edge("hem")
                        .orElseThrow()
                        .mm())
                .isCloseTo(176, EXACT);
    }

    /** Legs hollowed by 8 mm: the cloth folded away at a level lies between the legs as they are drawn. */
    @Test
    void shapedLegsOfACutDartCount() {
        Piece shaped = piece(
                "0,0 80,0 (90,30 92,70) 92,100 (92,70 94,30) 104,0 200,0 200,500 0,500",
                50,
                dart("80,0", "104,0", "92,100"));
        Cubic leg = (Cubic) shaped.outline().segments().get(1);
        double t = leg.crossings(new Point(0, 50), new Point(1, 0)).get(0);
        double half = 92 - leg.at(t).x();
        assertThat(width(shaped).dartIntake()).isCloseTo(2 * half, EXACT);
        assertThat(2 * half).as("far from the straight legs' 12").isLessThan(6);
    }

    /** Marked 6 mm off along its legs, as on a cutting line: the legs lead to the mouth on the stitching line. */
    @Test
    void legsLeadToTheStitchingLine() {
        Piece cut = piece("-10,-10 210,-10 210,510 -10,510", 50, dart("78.8,-10", "105.2,-10", "92,100")).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .edges(List.of(Edge.of("waist", EdgeRole.WAIST, new Point(-10, -10), new Point(210, -10))))
                .build();
        assertThat(waist(cut).dartMm()).isCloseTo(24, EXACT);
        assertThat(width(cut).dartIntake()).isCloseTo(12, EXACT);
        assertThat(Measures.of(cut, List.of(HIP)).findings()).isEmpty();
    }

    @Test
    void aMouthBesideTheLineIsRemarkedOnFromATenthOfAMillimetre() {
        Dart near = dart("80,0.09", "104,0", "92,100");
        Dart far = dart("80,0", "104,-0.11", "104,-50");
        assertThat(Measures.of(piece(PLAIN, 50, near), List.of(HIP)).findings()).isEmpty();
        assertThat(Measures.of(piece(PLAIN, 50, far), List.of(HIP)).findings())
                .extracting(Finding::code)
                .isEmpty();
        Dart off = dart("80,0", "104,8", "92,8");
        assertThat(Measures.of(piece(PLAIN, 50, off), List.of(HIP)).findings())
                .extracting(Finding::code)
                .containsExactly("dart-off-edge");
        assertThat((Double) Measures.of(piece(PLAIN, 50, off), List.of(HIP))
                        .findings()
                        .get(0)
                        .values()
                        .get("distance"))
                .isCloseTo(8, EXACT);
    }

    /** Folded all the way to its point at the edge: nothing to take out, and nothing to fail on. */
    @Test
    void aDartWithoutAMouthTakesNothing() {
        Piece shut = piece(PLAIN, 50, dart("92,0", "92,0", "92,100"));
        assertThat(waist(shut).mm()).isCloseTo(200, EXACT);
        assertThat(width(shut).dartIntake()).isCloseTo(0, EXACT);
    }

    /** A long way round between the same three places is an outline, not a dart. */
    @Test
    void aWideDetourIsNoDart() {
        Piece detour =
                piece("0,0 80,0 80,300 92,100 104,300 104,0 200,0 200,500 0,500", 50, dart("80,0", "104,0", "92,100"));
        assertThat(StitchOutline.of(detour).outline()).isSameAs(detour.outline());
    }
}
