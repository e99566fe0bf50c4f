package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** How far each place of a seam goes when its level is moved by 1: closed forms over τ, the share of the height. */
class ShiftBuilderTest {
    private static final Offset<Double> EXACT = within(1e-12);
    private static final Point OUT = new Point(1, 0);
    private static final Point TOP = new Point(100, 0);
    private static final Point FOOT = new Point(100, 200);

    /** A panel whose right side runs from (100, 0) down to (100, 200) by the given path. */
    private static Outline panel(String side) {
        return Sketch.outline("0,0 100,0 " + side + " 0,200");
    }

    private static Shift tapered(String side, double first, double last, Taper how) throws Refusal {
        ShiftBuilder builder = new ShiftBuilder(panel(side), OUT);
        builder.taper(TOP, FOOT, first, last, how);
        return builder.build();
    }

    /** How far the place at a parameter of a segment goes; segment 0 is the top edge. */
    private static double gone(Shift shift, int segment, double t) {
        return shift.weight(new Place(segment, t));
    }

    @Test
    void aStraightTaperIsTheShareOfTheHeight() throws Refusal {
        Shift shift = tapered("100,50 100,200", 0, 1, Taper.STRAIGHT);
        assertThat(gone(shift, 1, 0.5)).isCloseTo(25 / 200.0, EXACT);
        assertThat(gone(shift, 1, 1)).isCloseTo(50 / 200.0, EXACT);
        assertThat(gone(shift, 2, 0.5)).isCloseTo(125 / 200.0, EXACT);
        assertThat(gone(shift, 2, 1)).isEqualTo(1);
        assertThat(gone(tapered("100,50 100,200", 1, 0, Taper.STRAIGHT), 2, 0.5))
                .isCloseTo(75 / 200.0, EXACT);
    }

    /** 3τ² − 2τ³, also where the seam is cut in two. */
    @Test
    void aSmoothTaperLeavesBothEndsInTheirDirection() throws Refusal {
        Shift shift = tapered("100,50 100,200", 0, 1, Taper.SMOOTH);
        for (double t = 0; t <= 1; t += 0.125) {
            assertThat(gone(shift, 1, t)).isCloseTo(eased(t * 0.25), EXACT);
            assertThat(gone(shift, 2, t)).isCloseTo(eased(0.25 + t * 0.75), EXACT);
        }
        Shift whole = tapered("100,200", 1, 0, Taper.SMOOTH);
        assertThat(gone(whole, 1, 0.25)).isCloseTo(1 - eased(0.25), EXACT);
    }

    private static double eased(double share) {
        return share * share * (3 - 2 * share);
    }

    /** A curve that goes down all the way is sheared: every place by its own height, wherever it lies on the curve. */
    @Test
    void aCurveThatFallsThroughoutIsSheared() throws Refusal {
        String side = "(130,10 80,150) 100,200";
        Shift shift = tapered(side, 0, 1, Taper.STRAIGHT);
        for (double t = 0; t <= 1; t += 0.125) {
            double y = shift.base().segments().get(1).at(t).y();
            assertThat(gone(shift, 1, t)).isCloseTo(y / 200, EXACT);
        }
    }

    /** One that turns up on its way cannot be: it goes by its parameter, evenly. */
    @Test
    void aCurveThatTurnsBackGoesByItsParameter() throws Refusal {
        for (String side : List.of("(130,-30 80,150) 100,200", "(130,30 80,250) 100,200", "(130,150 80,40) 100,200")) {
            Shift shift = tapered(side, 0, 1, Taper.STRAIGHT);
            for (double t = 0; t <= 1; t += 0.125) {
                assertThat(gone(shift, 1, t)).as(side).isCloseTo(t, EXACT);
            }
        }
    }

    /** Values 2 and 5 with the slopes 3 and −6: 2 + 3τ + 9τ² − 9τ³, wherever the run is cut. */
    @Test
    void aCubicHasItsValuesAndSlopes() throws Refusal {
        ShiftBuilder builder = new ShiftBuilder(panel("100,50 100,200"), OUT);
        builder.cubic(TOP, FOOT, 2, 3, 5, -6);
        Shift shift = builder.build();
        for (double t = 0; t <= 1; t += 0.125) {
            assertThat(gone(shift, 1, t)).isCloseTo(cubic(t * 0.25), within(1e-11));
            assertThat(gone(shift, 2, t)).isCloseTo(cubic(0.25 + t * 0.75), within(1e-11));
        }
    }

    private static double cubic(double s) {
        return 2 + s * (3 + s * (9 - 9 * s));
    }

    /** In proportion to the chord and within a segment to its parameter. */
    @Test
    void anEvenRunGoesInProportion() throws Refusal {
        ShiftBuilder builder = new ShiftBuilder(panel("100,50 (100,60 100,90) 100,200"), OUT);
        builder.even(TOP, FOOT, 3, 7);
        Shift shift = builder.build();
        assertThat(gone(shift, 1, 0.5)).isCloseTo(3.5, EXACT);
        assertThat(gone(shift, 1, 1)).isCloseTo(4, EXACT);
        for (double t = 0; t <= 1; t += 0.125) {
            assertThat(gone(shift, 2, t)).isCloseTo(4 + 3 * t, EXACT);
        }
        ShiftBuilder none = new ShiftBuilder(panel("100,200"), OUT);
        none.even(TOP, TOP, 3, 7);
        none.rigid(FOOT, FOOT);
        assertThat(none.build().at(1)).isEqualTo(none.build().base());
    }

    /** The hem stretches in proportion from the fold out to the side. */
    @Test
    void aStretchedRunGoesByHowFarOutItLies() throws Refusal {
        ShiftBuilder builder = new ShiftBuilder(panel("100,200"), OUT);
        builder.stretch(FOOT, new Point(0, 200), 1, 0);
        Shift shift = builder.build();
        assertThat(gone(shift, 2, 0.25)).isCloseTo(0.75, EXACT);
        assertThat(gone(shift, 2, 1)).isZero();
    }

    @Test
    void whatHasNoRoomIsRefused() {
        String level = "100.4,0.4 100,200";
        Point near = new Point(100.4, 0.4);
        assertThat(code(b -> b.taper(TOP, near, 1, 0, Taper.SMOOTH), level)).isEqualTo("no-room-to-taper");
        assertThat(code(b -> b.cubic(TOP, near, 1, 0, 0, 0), level)).isEqualTo("no-room-to-taper");
        assertThat(code(b -> b.stretch(TOP, near, 1, 0), level)).isEqualTo("no-room-to-stretch");
        assertThat(code(
                        b -> {
                            b.rigid(TOP, FOOT);
                            b.taper(TOP, FOOT, 1, 0, Taper.SMOOTH);
                        },
                        "100,200"))
                .isEqualTo("runs-overlap");
    }

    private interface Laying {
        void on(ShiftBuilder builder) throws Refusal;
    }

    private static String code(Laying laying, String side) {
        ShiftBuilder builder = new ShiftBuilder(panel(side), OUT);
        return catchThrowableOfType(Refusal.class, () -> laying.on(builder)).code();
    }

    /** A place found again after rounding is the end of segments that it was. */
    @Test
    void aPlaceNextToAnEndIsThatEnd() {
        ShiftBuilder builder = new ShiftBuilder(panel("100,200"), OUT);
        assertThat(builder.split(new Point(100, 0.009))).isEqualTo(TOP);
        assertThat(builder.split(new Point(100, 199.991))).isEqualTo(FOOT);
        assertThat(builder.split(new Point(100, 0.02))).isEqualTo(new Point(100, 0.02));
        assertThat(builder.build().base().segments()).hasSize(5);
    }

    /** A run that goes on over the start of the outline is one run. */
    @Test
    void aRunOverTheStartOfTheOutlineIsMovedAsOne() throws Refusal {
        Outline outline = Sketch.outline("100,100 100,200 0,200 0,0 100,0");
        ShiftBuilder builder = new ShiftBuilder(outline, OUT);
        Point level = new Point(100, 100);
        builder.taper(TOP, level, 0, 1, Taper.SMOOTH);
        builder.taper(level, FOOT, 1, 0, Taper.SMOOTH);
        List<Moved> moved = builder.build().moved("panel", 10);
        assertThat(moved).hasSize(1);
        assertThat(moved.get(0).before().start()).isEqualTo(TOP);
        assertThat(moved.get(0).before().end()).isEqualTo(FOOT);
        assertThat(moved.get(0).after().segments().get(0).end()).isEqualTo(new Point(110, 100));
    }

    /** A line beside the seam goes by as much as the seam there; what lies beside nothing that moves is the same object. */
    @Test
    void aLineBesideGoesWithTheSeamAndTheRestIsLeft() throws Refusal {
        Shift shift = tapered("100,200", 0, 1, Taper.STRAIGHT);
        Segment beside = new Line(new Point(110, 40), new Point(110, 160));
        assertThat(shift.carryBeside(beside, 10)).containsExactly(new Line(new Point(112, 40), new Point(118, 160)));
        Segment curve = new Cubic(new Point(110, 40), new Point(110, 80), new Point(110, 120), new Point(110, 160));
        assertThat(shift.carryBeside(curve, 10).get(0).at(0.5).distance(new Point(115, 100)))
                .isLessThan(1e-9);
        Segment far = new Line(new Point(-10, 40), new Point(-10, 160));
        assertThat(shift.carryBeside(far, 10)).singleElement().isSameAs(far);
        assertThat(shift.carryEnds(far, 10)).isSameAs(far);
        Segment mark = new Line(new Point(10, 100), new Point(100, 100));
        assertThat(shift.carryEnds(mark, 10)).isEqualTo(new Line(new Point(10, 100), new Point(105, 100)));
    }
}
