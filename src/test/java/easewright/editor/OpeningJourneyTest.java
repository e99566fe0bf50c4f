package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.file.Dialogs;
import easewright.editor.model.Desk;
import easewright.editor.model.Opened;
import easewright.editor.model.OpenedSample;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What is to be seen of a file just opened. */
class OpeningJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static int[] picture(Node node) {
        WritableImage image = node.snapshot(null, null);
        int w = (int) image.getWidth();
        int h = (int) image.getHeight();
        int[] pixels = new int[w * h];
        image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
        return pixels;
    }

    /** Not for one picture larger, while the sheet beside it is still to come. */
    @Test
    void theFirstPictureOfTheTableIsTheOneThatStays(FxRobot robot) throws Exception {
        Opened opened = OpenedSample.skirt();
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        AtomicReference<int[]> first = new AtomicReference<>();
        robot.interact(() -> {
            app.session().open(opened);
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
            first.set(picture(table));
        });
        WaitForAsyncUtils.waitForFxEvents(10);
        AtomicReference<int[]> later = new AtomicReference<>();
        robot.interact(() -> later.set(picture(table)));
        int[] was = first.get();
        int[] is = later.get();
        assertThat(IntStream.range(0, is.length).filter(i -> was[i] != is[i]).count())
                .as("points that changed")
                .isZero();
    }

    @Test
    void theNameStandsInTheMiddleAndSaysHowTheFileIs(FxRobot robot) throws Exception {
        assertThat(middleOf(robot.lookup(".file-name").query())).isCloseTo(middle(), within(1.0));
        openTheSkirt(robot);
        assertThat(middleOf(robot.lookup(".file-name").query())).isCloseTo(middle(), within(1.0));
        assertThat(robot.lookup("as opened").tryQuery()).isPresent();
        robot.interact(() -> {
            app.session().want(desk().wanted().orElseThrow().withAmount(10));
            app.session().keep();
        });
        assertThat(robot.lookup("not saved yet").tryQuery()).isPresent();
        robot.interact(() -> app.files().save(folder.resolve("named.svg")));
        until(Desk::isSaved);
        assertThat(robot.lookup("saved").tryQuery()).isPresent();
    }

    @Test
    void aLongNameLeavesTheUnitsTheirRoom(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        Path file = folder.resolve("A long name for a skirt with two darts, altered at the hip, version 12.svg");
        robot.interact(() -> {
            stage.setWidth(stage.getMinWidth());
            app.files().save(file);
        });
        until(d -> d.file().orElseThrow().name().startsWith("A long name"));
        for (String id : List.of("#unit-cm", "#unit-inch", "#lamp")) {
            Region button = robot.lookup(id).queryAs(Region.class);
            assertThat(button.getWidth()).as(id).isGreaterThanOrEqualTo(button.prefWidth(-1));
        }
        assertThat(bounds(robot, "#lamp").getMaxX())
                .isLessThanOrEqualTo(stage.getScene().getWidth());
        Platform.runLater(() -> new Dialogs(stage, () -> desk().words())
                .leaving(file.getFileName().toString()));
        WaitForAsyncUtils.waitFor(
                10,
                TimeUnit.SECONDS,
                () -> robot.lookup(".dialog-pane").tryQuery().isPresent());
        WaitForAsyncUtils.waitForFxEvents(5);
        Window dialog = robot.lookup(".dialog-pane").query().getScene().getWindow();
        assertThat(dialog.getX() + dialog.getWidth() / 2).isCloseTo(stage.getX() + stage.getWidth() / 2, within(2.0));
        robot.push(KeyCode.ESCAPE);
    }

    private double middle() {
        return stage.getScene().getWidth() / 2;
    }

    private static double middleOf(Node node) {
        Bounds box = node.localToScene(node.getLayoutBounds());
        return box.getCenterX();
    }

    @Test
    void whatIsSaidLiesBelowThePiecesAndBesideTheButtons(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session()
                .say(false, "editor.said.saved-over", Map.of("file", "skirt.svg", "backup", "skirt.svg.bak")));
        WaitForAsyncUtils.waitForFxEvents();
        Bounds said = bounds(robot, "#notice");
        Bounds buttons = bounds(robot, ".view-buttons");
        assertThat(said.getMinX()).isGreaterThan(buttons.getMaxX());
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        double lowest = desk().pattern().pieces().stream()
                .mapToDouble(p -> p.outline().box().maxY())
                .max()
                .orElseThrow();
        double onScreen = table.localToScene(
                        0, table.view().toScreen(new Point(0, lowest)).y())
                .getY();
        assertThat(said.getMinY()).isGreaterThan(onScreen);
    }

    private static Bounds bounds(FxRobot robot, String id) {
        Node node = robot.lookup(id).query();
        return node.localToScene(node.getLayoutBounds());
    }
}
