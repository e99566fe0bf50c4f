package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The names of pieces are written by the table; other words that the drawing says stay to be read. */
class DrawnWordsTest {
    private static final int SIDE = 600;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** A sheet with one piece and words on it, letters of 6 mm. */
    private static TableScene scene(String words) throws Exception {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'>"
                + "<path id='skirt-back' d='M50,50 h300 v300 h-300 z'/>"
                + "<text x='100' y='200' font-size='6'>" + words + "</text></svg>";
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.drawn(svg, "s.svg"));
        TableScenes scenes = new TableScenes();
        scenes.forMarks(true, Optional.empty());
        return scenes.of(session.desk()
                .seeing(session.desk()
                        .pattern()
                        .withPieces(
                                List.of(session.desk().pattern().pieces().get(0).withName("Skirt back")))));
    }

    private static LabelRoom painted(TableScene scene, boolean drawn, double scale) throws Exception {
        Underlay underlay = new Underlay(
                drawn
                        ? Optional.of(new Underlay.Drawn(new WritableImage(4, 4), new Box(0, 0, 400, 400)))
                        : Optional.empty(),
                List.of());
        return WaitForAsyncUtils.waitForAsyncFx(
                10_000,
                () -> TablePainter.paint(
                        TableLayers.one(new Canvas(SIDE, SIDE).getGraphicsContext2D()),
                        SIDE,
                        SIDE,
                        1,
                        new Viewport(scale, 0, 0),
                        Ink.LIGHT,
                        scene,
                        underlay,
                        List.of(),
                        List.of(),
                        new DrawnLines()));
    }

    /** In one hand on all pieces, however large the drawing says it, and nowhere twice. */
    @Test
    void theNameIsWrittenWhateverTheDrawingSays() throws Exception {
        TableScene same = scene("SKIRT  back: cut 2");
        assertThat(painted(same, false, 1.6).words())
                .as("the drawing is hidden")
                .hasSize(1);
        for (double scale : new double[] {0.5, 1, 1.6, 4}) {
            LabelRoom room = painted(same, true, scale);
            assertThat(room.words()).as("%s pixels to the mm", scale).hasSize(1);
            assertThat(room.told().name("skirt-back")).isPresent();
        }
        assertThat(new DrawnWords(true, new Viewport(2, 0, 0))
                        .boxes(same.pieces().get(0)))
                .as("what the drawing says is covered")
                .isEmpty();
        TableScene other = scene("on the fold");
        assertThat(painted(other, true, 1.6).words())
                .as("it says something else")
                .hasSize(1);
        assertThat(new DrawnWords(true, new Viewport(2, 0, 0))
                        .boxes(other.pieces().get(0)))
                .as("other words stay")
                .hasSize(1);
    }

    /** Law over random boxes; seed 5: the gaps are just what lies in them. */
    @Test
    void aLineIsLeftOutWhereWordsStand() {
        Random random = new Random(5);
        for (int round = 0; round < 200; round++) {
            Point from = new Point(random.nextDouble(100), random.nextDouble(100));
            Point to = new Point(random.nextDouble(100), random.nextDouble(100));
            List<Box> boxes = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                double x = random.nextDouble(100);
                double y = random.nextDouble(100);
                boxes.add(new Box(x, y, x + 5 + random.nextDouble(40), y + 5 + random.nextDouble(40)));
            }
            List<Stretch> open = Stretch.outside(boxes, from, to);
            double length = 0;
            double counted = 0;
            for (Stretch stretch : open) {
                length += stretch.to() - stretch.from();
            }
            for (int i = 0; i < 2000; i++) {
                Point at = from.towards(to, (i + 0.5) / 2000);
                counted += boxes.stream().noneMatch(box -> box.contains(at)) ? 1 / 2000.0 : 0;
            }
            assertThat(length).isCloseTo(counted, within(0.01));
        }
    }
}
