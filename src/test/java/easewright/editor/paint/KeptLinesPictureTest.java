package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Point;
import easewright.text.LengthUnit;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** What a change moves, what is done and what is protected can be told apart by shape as well as by colour. */
class KeptLinesPictureTest {
    private static final int WIDE = 600;
    private static final int HIGH = 600;

    /** On the sample skirt: the side seam of the back just above the hem, and the fold of the front, mm. */
    private static final Point SIDE = new Point(325, 700);

    private static final Point FOLD = new Point(655, 600);

    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private void tryAtTheHip() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
    }

    private PixelReader painted(Point middle) throws Exception {
        TableScene scene = new TableScenes().of(session.desk());
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(WIDE, HIGH);
            Viewport view = new Viewport(2, 0, 0).withAt(middle, WIDE / 2.0, HIGH / 2.0);
            TablePainter.paint(canvas.getGraphicsContext2D(), WIDE, HIGH, view, Ink.LIGHT, scene);
            WritableImage image = canvas.snapshot(null, null);
            return image.getPixelReader();
        });
    }

    /** How many pixels of the middle row are of the colour of what was moved. */
    private static int movedAcross(PixelReader picture) {
        int many = 0;
        for (int x = WIDE / 2 - 60; x < WIDE / 2 + 60; x++) {
            Color color = picture.getColor(x, HIGH / 2);
            many += color.getRed() - color.getBlue() > 0.3 ? 1 : 0;
        }
        return many;
    }

    @Test
    void whatIsKeptIsDrawnMoreThinlyThanWhatIsTried() throws Exception {
        tryAtTheHip();
        int tried = movedAcross(painted(SIDE));
        session.keep();
        int kept = movedAcross(painted(SIDE));
        assertThat(kept).isPositive().isLessThan(tried);
    }

    /** A fold is protected too: where it stays it bears the same pins as any other protected edge. */
    @Test
    void aFoldThatStaysLooksAsOtherProtectedEdgesDo() throws Exception {
        tryAtTheHip();
        assertThat(pins(painted(FOLD))).isGreaterThan(5);
        session.leave();
        assertThat(pins(painted(FOLD))).isZero();
    }

    /** Runs of the protected colour, 5 pixels inside the fold. */
    private static int pins(PixelReader picture) {
        int pins = 0;
        boolean on = false;
        for (int y = 0; y < HIGH; y++) {
            Color color = picture.getColor(WIDE / 2 - 5, y);
            boolean is = color.getBlue() - color.getRed() > 0.1;
            pins += is && !on ? 1 : 0;
            on = is;
        }
        return pins;
    }
}
