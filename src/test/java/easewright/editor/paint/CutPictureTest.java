package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.DoubleStream;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A cut shown on the table lies over the lines of the pieces and under the words. */
class CutPictureTest {
    private static final int WIDE = 1080;
    private static final int HIGH = 720;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private record Painted(WritableImage image, Viewport view) {
        boolean is(Color colour, Point place, int reach) {
            Point at = view.toScreen(place);
            for (int x = -reach; x <= reach; x++) {
                for (int y = -reach; y <= reach; y++) {
                    Color seen = image.getPixelReader().getColor((int) at.x() + x, (int) at.y() + y);
                    if (Math.abs(seen.getHue() - colour.getHue()) < 6 && seen.getSaturation() > 0.5) {
                        return true;
                    }
                }
            }
            return false;
        }
    }

    private static Painted painted(TableScene scene, Line cut) throws Exception {
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        Viewport view = Viewport.fitting(all, WIDE, HIGH, 24);
        Callable<WritableImage> paint = () -> {
            Canvas canvas = new Canvas(WIDE, HIGH);
            TablePainter.paint(
                    TableLayers.one(canvas.getGraphicsContext2D()),
                    WIDE,
                    HIGH,
                    1,
                    view,
                    Ink.LIGHT,
                    scene,
                    Underlay.NONE,
                    List.of(cut),
                    List.of(),
                    new DrawnLines());
            return canvas.snapshot(null, null);
        };
        return new Painted(WaitForAsyncUtils.waitForAsyncFx(10_000, paint), view);
    }

    @Test
    void theWidthOfALevelStandsAboveACut() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
        TableScene scene = new TableScenes().of(session.desk());
        Segment hip = scene.pieces().get(0).levels().stream()
                .filter(TableScene.LevelSight::chosen)
                .findFirst()
                .orElseThrow()
                .runs()
                .get(0)
                .segments()
                .get(0);
        Point middle = hip.at(0.5);
        Line cut = new Line(middle.minus(new Point(20, 150)), middle.plus(new Point(20, 150)));
        Painted table = painted(scene, cut);
        Color red = Ink.LIGHT.moved();
        assertThat(DoubleStream.of(0.1, 0.2, 0.7, 0.8, 0.9).anyMatch(t -> table.is(red, cut.at(t), 6)))
                .as("the cut is there")
                .isTrue();
        assertThat(table.is(red, middle, 6)).as("on the label").isFalse();
        assertThat(table.is(Ink.LIGHT.level(), middle, 6)).as("the label").isTrue();
    }
}
