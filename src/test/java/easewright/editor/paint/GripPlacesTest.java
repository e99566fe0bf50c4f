package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GripPlacesTest {
    private static final Point RIGHT = new Point(1, 0);
    private static final Point LEFT = new Point(-1, 0);

    /** Nothing lies on the pieces. */
    private static final GripPlaces.Ground BARE = new GripPlaces.Ground() {
        @Override
        public boolean hides(GripPlaces.End end, Point at) {
            return false;
        }

        @Override
        public boolean isOff(GripPlaces.End end, Point at) {
            return true;
        }
    };

    /** Pieces beside each other, so wide and so far apart, pixels; a level across all of them. */
    private static List<GripPlaces.End> row(double gap, double... widths) {
        List<GripPlaces.End> ends = new ArrayList<>();
        double x = 100;
        for (int i = 0; i < widths.length; i++) {
            ends.add(new GripPlaces.End("piece " + i, new Point(x, 300), LEFT, false));
            ends.add(new GripPlaces.End("piece " + i, new Point(x + widths[i], 300), RIGHT, false));
            x += widths[i] + gap;
        }
        return ends;
    }

    @Test
    void whereThereIsRoomTheyLieOnTheEnds() {
        assertThat(GripPlaces.of(row(30, 200, 150), BARE)).allMatch(p -> p.off().equals(Point.ORIGIN) && !p.small());
    }

    /** Of two pieces that nearly touch each has its grip on its own side of the gap. */
    @Test
    void neighboursDrawBackOntoTheirOwnPieces() {
        List<GripPlaces.Place> places = GripPlaces.of(row(4, 200, 150), BARE);
        assertThat(places.get(1).off().x()).isNegative();
        assertThat(places.get(2).off().x()).isPositive();
        assertThat(places.get(0).off()).isEqualTo(Point.ORIGIN);
    }

    /** However pieces lie, no two grips touch, and none lies beyond the middle of its piece. */
    @Test
    void noTwoTouch() {
        Random random = new Random(20);
        int drawn = 0;
        for (int round = 0; round < 400; round++) {
            double[] widths = random.doubles(2 + random.nextInt(6), 4, 120).toArray();
            List<GripPlaces.End> ends = row(random.nextDouble(30), widths);
            List<GripPlaces.Place> places = GripPlaces.of(ends, BARE);
            assertThat(places).hasSameSizeAs(ends);
            for (int i = 0; i < ends.size(); i++) {
                if (!places.get(i).small()) {
                    drawn++;
                    Point at = ends.get(i).at().plus(places.get(i).off());
                    double inward = -places.get(i).off().dot(ends.get(i).outward());
                    assertThat(inward).isBetween(-1e-9, widths[i / 2] / 2 + 1e-9);
                    for (int k = 0; k < i; k++) {
                        Point other = ends.get(k).at().plus(places.get(k).off());
                        assertThat(places.get(k).small() || other.distance(at) > 2 * OverlayPainter.GRIP)
                                .as("round %d: %d and %d", round, i, k)
                                .isTrue();
                    }
                }
            }
        }
        assertThat(drawn).isGreaterThan(2000);
    }

    /** A grip lies on its end, or so far from it that the stem which leads there is seen between them. */
    @Test
    void oneThatIsDrawnBackHasAStem() {
        Random random = new Random(21);
        int back = 0;
        for (int round = 0; round < 400; round++) {
            List<GripPlaces.End> ends = row(
                    random.nextDouble(30),
                    random.doubles(2 + random.nextInt(4), 60, 200).toArray());
            for (GripPlaces.Place place : GripPlaces.of(ends, BARE)) {
                double off = place.off().norm();
                assertThat(off == 0 || off > 2 * OverlayPainter.GRIP)
                        .as("%s", place)
                        .isTrue();
                back += off > 0 ? 1 : 0;
            }
        }
        assertThat(back).isGreaterThan(500);
    }

    /** Beside a notch or a corner a grip lies off its piece with a stem, of two neighbours both alike. */
    @Test
    void whatLiesUnderAnEndIsSeenBesideItsGrip() {
        int outside = 0;
        for (double gap = 22; gap < 120; gap += 1) {
            List<GripPlaces.End> ends = row(gap, 200, 150).stream()
                    .map(e -> new GripPlaces.End(e.piece(), e.at(), e.outward(), true))
                    .toList();
            List<GripPlaces.Place> places = GripPlaces.of(ends, BARE);
            for (int i = 0; i < ends.size(); i++) {
                Point at = ends.get(i).at().plus(places.get(i).off());
                assertThat(places.get(i).off().norm()).as("gap %s", gap).isGreaterThan(2 * OverlayPainter.GRIP);
                for (GripPlaces.End end : ends) {
                    assertThat(at.distance(end.at())).as("gap %s", gap).isGreaterThan(OverlayPainter.GRIP + 2);
                }
                outside += places.get(i).off().dot(ends.get(i).outward()) > 0 ? 1 : 0;
            }
            if (gap > 46) {
                assertThat(places.get(1).off().x()).isPositive();
                assertThat(places.get(1).off().y())
                        .isEqualTo(places.get(2).off().y());
                assertThat(places.get(1).off().x())
                        .isEqualTo(-places.get(2).off().x());
            }
        }
        assertThat(outside).isGreaterThan(250);
    }

    /** Where darts lie beside a corner on the piece, and another piece close to it off the piece, a grip lies above it. */
    @Test
    void whereThereAreDartsOneLiesAboveItsCorner() {
        GripPlaces.Ground darts = new GripPlaces.Ground() {
            @Override
            public boolean hides(GripPlaces.End end, Point at) {
                return at.minus(end.at()).dot(end.outward()) < -14;
            }

            @Override
            public boolean isOff(GripPlaces.End end, Point at) {
                return at.y() < 300 - OverlayPainter.GRIP;
            }
        };
        for (double gap = 4; gap < 40; gap += 1) {
            List<GripPlaces.End> ends = row(gap, 200, 150).stream()
                    .map(e -> new GripPlaces.End(e.piece(), e.at(), e.outward(), true))
                    .toList();
            List<GripPlaces.Place> places = GripPlaces.of(ends, darts);
            for (int i = 1; i <= 2; i++) {
                Point at = ends.get(i).at().plus(places.get(i).off());
                assertThat(places.get(i).small()).isFalse();
                assertThat(darts.hides(ends.get(i), at)).as("gap %s", gap).isFalse();
                assertThat(at.y()).as("gap %s", gap).isLessThan(300 - OverlayPainter.GRIP);
            }
        }
    }

    /** On pieces as narrow as a dot there is room for dots alone. */
    @Test
    void onAWholeNestSeenFromAfarTheyAreDots() {
        double[] many = new double[20];
        Arrays.fill(many, 5);
        assertThat(GripPlaces.of(row(3, many), BARE)).anyMatch(GripPlaces.Place::small);
    }
}
