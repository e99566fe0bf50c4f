package easewright.svg;

import static easewright.svg.Drawn.codes;
import static easewright.svg.Drawn.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Scans that lie under the outlines. */
class PictureTest {
    private static byte[] packed(String format, int across, int down) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    private static String image(String attributes, String type, byte[] bytes) {
        return "<image id='scan' " + attributes + " xlink:href='data:image/" + type + ";base64,"
                + Base64.getMimeEncoder().encodeToString(bytes) + "'/><path d='M0 0H9V9H0Z'/>";
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg", "gif"})
    void aPictureInTheFileCanBeShownWhereItLies(String type) throws Exception {
        byte[] bytes = packed(type, 40, 20);
        Drawing drawing = mm("<g transform='translate(5 7)'>"
                + image("x='10' y='20' width='100' height='100' preserveAspectRatio='xMinYMax'", type, bytes) + "</g>");
        assertThat(drawing.pictures()).singleElement().satisfies(picture -> {
            assertThat(picture.mediaType()).isEqualTo("image/" + type);
            assertThat(picture.pixelsAcross()).isEqualTo(40);
            assertThat(picture.pixelsDown()).isEqualTo(20);
            assertThat(picture.bytes()).isEqualTo(bytes);
            assertThat(ImageIO.read(new ByteArrayInputStream(picture.bytes())).getWidth())
                    .isEqualTo(40);
            assertThat(picture.toMm().apply(Point.ORIGIN).distance(new Point(15, 77)))
                    .isCloseTo(0, within(1e-9));
            assertThat(picture.toMm().apply(new Point(40, 20)).distance(new Point(115, 127)))
                    .isCloseTo(0, within(1e-9));
        });
        assertThat(drawing.findings()).isEmpty();
        assertThat(mm(image("width='80'", type, bytes)).pictures().get(0).toMm().apply(new Point(40, 20)))
                .isEqualTo(new Point(80, 40));
    }

    @Test
    void whatCannotBeShownIsToldAndKept() throws Exception {
        byte[] png = packed("png", 4, 4);
        png[16] = 0x10;
        assertThat(codes(mm(image("width='9'", "png", png)))).containsExactly("picture-too-large");
        assertThat(codes(mm(image("width='9'", "png", new byte[] {1, 2, 3})))).containsExactly("picture-unreadable");
        assertThat(codes(mm("<image width='9' xlink:href='data:image/png;base64,%%%'/><path d='M0 0H9V9H0Z'/>")))
                .containsExactly("picture-unreadable");
        Drawing outside = mm("<image width='9' href='http://127.0.0.1:9/a.png'/><path d='M0 0H9V9H0Z'/>");
        assertThat(codes(outside)).containsExactly("picture-outside");
        assertThat(outside.pictures()).isEmpty();
        assertThat(mm("<g display='none'>" + image("width='9'", "png", packed("png", 4, 4)) + "</g>")
                        .pictures())
                .isEmpty();
    }
}
