package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;

class SeenUnderTest {
    private static Piece back() throws Exception {
        byte[] svg = Samples.files().get("skirt.svg").getBytes(StandardCharsets.UTF_8);
        return SvgFile.read(svg, "skirt").pattern().pieces().stream()
                .filter(piece -> piece.name().equals("Back"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aNotchAndACornerAreSeenUnderAGripAndAPlainSeamIsNot() throws Exception {
        Piece back = back();
        Point notch = back.notches().get(0).at();
        assertThat(SeenUnder.isThere(back, notch, 1)).isTrue();
        Point corner = back.outline().segments().get(0).start();
        assertThat(SeenUnder.isThere(back, corner, 1)).isTrue();
        Point far = notch.plus(new Point(0, 60));
        assertThat(SeenUnder.isThere(back, far, 1)).isFalse();
        assertThat(SeenUnder.isThere(back, far, 0.1))
                .as("from afar the notch lies under it")
                .isTrue();
    }

    @Test
    void theMouthAndThePointOfADartAreSeenUnderAGrip() throws Exception {
        Dart dart = back().darts().get(0);
        for (Point at : dart.corners()) {
            assertThat(SeenUnder.isThere(back(), at.plus(new Point(0, 8)), 1)).isTrue();
        }
        assertThat(SeenUnder.isThere(back(), dart.point().plus(new Point(0, 20)), 1))
                .isFalse();
    }

    @Test
    void besideAPieceIsOffItAndItsLineIsNot() throws Exception {
        Piece back = back();
        Point corner = back.outline().segments().get(0).start();
        assertThat(SeenUnder.isOff(back, corner, 1)).isFalse();
        assertThat(SeenUnder.isOff(back, back.outline().box().centre(), 1)).isFalse();
        Point above = new Point(
                back.outline().box().centre().x(), back.outline().box().minY() - 20);
        assertThat(SeenUnder.isOff(back, above, 1)).isTrue();
        assertThat(SeenUnder.isOff(back, above, 0.1))
                .as("from afar it lies on the line")
                .isFalse();
    }

    /** The lines of the drawing are told from the paper: 3 to 1 is what WCAG 2.2, 1.4.11 asks of graphics (from memory). */
    @Test
    void linesOverTheDrawingAreTold() {
        for (Ink ink : new Ink[] {Ink.LIGHT, Ink.DARK}) {
            Color seen = ink.paper().interpolate(ink.quiet(), PiecePainter.OVER_DRAWN);
            double one = luminance(seen);
            double other = luminance(ink.paper());
            assertThat((Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05))
                    .isGreaterThan(3);
        }
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(double v) {
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
