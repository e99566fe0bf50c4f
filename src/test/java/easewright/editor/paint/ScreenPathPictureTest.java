package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineJoin;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Small parts of a curve look as if the toolkit drew them as curves, although most of them are drawn straight. */
class ScreenPathPictureTest {
    private static final int SIDE = 240;

    /** The hair by which a part may be off its curve, 0.02 pixels, in levels of 255. */
    private static final int LEVELS = 5;

    private static final Viewport VIEW = new Viewport(0.35, 20, 20);

    private final Random random = new Random(5);

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void smallPartsLookAsCurves() throws Exception {
        for (int i = 0; i < 20; i++) {
            Cubic curve = curve();
            int parts = 20 + random.nextInt(60);
            List<Segment> small = new ArrayList<>();
            for (int k = 0; k < parts; k++) {
                small.add(curve.between((double) k / parts, (double) (k + 1) / parts));
            }
            int[] curved = painted(gc -> small.forEach(part -> lay(gc, (Cubic) part)), curve.start());
            int[] laid = painted(gc -> ScreenPath.of(small, VIEW).lay(gc, 0, 0, false), curve.start());
            int inked = 0;
            for (int pixel = 0; pixel < curved.length; pixel++) {
                assertThat(laid[pixel]).isBetween(curved[pixel] - LEVELS, curved[pixel] + LEVELS);
                inked += curved[pixel] < 128 ? 1 : 0;
            }
            assertThat(inked).isGreaterThan(20);
        }
    }

    private static void lay(GraphicsContext gc, Cubic part) {
        gc.bezierCurveTo(
                VIEW.screenX(part.control1().x()),
                VIEW.screenY(part.control1().y()),
                VIEW.screenX(part.control2().x()),
                VIEW.screenY(part.control2().y()),
                VIEW.screenX(part.end().x()),
                VIEW.screenY(part.end().y()));
    }

    /** Without a turn back, and so long that no part is too short to be seen. */
    private Cubic curve() {
        Point start = new Point(50 + 50 * random.nextDouble(), 550 * random.nextDouble());
        Point end = new Point(500 + 50 * random.nextDouble(), 550 * random.nextDouble());
        Point across = end.minus(start).unit().quarterTurned();
        return new Cubic(
                start,
                start.towards(end, 0.3).plus(across.times(250 * (random.nextDouble() - 0.5))),
                start.towards(end, 0.7).plus(across.times(250 * (random.nextDouble() - 0.5))),
                end);
    }

    private interface Laid {
        void in(GraphicsContext gc);
    }

    /** How light each pixel is. */
    private static int[] painted(Laid path, Point start) throws Exception {
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(SIDE, SIDE);
            GraphicsContext gc = canvas.getGraphicsContext2D();
            gc.setFill(Color.WHITE);
            gc.fillRect(0, 0, SIDE, SIDE);
            gc.setLineWidth(2);
            gc.setLineJoin(StrokeLineJoin.ROUND);
            gc.beginPath();
            gc.moveTo(VIEW.screenX(start.x()), VIEW.screenY(start.y()));
            path.in(gc);
            gc.stroke();
            WritableImage image = canvas.snapshot(null, null);
            int[] pixels = new int[SIDE * SIDE];
            image.getPixelReader().getPixels(0, 0, SIDE, SIDE, PixelFormat.getIntArgbInstance(), pixels, 0, SIDE);
            for (int i = 0; i < pixels.length; i++) {
                pixels[i] &= 0xff;
            }
            return pixels;
        });
    }
}
