package easewright.topology;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class ValidityTest {
    @Test
    void plainShapesAreSimple() {
        assertThat(Validity.isSimple(Sketch.outline("0,0 100,0 100,200 0,200"))).isTrue();
        assertThat(Validity.isSimple(Sketch.outline("0,0 100,0 (140,30 120,80) 90,120 0,120")))
                .isTrue();
        assertThat(Validity.isSimple(Sketch.outline("0,0 80,0 92,100 104,0 200,0 200,200 0,200")))
                .isTrue();
        assertThat(Validity.isSimple(Sketch.randomBlob(new Random(1), 60, 300))).isTrue();
    }

    /** A skirt's side seam pinched at the hip by a smooth taper: both curves pass the hip upright. */
    @Test
    void smoothJoinOfTwoCurvesIsNoMeeting() {
        for (double hip = 400; hip <= 475; hip += 0.4995) {
            String side = "435,117.5 (416.979,194.7327 " + hip + ",255.6927) " + hip + ",335 (" + hip
                    + ",466.66666666666663 400,598.3333333333333) 400,730";
            assertThat(Validity.meetings(Sketch.outline(side + " 655,730 655,117.5")))
                    .as("hip at " + hip)
                    .isEmpty();
        }
    }

    @Test
    void crossingIsFoundWithItsPlace() {
        List<Meeting> found = Validity.meetings(Sketch.outline("0,0 100,100 100,0 0,100"));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).point().distance(new Point(50, 50))).isLessThan(1e-9);
    }

    @Test
    void curveThroughTheOppositeSide() {
        Outline outline = Sketch.outline("0,0 100,0 100,50 (90,60 20,-80) 0,50");
        List<Meeting> found = Validity.meetings(outline);
        assertThat(found).hasSize(2).allSatisfy(m -> {
            assertThat(Math.abs(m.point().y())).isLessThan(1e-9);
            assertThat(outline.point(m.first()).distance(outline.point(m.second())))
                    .isLessThan(1e-8);
        });
    }

    @Test
    void loopOfOneCubic() {
        // The cubic goes out and back over itself.
        List<Meeting> found = Validity.meetings(Sketch.outline("0,0 (300,150 -200,150) 100,0 100,-50 0,-50"));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).first().segment()).isZero();
        assertThat(found.get(0).second().segment()).isZero();
        assertThat(found.get(0).point().x()).isCloseTo(50, org.assertj.core.api.Assertions.within(1e-8));
    }

    @Test
    void touchingCornerAndDoubledRunAreNotSimple() {
        assertThat(Validity.isSimple(Sketch.outline("0,0 100,0 100,100 50,0 0,100")))
                .isFalse();
        assertThat(Validity.isSimple(Sketch.outline("0,0 100,0 100,100 100,40 150,40 150,200 0,200")))
                .isFalse();
    }

    /** A saw whose back crosses itself once: few strands are compared, many are looked up. */
    @Test
    void oneCrossingIsFoundAmongFewAndAmongManyLines() {
        for (int teeth : new int[] {5, 70, 90, 2_000}) {
            StringBuilder saw = new StringBuilder();
            for (int i = 0; i < teeth; i++) {
                saw.append(2 * i + ",0 " + (2 * i + 1) + ",5 ");
            }
            String body = 2 * teeth + ",-20 0,-20";
            assertThat(Validity.isSimple(Sketch.outline(saw + body))).isTrue();
            assertThat(Validity.meetings(Sketch.outline(saw.toString() + 2 * teeth + ",-20 5,-20 5,-30 8,-10 0,-10")))
                    .as(teeth + " teeth")
                    .hasSize(1);
        }
    }

    @Test
    void segmentWithoutLengthIsNoFault() {
        assertThat(Validity.isSimple(Sketch.outline("0,0 100,0 100,0 100,200 0,200")))
                .isTrue();
    }

    /** Random closed shapes of cubics: JTS on a fine flattening is the other witness. */
    @Test
    void agreesWithJts() {
        Random random = new Random(42);
        int simple = 0;
        for (int run = 0; run < 300; run++) {
            int corners = 3 + random.nextInt(4);
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < corners; i++) {
                double angle = 2 * Math.PI * i / corners;
                text.append(at(random, angle, 100, 80));
                text.append(" (").append(at(random, angle + 0.3, 100, 130));
                text.append(' ').append(at(random, angle + 0.7, 100, 130)).append(") ");
            }
            Outline outline = Sketch.outline(text + "z");
            boolean ours = Validity.isSimple(outline);
            assertThat(ours).as("run %d: %s", run, text).isEqualTo(jtsSimple(outline));
            simple += ours ? 1 : 0;
        }
        assertThat(simple).as("both kinds must occur").isBetween(30, 270);
    }

    private static String at(Random random, double angle, double radius, double spread) {
        double x = radius * Math.cos(angle) + spread * (random.nextDouble() - 0.5);
        double y = radius * Math.sin(angle) + spread * (random.nextDouble() - 0.5);
        return x + "," + y;
    }

    private static boolean jtsSimple(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            // Closer towards the ends, where a curve may cross its neighbour just beside their common corner.
            for (int i = 0; i < 800; i++) {
                Point p = segment.at((1 - Math.cos(Math.PI * i / 800)) / 2);
                ring.add(new Coordinate(p.x(), p.y()));
            }
        }
        ring.add(ring.get(0));
        return new GeometryFactory()
                .createLinearRing(ring.toArray(new Coordinate[0]))
                .isSimple();
    }
}
