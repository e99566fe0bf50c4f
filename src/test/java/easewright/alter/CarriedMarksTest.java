package easewright.alter;

import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What goes along when a seam is displaced, and how far: the weight of a place is 1 at the level, 0 at the stops. */
class CarriedMarksTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Level HIP = Level.of("hip", LevelKind.HIP);
    private static final double BY = 20;

    /** A panel with an upright side at x = 200 from 0 to 400, its level at 200, held at both ends of the side. */
    private static Piece panel(String side) {
        Outline outline = Sketch.outline("0,0 " + side + " 0,400");
        Point top = new Point(200, 0);
        Point foot = new Point(200, 400);
        return Piece.bare("panel", outline).toBuilder()
                .edges(List.of(
                        Edge.of("top", EdgeRole.WAIST, new Point(0, 0), top),
                        Edge.of("side", EdgeRole.SEAM, top, foot),
                        Edge.of("hem", EdgeRole.HEM, foot, new Point(0, 400)),
                        Edge.of("fold", EdgeRole.FOLD, new Point(0, 400), new Point(0, 0))))
                .levels(List.of(LevelMark.through("hip", new Point(10, 200))))
                .build();
    }

    private static Piece straight() {
        return panel("200,0 200,200 200,400");
    }

    private static Piece changed(Piece piece, Taper taper) throws Refusal {
        return SeamChange.at("hip", BY)
                .withShares(Share.of("panel", "side"))
                .withTaper(taper)
                .fixedAt(new Point(200, 0), new Point(200, 400))
                .apply(pattern(List.of(HIP), piece))
                .pattern()
                .pieces()
                .get(0);
    }

    private static double smooth(double tau) {
        return tau * tau * (3 - 2 * tau);
    }

    private static Rider rider(Rider.Kind kind, Segment... segments) {
        return new Rider("r", kind, List.of(segments));
    }

    private static Rider carried(Rider rider, Taper taper) throws Refusal {
        return changed(straight().toBuilder().riders(List.of(rider)).build(), taper)
                .riders()
                .get(0);
    }

    @Test
    void notchesGoAsFarAsTheirPlace() throws Refusal {
        double[] heights = {50, 100, 130, 200, 250, 360};
        List<Notch> notches = java.util.Arrays.stream(heights)
                .mapToObj(y -> new Notch("n" + y, new Point(200, y)))
                .toList();
        Piece marked = straight().toBuilder().notches(notches).build();
        Piece smooth = changed(marked, Taper.SMOOTH);
        Piece straight = changed(marked, Taper.STRAIGHT);
        for (int i = 0; i < heights.length; i++) {
            double tau = heights[i] <= 200 ? heights[i] / 200 : (400 - heights[i]) / 200;
            assertThat(smooth.notches().get(i).at().x()).isCloseTo(200 + BY * smooth(tau), within(1e-6));
            assertThat(smooth.notches().get(i).at().y()).isCloseTo(heights[i], within(1e-6));
            assertThat(straight.notches().get(i).at().x()).isCloseTo(200 + BY * tau, within(1e-6));
        }
    }

    /** The seam drawn in two lines above the level tapers as the one line would: each takes its part of the curve. */
    @Test
    void aSmoothTaperRunsOnOverACorner() throws Refusal {
        Piece piece = changed(panel("200,0 200,80 200,200 200,290 200,400"), Taper.SMOOTH);
        for (Segment s : piece.outline().segments()) {
            for (double t : new double[] {0, 0.3, 0.5, 0.8, 1}) {
                Point p = s.at(t);
                if (p.x() > 199) {
                    double tau = p.y() <= 200 ? p.y() / 200 : (400 - p.y()) / 200;
                    assertThat(p.x()).isCloseTo(200 + BY * smooth(tau), within(1e-9));
                }
            }
        }
    }

    /** On a curve that rises all the way a straight taper is a shear: every place goes in proportion to its height. */
    @Test
    void aStraightTaperShearsACurve() throws Refusal {
        Piece before = panel("200,0 (230,30 180,150) 200,200 200,400");
        Piece after = changed(before, Taper.STRAIGHT);
        Segment was = before.outline().segments().get(1);
        Segment is = after.outline().segments().get(1);
        for (double t = 0; t <= 1; t += 0.1) {
            assertThat(is.at(t).y()).isCloseTo(was.at(t).y(), EXACT);
            assertThat(is.at(t).x() - was.at(t).x()).isCloseTo(BY * was.at(t).y() / 200, EXACT);
        }
    }

    /** On one that turns back on its way the taper is even in the curve's own parameter. */
    @Test
    void aStraightTaperOfACurveThatTurnsBack() throws Refusal {
        for (String curve : List.of("200,0 (230,150 180,50) 200,200", "200,0 (230,-20 180,80) 200,200")) {
            Piece before = panel(curve + " 200,400");
            Segment was = before.outline().segments().get(1);
            Segment is = changed(before, Taper.STRAIGHT).outline().segments().get(1);
            for (double t = 0; t <= 1; t += 0.1) {
                assertThat(is.at(t).x() - was.at(t).x()).as(curve).isCloseTo(BY * t, EXACT);
            }
        }
    }

    /** A cutting line beside the seam keeps its distance from it: in one piece over a taper, and parted at its turn. */
    @Test
    void aLineBesideTheSeamKeepsItsDistance() throws Refusal {
        Line beside = new Line(new Point(215, 0), new Point(215, 200));
        Segment smooth = carried(rider(Rider.Kind.PARALLEL, beside), Taper.SMOOTH)
                .segments()
                .get(0);
        for (double t : new double[] {0, 0.2, 0.5, 0.9, 1}) {
            assertThat(smooth.at(t).x()).isCloseTo(215 + BY * smooth(t), within(1e-6));
            assertThat(smooth.at(t).y()).isCloseTo(200 * t, within(1e-6));
        }
        Segment straight = carried(rider(Rider.Kind.PARALLEL, beside), Taper.STRAIGHT)
                .segments()
                .get(0);
        assertThat(straight).isInstanceOf(Line.class);
        assertThat(straight.at(0.5).x()).isCloseTo(215 + BY / 2, within(1e-6));
        Line whole = new Line(new Point(215, 0), new Point(215, 400));
        List<Segment> over =
                carried(rider(Rider.Kind.PARALLEL, whole), Taper.STRAIGHT).segments();
        assertThat(over).hasSize(2).allMatch(Line.class::isInstance);
        assertThat(over.get(0).start()).isEqualTo(whole.start());
        assertThat(over.get(0).end()).isEqualTo(over.get(1).start());
        assertThat(over.get(1).end()).isEqualTo(whole.end());
        assertThat(over.get(0).end().distance(new Point(215 + BY, 200))).isLessThan(1e-6);
    }

    @Test
    void whatLiesBesideAStillEdgeIsTheSameObject() throws Refusal {
        for (Rider.Kind kind : Rider.Kind.values()) {
            Rider still = rider(kind, new Line(new Point(20, 415), new Point(150, 415)));
            assertThat(carried(still, Taper.SMOOTH)).isSameAs(still);
        }
        Rider inner = rider(Rider.Kind.INNER, new Line(new Point(190, 150), new Point(190, 250)));
        assertThat(carried(inner, Taper.SMOOTH)).isSameAs(inner);
    }

    /** A level drawn from fold to side is pulled longer; a tick at the side goes as it is. */
    @Test
    void attachedLinesGoWithTheirEnds() throws Refusal {
        Rider level = rider(Rider.Kind.ATTACHED, new Line(new Point(0, 100), new Point(200, 100)));
        Segment pulled = carried(level, Taper.STRAIGHT).segments().get(0);
        assertThat(pulled).isEqualTo(new Line(new Point(0, 100), new Point(200 + BY / 2, 100)));
        Rider back = rider(Rider.Kind.ATTACHED, new Line(new Point(200, 100), new Point(0, 100)));
        assertThat(carried(back, Taper.STRAIGHT).segments().get(0))
                .isEqualTo(new Line(new Point(200 + BY / 2, 100), new Point(0, 100)));
        Rider tick = rider(Rider.Kind.ATTACHED, new Line(new Point(200, 100), new Point(192, 100)));
        Segment ticked = carried(tick, Taper.STRAIGHT).segments().get(0);
        assertThat(ticked.start().x()).isCloseTo(200 + BY / 2, EXACT);
        assertThat(ticked.end().x()).isCloseTo(192 + BY / 2, EXACT);
        Rider bowed = rider(
                Rider.Kind.ATTACHED,
                new Cubic(new Point(0, 100), new Point(60, 110), new Point(140, 110), new Point(200, 100)));
        Cubic bow = (Cubic) carried(bowed, Taper.STRAIGHT).segments().get(0);
        assertThat(bow.control1().x()).isCloseTo(60 + BY / 6, EXACT);
        assertThat(bow.control2().x()).isCloseTo(140 + BY / 3, EXACT);
        assertThat(bow.end().x()).isCloseTo(200 + BY / 2, EXACT);
    }

    @Test
    void marksOffTheOutlineStayAndDartsAtASeamGoAlong() throws Refusal {
        Dart dart = new Dart(
                "d", new Point(200, 60), new Point(200, 80), new Point(120, 70), Optional.empty(), Optional.empty());
        Piece marked = straight().toBuilder()
                .notches(List.of(new Notch("in", new Point(150, 100))))
                .darts(List.of(dart))
                .build();
        Piece after = SeamChange.at("hip", BY)
                .withShares(Share.of("panel", "side"))
                .withTaper(Taper.STRAIGHT)
                .fixedAt(new Point(200, 100), new Point(200, 400))
                .apply(pattern(List.of(HIP), marked))
                .pattern()
                .pieces()
                .get(0);
        assertThat(after.notches().get(0).at()).isEqualTo(new Point(150, 100));
        assertThat(after.darts()).containsExactly(dart);
    }
}
