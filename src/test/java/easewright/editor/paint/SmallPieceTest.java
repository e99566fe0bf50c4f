package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import java.util.Arrays;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** On a piece seen very small, signs that keep their size in pixels are left out. */
class SmallPieceTest {
    private static final int WIDE = 200;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** The first piece of the skirt, so long on the screen, with its notches or without. */
    private static int[] painted(double longest, boolean notched) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        Piece first = session.desk().pattern().pieces().get(0);
        assertThat(first.notches()).isNotEmpty();
        Piece piece = notched ? first : first.toBuilder().notches(List.of()).build();
        Pattern alone = session.desk().pattern().withMates(List.of()).withPieces(List.of(piece));
        TableScene scene = new TableScenes().of(session.desk().seeing(alone));
        Point corner = piece.outline().box().centre();
        double scale = longest
                / Math.max(piece.outline().box().width(), piece.outline().box().height());
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(WIDE, WIDE);
            Viewport view = new Viewport(scale, 0, 0).withAt(corner, WIDE / 2.0, WIDE / 2.0);
            TablePainter.paint(canvas.getGraphicsContext2D(), WIDE, WIDE, view, Ink.LIGHT, scene);
            int[] pixels = new int[WIDE * WIDE];
            canvas.snapshot(null, null)
                    .getPixelReader()
                    .getPixels(0, 0, WIDE, WIDE, PixelFormat.getIntArgbInstance(), pixels, 0, WIDE);
            return pixels;
        });
    }

    @Test
    void notchesAreSeenNearAndNotFromFarAway() throws Exception {
        assertThat(Arrays.equals(painted(160, true), painted(160, false))).isFalse();
        assertThat(Arrays.equals(painted(16, true), painted(16, false))).isTrue();
    }

    @Test
    void theOutlineIsSeenFromFarAway() throws Exception {
        int[] pixels = painted(16, true);
        int middle = pixels[WIDE / 2 * WIDE + WIDE / 2];
        assertThat(middle).isNotEqualTo(pixels[0]);
        assertThat(Arrays.stream(pixels).distinct().count()).isGreaterThan(2);
    }
}
