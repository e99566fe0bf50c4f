package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.SeamChange;
import easewright.geom.Box;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What we write, read and drawn by an independent general SVG library: Apache Batik 1.19. */
class BatikAgreementTest {
    /** Batik reads coordinates in single precision. */
    private static final double SINGLE_PRECISION = 1e-3;

    @ParameterizedTest
    @CsvSource({"skirt, hip, 24", "trousers, thigh, 24", "bodice, bust, 24", "knit-top, bust, -20"})
    void changedSampleMeansTheSameToBatik(String sample, String level, double amount) throws Exception {
        SvgFile file = SvgFile.read(Path.of("sample-pieces", sample + ".svg"));
        Pattern before = file.pattern();
        Pattern after = SeamChange.at(level, amount).apply(before).pattern();
        byte[] written = file.write(after);

        Document document =
                new SAXSVGDocumentFactory(null).createDocument("mem:/doc.svg", new ByteArrayInputStream(written));
        for (Piece piece : after.pieces()) {
            Element element = document.getElementById(piece.id());
            Shape shape = AWTPathProducer.createShape(new StringReader(element.getAttribute("d")), 0);
            // An area's box is that of the curve; a path's own would hold the control places too.
            Rectangle2D theirs = new Area(shape).getBounds2D();
            Box ours = piece.outline().box();
            assertThat(theirs.getMinX()).isCloseTo(ours.minX(), within(SINGLE_PRECISION));
            assertThat(theirs.getMaxX()).isCloseTo(ours.maxX(), within(SINGLE_PRECISION));
            assertThat(theirs.getMinY()).isCloseTo(ours.minY(), within(SINGLE_PRECISION));
            assertThat(theirs.getMaxY()).isCloseTo(ours.maxY(), within(SINGLE_PRECISION));
        }
        assertOnlyNearChangedPieces(before, after, drawn(file.bytes()), drawn(written));
    }

    /** Pictures of the two files differ, and only where a changed piece, with room for its allowance, lies. */
    private static void assertOnlyNearChangedPieces(
            Pattern before, Pattern after, BufferedImage was, BufferedImage is) {
        List<Box> changed = after.pieces().stream()
                .filter(p ->
                        !p.outline().equals(before.piece(p.id()).orElseThrow().outline()))
                .map(p -> p.outline().box().grown(30))
                .toList();
        int differing = 0;
        for (int y = 0; y < was.getHeight(); y++) {
            for (int x = 0; x < was.getWidth(); x++) {
                if (was.getRGB(x, y) != is.getRGB(x, y)) {
                    differing++;
                    Box pixel = new Box(x, y, x + 1, y + 1);
                    assertThat(changed).as("pixel %d, %d", x, y).anyMatch(box -> box.contains(pixel.centre()));
                }
            }
        }
        assertThat(differing).isPositive();
    }

    /** One pixel to the millimetre: the samples' user unit. */
    private static BufferedImage drawn(byte[] svg) throws Exception {
        BufferedImage[] picture = new BufferedImage[1];
        ImageTranscoder transcoder = new ImageTranscoder() {
            @Override
            public BufferedImage createImage(int width, int height) {
                return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            }

            @Override
            public void writeImage(BufferedImage image, TranscoderOutput output) {
                picture[0] = image;
            }
        };
        transcoder.addTranscodingHint(ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, 1f);
        transcoder.transcode(new TranscoderInput(new ByteArrayInputStream(svg)), null);
        return picture[0];
    }
}
