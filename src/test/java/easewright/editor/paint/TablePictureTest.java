package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.text.LengthUnit;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The table is painted as on kept pictures. Letters and edges fall a little differently on every machine: two pictures
 * are alike if few of their pixels differ clearly. With {@code -Dpictures.write=yes} the kept ones are written anew.
 */
class TablePictureTest {
    private static final Path KEPT = Path.of("src/test/resources/pictures");
    private static final int WIDE = 480;
    private static final int HIGH = 360;

    /** Of 255, per colour. */
    private static final int CLEAR = 48;

    /** Share of the pixels: the words on the pieces come to about as much. */
    private static final double FEW = 0.015;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private static TableScene scene(double amount) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(amount));
        return new TableScenes().of(session.desk());
    }

    private static Viewport fitted(TableScene scene) {
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        return Viewport.fitting(all, WIDE, HIGH, 24);
    }

    private static BufferedImage painted(double amount, Ink ink) throws Exception {
        TableScene scene = scene(amount);
        Viewport view = fitted(scene);
        Callable<BufferedImage> paint = () -> {
            Canvas canvas = new Canvas(WIDE, HIGH);
            TablePainter.paint(canvas.getGraphicsContext2D(), WIDE, HIGH, view, ink, scene);
            return plain(canvas.snapshot(null, null));
        };
        return WaitForAsyncUtils.waitForAsyncFx(10_000, paint);
    }

    private static BufferedImage plain(WritableImage image) {
        int[] pixels = new int[WIDE * HIGH];
        image.getPixelReader().getPixels(0, 0, WIDE, HIGH, PixelFormat.getIntArgbInstance(), pixels, 0, WIDE);
        BufferedImage plain = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        plain.setRGB(0, 0, WIDE, HIGH, pixels, 0, WIDE);
        return plain;
    }

    /** The share of pixels that differ clearly. */
    private static double difference(BufferedImage a, BufferedImage b) {
        int differing = 0;
        for (int y = 0; y < HIGH; y++) {
            for (int x = 0; x < WIDE; x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                int most = 0;
                for (int shift = 0; shift <= 16; shift += 8) {
                    most = Math.max(most, Math.abs((p >> shift & 255) - (q >> shift & 255)));
                }
                differing += most > CLEAR ? 1 : 0;
            }
        }
        return (double) differing / (WIDE * HIGH);
    }

    private static void isLike(String name, BufferedImage painted) throws Exception {
        Path file = KEPT.resolve(name);
        if ("yes".equals(System.getProperty("pictures.write"))) {
            Files.createDirectories(KEPT);
            ImageIO.write(painted, "png", file.toFile());
        }
        assertThat(difference(painted, ImageIO.read(file.toFile()))).as(name).isLessThan(FEW);
    }

    @Test
    void aTrialByDay() throws Exception {
        isLike("table-trial.png", painted(40, Ink.LIGHT));
    }

    @Test
    void theTableByLamplight() throws Exception {
        isLike("table-lamp.png", painted(0, Ink.DARK));
    }

    /** The paper of a piece that is drawn as it is sewn goes as far as the scissors do, and there it ends. */
    @Test
    void thePaperGoesToTheCuttingLine() throws Exception {
        Piece back = scene(0).pieces().stream()
                .map(TableScene.PieceSight::piece)
                .filter(p -> p.id().equals("skirt-back"))
                .findFirst()
                .orElseThrow();
        Rider cut = back.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                .findFirst()
                .orElseThrow();
        Box sewn = back.outline().box();
        Box cutting =
                cut.segments().stream().map(Segment::box).reduce(Box::union).orElseThrow();
        double y = (sewn.minY() + 2 * sewn.maxY()) / 3;
        BufferedImage table = painted(0, Ink.LIGHT);
        assertThat(color(table, new Point((sewn.minX() + cutting.minX()) / 2, y)))
                .isEqualTo(Ink.LIGHT.paper());
        assertThat(color(table, new Point(2 * cutting.minX() - sewn.minX(), y))).isNotEqualTo(Ink.LIGHT.paper());
    }

    private static Color color(BufferedImage table, Point place) throws Exception {
        Point at = fitted(scene(0)).toScreen(place);
        int rgb = table.getRGB((int) Math.round(at.x()), (int) Math.round(at.y()));
        return Color.rgb(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }

    /** A change that is not drawn, or drawn in another place, would be noticed. */
    @Test
    void whatDiffersIsSeen() throws Exception {
        BufferedImage trial = painted(40, Ink.LIGHT);
        assertThat(difference(trial, painted(0, Ink.LIGHT))).isGreaterThan(FEW);
        assertThat(difference(trial, painted(-30, Ink.LIGHT))).isGreaterThan(FEW);
    }
}
