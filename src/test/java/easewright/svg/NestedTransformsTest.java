package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Segment;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random stacks of transforms against the JDK's own matrices, as an independent reference. */
class NestedTransformsTest {
    private static final double[] CORNERS = {0, 0, 10, 0, 10, 7, 3, 12};

    @Test
    void agreesWithTheJdkOnRandomStacks() {
        Random random = new Random(20_261_125);
        for (int round = 0; round < 200; round++) {
            AffineTransform expected = new AffineTransform();
            StringBuilder markup = new StringBuilder();
            int depth = 1 + random.nextInt(6);
            for (int i = 0; i < depth; i++) {
                markup.append("<g transform='");
                for (int k = random.nextInt(3); k >= 0; k--) {
                    markup.append(step(random, expected));
                }
                markup.append("'>");
            }
            markup.append("<polygon points='0 0 10 0 10 7 3 12'/>").append("</g>".repeat(depth));
            Drawing drawing =
                    Drawn.read(Drawn.svg("width='1000mm' height='1000mm' viewBox='0 0 1000 1000'", markup.toString()));
            List<Segment> sides = drawing.shapes().get(0).subPaths().get(0).segments();
            assertThat(sides).hasSize(4);
            for (int i = 0; i < 4; i++) {
                Point2D corner = expected.transform(new Point2D.Double(CORNERS[2 * i], CORNERS[2 * i + 1]), null);
                assertThat(sides.get(i).start().x()).as(markup.toString()).isCloseTo(corner.getX(), within(1e-8));
                assertThat(sides.get(i).start().y()).as(markup.toString()).isCloseTo(corner.getY(), within(1e-8));
            }
        }
    }

    private static String step(Random random, AffineTransform expected) {
        double a = random.nextDouble() * 4 - 2;
        double b = random.nextDouble() * 4 - 2;
        double angle = random.nextInt(720) - 360;
        switch (random.nextInt(6)) {
            case 0:
                expected.translate(a * 10, b * 10);
                return text("translate(%.17g,%.17g)", a * 10, b * 10);
            case 1:
                expected.scale(a, b);
                return text("scale(%.17g %.17g)", a, b);
            case 2:
                expected.rotate(Math.toRadians(angle));
                return text("rotate(%.17g)", angle);
            case 3:
                expected.rotate(Math.toRadians(angle), a, b);
                return text("rotate(%.17g %.17g,%.17g)", angle, a, b);
            case 4:
                expected.shear(Math.tan(Math.toRadians(a * 20)), 0);
                return text(" skewX( %.17g )", a * 20);
            default:
                expected.concatenate(new AffineTransform(1, a / 2, b / 2, 1, a, b));
                return text("matrix(1 %.17g %.17g 1 %.17g %.17g) ", a / 2, b / 2, a, b);
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
