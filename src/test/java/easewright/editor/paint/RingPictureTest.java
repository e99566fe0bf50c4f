package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelReader;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** What is seen between body and garment is all of the air there is: no line lies in it. */
class RingPictureTest {
    private static final int SIZE = 238;

    /** A radius of as many mm as this fills the picture at one pixel a mm. */
    private static final double WIDEST = SIZE / 2.0 - 4;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private static PixelReader painted(double body, double garment) throws Exception {
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(SIZE, SIZE);
            RingPainter.paint(canvas.getGraphicsContext2D(), SIZE, WIDEST, body, garment, Ink.LIGHT);
            return canvas.snapshot(null, null).getPixelReader();
        });
    }

    private static Color at(PixelReader picture, int fromTheMiddle) {
        return picture.getColor(SIZE / 2 + fromTheMiddle, SIZE / 2);
    }

    @Test
    void theAirIsBareFromTheBodyToTheGarment() throws Exception {
        PixelReader picture = painted(100, 110);
        assertThat(IntStream.range(100, 110).mapToObj(x -> at(picture, x)))
                .as("ten pixels for ten mm")
                .allMatch(air -> air.getRed() > 0.97);
        assertThat(at(picture, 110).getRed()).isLessThan(0.5);
        assertThat(at(picture, 99).getRed()).isLessThan(0.9);
    }

    /** Then there is no air, and the cloth has to stretch over what is seen between the lines. */
    @Test
    void aSmallerGarmentIsBrokenAndLiesWithin() throws Exception {
        PixelReader picture = painted(110, 100);
        Color cloth = at(picture, 50);
        assertThat(IntStream.range(101, 109).mapToObj(x -> at(picture, x))).allMatch(cloth::equals);
        assertThat(at(picture, 110)).isNotEqualTo(cloth);
    }
}
