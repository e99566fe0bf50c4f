package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.paper.PaperChoice.Surface;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Printing and reporting from the window. */
class PrintJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static String said(FxRobot robot) {
        return robot.lookup("#print-said").queryAs(Label.class).getText();
    }

    private static void untilSaid(FxRobot robot, Predicate<String> wanted) throws TimeoutException {
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> wanted.test(said(robot)));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void openThePrints(FxRobot robot) throws TimeoutException {
        robot.clickOn("#sample-skirt");
        until(Desk::isOpen);
        robot.clickOn("#print");
        untilSaid(robot, s -> s.contains("Sheets to be joined"));
    }

    @Test
    void piecesAreChosenLookedAtAndSaved(FxRobot robot) throws Exception {
        openThePrints(robot);
        Label page = robot.lookup("#print-page").queryAs(Label.class);
        assertThat(page.getText()).startsWith("Page 1 of ");
        robot.clickOn("#print-later");
        assertThat(page.getText()).startsWith("Page 2 of ");

        robot.clickOn("#print-piece-skirt-back").clickOn("#print-piece-skirt-front");
        untilSaid(robot, s -> s.matches("Sheets to be joined: [2-5],.*"));

        Path pdf = folder.resolve("band.pdf");
        answers.toSave.add(pdf);
        robot.clickOn("#print-save");
        untilSaid(robot, s -> s.startsWith("Saved"));
        assertThat(Files.readString(pdf, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
        assertThat(answers.asked).contains("save skirt.pdf");
        assertThat(desk().isSaved()).as("a print is no change").isTrue();
        robot.push(KeyCode.ESCAPE);
        assertThat(robot.lookup("#print-said").tryQuery()).isEmpty();
    }

    /** The writing of a page is read from near, by mouse and by key. */
    @Test
    void aPageIsSeenFromNear(FxRobot robot) throws Exception {
        openThePrints(robot);
        Node page = robot.lookup("#print-preview").query();
        Canvas canvas = (Canvas) page.lookup(".page-room Canvas");
        double whole = canvas.getHeight();
        robot.clickOn("#print-larger");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(canvas.getHeight()).isGreaterThan(1.9 * whole);
        assertThat(isShown(robot.lookup("#print-save").query())).isFalse();
        ScrollPane room = robot.lookup(".page-room").queryAs(ScrollPane.class);
        robot.push(KeyCode.DOWN);
        assertThat(room.getVvalue()).isPositive();
        robot.push(KeyCode.PAGE_DOWN);
        assertThat(robot.lookup("#print-page").queryAs(Label.class).getText()).startsWith("Page 2 of ");
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(canvas.getHeight()).as("the frame of the keys is not page").isBetween(whole - 4, whole);
        assertThat(isShown(robot.lookup("#print-save").query())).isTrue();
        robot.push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(canvas.getHeight()).isGreaterThan(1.9 * whole);
        assertThat(answers.asked).as("Enter saves nothing there").isEmpty();
    }

    @Test
    void whatCannotBePrintedIsSaidAndNothingCanBeSaved(FxRobot robot) throws Exception {
        openThePrints(robot);
        write(robot, "#print-margin", "8 cm");
        untilSaid(robot, s -> s.contains("Margins of 8\u00a0cm"));
        assertThat(robot.lookup("#print-save").queryAs(Button.class).isDisabled())
                .isTrue();
        write(robot, "#print-margin", "1 cm");
        untilSaid(robot, s -> s.contains("Sheets to be joined"));
        for (String id : java.util.List.of("back", "front", "band")) {
            robot.clickOn("#print-piece-skirt-" + id);
        }
        untilSaid(robot, s -> s.contains("No piece is chosen"));
        robot.interact(() -> surface(robot).setValue(Surface.PROJECTOR));
        robot.clickOn("#print-piece-skirt-band");
        untilSaid(robot, s -> s.startsWith("One page of"));
        assertThat(robot.lookup("#print-margin")
                        .queryAs(Node.class)
                        .getParent()
                        .getParent()
                        .isVisible())
                .isFalse();
        robot.push(KeyCode.ESCAPE);
    }

    @SuppressWarnings("unchecked")
    private static ChoiceBox<Object> surface(FxRobot robot) {
        return robot.lookup("#print-surface").queryAs(ChoiceBox.class);
    }

    @Test
    void aReportIsSavedAsPageAndWhatIsGivenUpIsNot(FxRobot robot) throws Exception {
        openThePrints(robot);
        robot.clickOn("#print-kind-report").clickOn("#print-use-child");
        untilSaid(robot, s -> s.matches("Pages: \\d\\."));
        Path page = folder.resolve("skirt report.html");
        answers.toSave.add(page);
        robot.clickOn("#print-save-page");
        untilSaid(robot, s -> s.startsWith("Saved"));
        assertThat(Files.readString(page)).contains("Ease report: skirt").contains("16 CFR 1615");

        robot.interact(() -> {
            robot.lookup("#print-use-cords").queryAs(CheckBox.class).fire();
            robot.lookup("#print-cancel").queryAs(Button.class).fire();
        });
        assertThat(said(robot)).startsWith("Stopped");
        assertThat(robot.lookup("#print-save").queryAs(Button.class).isDisabled())
                .isTrue();
        robot.push(KeyCode.ESCAPE);
    }
}
