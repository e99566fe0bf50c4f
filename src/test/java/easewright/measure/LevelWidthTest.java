package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Widths at a level; rules of docs/sources.md 3. */
class LevelWidthTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Level HIP = Level.of("hip", LevelKind.HIP);

    private static Piece at(String shape, String through) {
        return Piece.bare("p", Sketch.outline(shape))
                .withLevels(List.of(LevelMark.through("hip", Sketch.point(through))));
    }

    private static LevelWidth width(Piece piece) {
        return Measures.width(piece, HIP).orElseThrow();
    }

    private static Piece withDart(Piece piece, String mouth1, String mouth2, String point, String edge) {
        Dart dart = new Dart(
                "d",
                Sketch.point(mouth1),
                Sketch.point(mouth2),
                Sketch.point(point),
                Optional.empty(),
                Optional.of(edge).filter(e -> !e.isEmpty()));
        return piece.toBuilder().darts(List.of(dart)).build();
    }

    @Test
    void slantedSideIsReadAtTheLevel() {
        assertThat(width(at("0,0 100,0 140,200 0,200", "10,50")).width()).isCloseTo(110, EXACT);
    }

    @Test
    void levelOnStraightEdgeHasTheEdgesWidth() {
        assertThat(width(at("0,0 100,0 140,200 0,200", "10,200")).width()).isCloseTo(140, EXACT);
        assertThat(width(at("0,0 100,0 140,200 0,200", "10,0")).width()).isCloseTo(100, EXACT);
    }

    @Test
    void levelOnEdgeRoundedOutOfLineStillHasItsWidth() {
        assertThat(width(at("0,0 100,0 100,199.99 0,200.003", "10,200")).width())
                .isCloseTo(100, within(0.01));
        assertThat(width(at("0,0.001 100,-0.002 100,200 0,200", "10,-0.01")).width())
                .isCloseTo(100, within(0.01));
    }

    @Test
    void levelThroughCornerNeitherLosesNorDoubles() {
        assertThat(width(at("0,0 100,0 130,100 100,200 0,200 -20,100", "0,100")).width())
                .isCloseTo(150, EXACT);
        assertThat(width(at("0,0 50,100 100,0 100,200 0,200", "10,100")).width())
                .as("a notch whose tip touches the level")
                .isCloseTo(100, EXACT);
    }

    @Test
    void levelAtStepTakesTheWiderSide() {
        assertThat(width(at("0,0 60,0 60,80 100,80 100,200 0,200", "10,80")).width())
                .isCloseTo(100, EXACT);
    }

    @Test
    void levelFromTangentStartOfCurvedWaistRunsThroughTheCloth() {
        // The waist leaves the centre square to it, at 10, and rises to the side at 0.
        Piece piece = at("0,10 (60,10 80,5) 100,0 110,200 0,200", "0,10");
        assertThat(width(piece).width()).isCloseTo(100 + 0.5, within(1e-6));
    }

    @Test
    void overCrotchTheStretchAtTheMarkIsTaken() {
        // Two legs drawn in one piece: the level below the fork crosses four times.
        String trousers = "0,0 200,0 220,300 120,300 100,120 80,300 -20,300";
        LevelWidth left = width(at(trousers, "30,210"));
        assertThat(left.width()).isCloseTo(90 + 14, EXACT);
        assertThat(left.spans()).containsExactly(new Span(new Point(-14, 210), new Point(90, 210)));
        LevelWidth nearest = width(at(trousers, "101,210"));
        assertThat(nearest.spans().get(0).from().x()).as("nearer stretch").isCloseTo(110, EXACT);
    }

    @Test
    void allStretchesWhereAsked() {
        String trousers = "0,0 200,0 220,300 120,300 100,120 80,300 -20,300";
        LevelMark all = new LevelMark(
                "hip",
                Optional.of(new Point(30, 210)),
                Optional.empty(),
                0,
                true,
                0,
                LevelMark.Span.ALL,
                Optional.empty());
        Piece piece = Piece.bare("p", Sketch.outline(trousers)).withLevels(List.of(all));
        assertThat(width(piece).width()).isCloseTo(208, EXACT);
        assertThat(width(piece).spans()).hasSize(2);
    }

    @Test
    void levelOffThePieceIsAFinding() {
        Piece piece = at("0,0 100,0 100,200 0,200", "10,300");
        assertThat(Measures.width(piece, HIP)).isEmpty();
        assertThat(Measures.of(piece, List.of(HIP)).findings())
                .extracting("code")
                .containsExactly("level-not-reached");
    }

    @Test
    void levelIsSquareToATurnedGrain() {
        Affine turn = Affine.rotation(0.7, new Point(20, 30));
        Piece upright = at("0,0 100,0 140,200 0,200", "10,50");
        Piece turned = upright.toBuilder()
                .outline(upright.outline().transformed(turn))
                .levels(List.of(LevelMark.through("hip", turn.apply(new Point(10, 50)))))
                .grain(new Grain(turn.apply(new Point(5, 5)), turn.apply(new Point(5, 90))))
                .build();
        assertThat(width(turned).width()).isCloseTo(110, within(1e-6));
    }

    @Test
    void foldPairAndLimbCount() {
        Piece half = at("0,0 100,0 100,200 0,200", "10,50");
        Level thigh = Level.of("hip", LevelKind.THIGH);
        assertThat(half.toBuilder().cut(1, true).build().count(HIP)).isEqualTo(2);
        assertThat(width(half.toBuilder().cut(2, false).build()).counted()).isCloseTo(200, EXACT);
        assertThat(width(half.toBuilder().cut(1, true).build()).counted()).isCloseTo(200, EXACT);
        assertThat(Measures.width(half.toBuilder().cut(2, false).build(), thigh)
                        .orElseThrow()
                        .counted())
                .isCloseTo(100, EXACT);
    }

    @Test
    void facingDoesNotCountAndOverlapComesOff() {
        Piece piece = Piece.bare("p", Sketch.outline("0,0 100,0 100,200 0,200"))
                .withLevels(List.of(LevelMark.through("hip", new Point(5, 50))
                        .withOverlap(20)
                        .notCounted()));
        assertThat(width(piece).net()).isCloseTo(80, EXACT);
        assertThat(width(piece).counted()).isZero();
    }

    /** Intake of a straight dart falls linearly to 0 at its point: w(1 − y/L) (worked example W8). */
    @Test
    void dartHalfWayTakesHalfItsIntake() {
        for (double y : new double[] {0, 20, 50, 99.5}) {
            Piece drawn = withDart(at("0,0 200,0 200,200 0,200", "10," + y), "80,0", "104,0", "92,100", "waist");
            assertThat(width(drawn).dartIntake()).isCloseTo(24 * (1 - y / 100), EXACT);
            assertThat(width(drawn).net()).isCloseTo(200 - 24 * (1 - y / 100), EXACT);
        }
        Piece below = withDart(at("0,0 200,0 200,200 0,200", "10,100.5"), "80,0", "104,0", "92,100", "waist");
        assertThat(width(below).dartIntake()).isZero();
    }

    @Test
    void dartCutOutOfTheOutlineMeasuresTheSame() {
        for (double y : new double[] {0, 20, 50}) {
            Piece cut = withDart(
                    at("0,0 80,0 92,100 104,0 200,0 200,200 0,200", "10," + y), "80,0", "104,0", "92,100", "waist");
            assertThat(width(cut).width()).isCloseTo(200, EXACT);
            assertThat(width(cut).net()).isCloseTo(200 - 24 * (1 - y / 100), EXACT);
        }
    }

    @Test
    void diamondDartInsideThePiece() {
        Dart dart = new Dart(
                "fish",
                new Point(90, 100),
                new Point(110, 100),
                new Point(100, 20),
                Optional.of(new Point(100, 160)),
                Optional.empty());
        Piece piece = at("0,0 200,0 200,200 0,200", "10,60").toBuilder()
                .darts(List.of(dart))
                .build();
        assertThat(width(piece).dartIntake()).isCloseTo(10, EXACT);
    }

    @Test
    void levelAlongAnEdgeTakesItsSewnLength() {
        Outline outline = Sketch.outline("0,10 (60,10 80,5) 100,0 110,200 0,200");
        Piece piece = Piece.bare("p", outline)
                .withEdges(List.of(Edge.of("waist", EdgeRole.WAIST, new Point(0, 10), new Point(100, 0))))
                .withLevels(List.of(LevelMark.along("hip", "waist")));
        assertThat(width(piece).width()).isCloseTo(outline.segments().get(0).length(), EXACT);
        Piece wrong = piece.withLevels(List.of(LevelMark.along("hip", "hem")));
        assertThat(Measures.of(wrong, List.of(HIP)).findings())
                .extracting("code")
                .containsExactly("level-edge-missing");
    }
}
