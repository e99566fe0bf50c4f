package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.text.LengthUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A picture for which lines were kept from those before it is the same, pixel by pixel, as one painted from nothing. */
class DrawnLinesPictureTest {
    private static final int SIDE = 300;

    private final Session session = new Session(LengthUnit.CM, false);
    private final TableScenes scenes = new TableScenes();
    private final DrawnLines kept = new DrawnLines();

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void picturesOfAPullAreThoseOfLinesMadeAnew() throws Exception {
        Random random = new Random(11);
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
        List<Viewport> views =
                List.of(new Viewport(0.35, 10, 10), new Viewport(0.35, 40, 10), new Viewport(1, -90, -400));
        int[] before = {};
        int others = 0;
        for (int picture = 0; picture < 24; picture++) {
            Viewport view = views.get(random.nextInt(views.size()));
            double amount = random.nextInt(3) == 0 ? 0 : random.nextInt(40);
            session.want(session.desk().wanted().orElseThrow().withAmount(amount));
            TableScene scene = scenes.of(session.desk());
            int[] now = painted(scene, view, kept);
            assertThat(now).isEqualTo(painted(scene, view, new DrawnLines()));
            others += Arrays.equals(now, before) ? 0 : 1;
            before = now;
        }
        assertThat(others).isGreaterThan(12);
    }

    private static int[] painted(TableScene scene, Viewport view, DrawnLines lines) throws Exception {
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(SIDE, SIDE);
            TablePainter.paint(
                    TableLayers.one(canvas.getGraphicsContext2D()),
                    SIDE,
                    SIDE,
                    1,
                    view,
                    Ink.LIGHT,
                    scene,
                    Underlay.NONE,
                    List.of(),
                    List.of(),
                    lines);
            WritableImage image = canvas.snapshot(null, null);
            int[] pixels = new int[SIDE * SIDE];
            image.getPixelReader().getPixels(0, 0, SIDE, SIDE, PixelFormat.getIntArgbInstance(), pixels, 0, SIDE);
            return pixels;
        });
    }
}
