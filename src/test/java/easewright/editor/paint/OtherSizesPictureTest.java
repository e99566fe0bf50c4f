package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Of several sizes the one at work is seen plainly, and the others faintly beside it. */
class OtherSizesPictureTest {
    private static final int SIDE = 600;

    private final Session session = new Session(LengthUnit.CM, false);
    private final TableScenes scenes = new TableScenes();

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @BeforeEach
    void openTheNest() throws Exception {
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
    }

    private List<String> faint() {
        return scenes.of(session.desk()).pieces().stream()
                .filter(TableScene.PieceSight::aside)
                .map(p -> p.piece().size().orElseThrow())
                .distinct()
                .toList();
    }

    @Test
    void theSizesThatAreNotAtWorkLieAside() {
        assertThat(faint()).containsExactly("12", "14");
        session.chooseSize("14");
        assertThat(faint()).containsExactly("10", "12");
        scenes.forMarks(true, Optional.empty());
        assertThat(faint()).as("while marks are made").isEmpty();
        scenes.forMarks(false, Optional.empty());
        assertThat(faint()).containsExactly("10", "12");
    }

    @Test
    void theyAreSeenFaintlyByDayAndByLamplight() throws Exception {
        session.chooseSize("12");
        TableScene scene = scenes.of(session.desk());
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        Viewport view = Viewport.fitting(all, SIDE, SIDE, 24);
        for (Ink ink : List.of(Ink.LIGHT, Ink.DARK)) {
            Callable<WritableImage> paint = () -> {
                Canvas canvas = new Canvas(SIDE, SIDE);
                TablePainter.paint(canvas.getGraphicsContext2D(), SIDE, SIDE, view, ink, scene);
                return canvas.snapshot(null, null);
            };
            WritableImage image = WaitForAsyncUtils.waitForAsyncFx(10_000, paint);
            int looked = 0;
            for (TableScene.PieceSight sight : scene.pieces()) {
                if (!sight.piece().plainName().equals("Front")) {
                    continue;
                }
                // Paper far from every line, between the grain and the side.
                Box box = sight.piece().outline().box();
                Point at = view.toScreen(new Point(box.minX() + box.width() * 0.25, box.minY() + box.height() * 0.8));
                Color seen = image.getPixelReader().getColor((int) at.x(), (int) at.y());
                double toPaper = apart(seen, ink.paper());
                assertThat(toPaper < 0.02).as(sight.piece().name()).isNotEqualTo(sight.aside());
                assertThat(apart(seen, ink.table())).as("still seen").isGreaterThan(0.01);
                looked++;
            }
            assertThat(looked).isEqualTo(3);
        }
    }

    private static double apart(Color one, Color other) {
        return Math.max(
                Math.abs(one.getRed() - other.getRed()),
                Math.max(Math.abs(one.getGreen() - other.getGreen()), Math.abs(one.getBlue() - other.getBlue())));
    }

    /** A piece of all sizes is as wide in each of those in which something is done. */
    @Test
    void aPieceOfAllSizesIsWrittenOnOnce() {
        Piece back = session.desk().pattern().piece("skirt-back-10").orElseThrow();
        Piece common = back.toBuilder().size(Optional.empty()).build();
        session.edit(session.desk().pattern().withPiece(common));
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAlsoIn(Set.of("12", "14")));
        assertThat(scenes.of(session.desk()).pieces())
                .filteredOn(p -> p.piece().id().equals("skirt-back-10"))
                .singleElement()
                .satisfies(p -> assertThat(p.levels())
                        .extracting(TableScene.LevelSight::level)
                        .contains("hip")
                        .doesNotHaveDuplicates());
    }
}
