package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Sketch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** What is seen is the same whether pieces that lie still are left on a layer of their own or all is painted anew. */
class TableLayersTest {
    private static final int WIDE = 420;
    private static final int HIGH = 300;
    private static final int PIECES = 40;

    /** Where two layers are laid together colours are rounded once more. */
    private static final int ROUNDING = 3;

    private final Random random = new Random(2064);
    private final Canvas below = new Canvas(WIDE, HIGH);
    private final Canvas above = new Canvas(WIDE, HIGH);
    private final TableLayers layers = new TableLayers(below, above);
    private final DrawnLines lines = new DrawnLines();
    private final List<TableScene.PieceSight> pieces = new ArrayList<>();

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void picturesOfPullsAreThoseOfAllPaintedAnew() throws Exception {
        for (int i = 0; i < PIECES; i++) {
            Outline outline = Sketch.randomBlob(random, 12, 12)
                    .transformed(Affine.translation(30 + 50 * (i % 8), 30 + 55 * (i / 8)));
            pieces.add(sight(i, outline, Optional.empty()));
        }
        int left = 0;
        int parted = 0;
        Viewport view = new Viewport(1, 0, 0);
        for (int picture = 0; picture < 60; picture++) {
            if (random.nextInt(12) == 0) {
                view = new Viewport(1, random.nextInt(20), 0);
            }
            if (picture % 20 > 2) {
                pull(picture / 20);
            }
            Viewport from = view;
            int[] two = pixels(() -> {
                paint(layers, from, lines);
                return new Group(below, above);
            });
            int[] one = pixels(() -> {
                Canvas canvas = new Canvas(WIDE, HIGH);
                paint(TableLayers.one(canvas.getGraphicsContext2D()), from, new DrawnLines());
                return canvas;
            });
            assertThat(worst(one, two)).isLessThanOrEqualTo(ROUNDING);
            left += layers.isFresh() ? 0 : 1;
            parted += above.isVisible() ? 1 : 0;
        }
        assertThat(left)
                .as("pictures for which nothing was painted on the lower layer")
                .isBetween(15, 55);
        assertThat(parted).isBetween(left, 59);
    }

    /** Three pieces, so far that they at times come over others. */
    private void pull(int round) {
        for (int i = 9 * round; i < 9 * round + 3; i++) {
            TableScene.PieceSight was = pieces.get(i);
            Outline before = was.ghost().orElse(was.piece().outline());
            double by = random.nextInt(4) == 0 ? 40 * random.nextDouble() : 4 * random.nextDouble();
            pieces.set(i, sight(i, before.transformed(Affine.translation(by, by / 3)), Optional.of(before)));
        }
    }

    private static TableScene.PieceSight sight(int number, Outline outline, Optional<Outline> ghost) {
        Piece piece = Piece.bare("p" + number, outline);
        return new TableScene.PieceSight(
                piece,
                "N" + number,
                "",
                false,
                NamePlace.on(piece, List.of()),
                List.of(),
                List.of(),
                Optional.empty(),
                ghost,
                List.of(),
                ghost.isPresent() ? outline.segments().subList(2, 5) : List.of(),
                List.of(),
                TableScene.TrialSight.NONE,
                false,
                number % 5 == 0);
    }

    private void paint(TableLayers on, Viewport view, DrawnLines kept) {
        TableScene scene = new TableScene(pieces, List.of(), false, true);
        TablePainter.paint(on, WIDE, HIGH, 1, view, Ink.LIGHT, scene, Underlay.NONE, List.of(), List.of(), kept);
    }

    private static int[] pixels(Callable<Node> painted) throws Exception {
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            WritableImage image = painted.call().snapshot(null, null);
            int[] pixels = new int[WIDE * HIGH];
            image.getPixelReader().getPixels(0, 0, WIDE, HIGH, PixelFormat.getIntArgbInstance(), pixels, 0, WIDE);
            return pixels;
        });
    }

    /** The greatest difference of a colour at any pixel, of 255. */
    private static int worst(int[] one, int[] other) {
        int worst = 0;
        for (int i = 0; i < one.length; i++) {
            for (int shift = 0; shift < 32; shift += 8) {
                worst = Math.max(worst, Math.abs((one[i] >> shift & 255) - (other[i] >> shift & 255)));
            }
        }
        return worst;
    }
}
