package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.editor.model.Desk;
import easewright.geom.Point;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Says in the window which of two lines of a piece is sewn and which is cut. */
class LinesJourneyTest extends Journey {
    private static final Path DRAWING = Path.of("src/test/resources/lines/dart-cut-in.svg");

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private Piece front() {
        return desk().pattern().pieces().stream()
                .filter(p -> p.outline().box().minX() == 40)
                .findFirst()
                .orElseThrow();
    }

    private void openDrawing(FxRobot robot, String name) throws Exception {
        Path file = Files.copy(DRAWING, folder.resolve(name));
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#step-pieces");
    }

    private static boolean isThere(FxRobot robot, String id) {
        return robot.lookup(id).tryQuery().filter(Node::isVisible).isPresent();
    }

    @Test
    void byAClickOnTheLine(FxRobot robot) throws Exception {
        openDrawing(robot, "click.svg");
        assertThat(isThere(robot, "#line-card")).isFalse();
        robot.clickOn(onScreen(robot, new Point(170, 660)));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isThere(robot, "#line-card")).isTrue();
        robot.clickOn("#line-sewn");
        until(d -> d.pattern().piece("shape-3").isPresent());
        assertThat(isThere(robot, "#line-card")).isFalse();
        assertThat(front().id()).isEqualTo("shape-3");
        assertThat(front().allowance()).isBetween(9.0, 11.0);

        // The line that goes along is asked about too, and both change places.
        robot.clickOn(onScreen(robot, new Point(170, 670)));
        robot.clickOn("#line-swap");
        until(d -> d.pattern().piece("shape-2").isPresent());
        assertThat(front().drawn()).isEqualTo(LineKind.CUTTING);
        robot.clickOn("#undo");
        until(d -> d.pattern().piece("shape-3").isPresent());
    }

    /** After a change it is said with the same press, and what became of the change stands at the foot of the table. */
    @Test
    void afterAChange(FxRobot robot) throws Exception {
        openDrawing(robot, "changed.svg");
        Pattern marked = Suggestions.of(new Sheet(desk().pattern(), List.of(), List.of()), Set.of("line shape-2"))
                .outcome();
        Piece piece = front();
        Pattern hip = marked.withLevels(List.of(Level.of("hip", LevelKind.HIP)))
                .withPiece(marked.piece(piece.id())
                        .orElseThrow()
                        .withLevels(List.of(LevelMark.through("hip", new Point(170, 260)))));
        String side = hip.piece(piece.id()).orElseThrow().edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM)
                .findFirst()
                .orElseThrow()
                .name();
        SeamChange change = SeamChange.at("hip", 20).withShares(Share.of(piece.id(), side));
        robot.interact(() -> {
            app.session().edit(hip);
            try {
                app.session().edit(change.apply(hip).pattern());
            } catch (Refusal refusal) {
                throw new IllegalStateException(refusal);
            }
        });
        robot.clickOn(onScreen(robot, new Point(170, 660)));
        WaitForAsyncUtils.waitForFxEvents();
        robot.clickOn("#line-sewn");
        until(d -> front().riders().stream().anyMatch(r -> r.kind() == Rider.Kind.PARALLEL));
        assertThat(desk().pattern().changes()).hasSize(1);
        assertThat(robot.lookup("#notice .label").queryLabeled().getText()).contains("made again: 1");
    }

    @Test
    void byKeysFromTheListOfLines(FxRobot robot) throws Exception {
        openDrawing(robot, "keys.svg");
        robot.clickOn("#no-piece");
        until(d -> d.pattern().piece("shape-2").isEmpty());
        MenuButton more = robot.lookup("#more-pieces").queryAs(MenuButton.class);
        assertThat(more.getItems()).hasSize(2);
        // The inner line is the piece.
        robot.interact(() -> more.getItems().get(1).fire());
        until(d -> d.pattern().piece("shape-3").isPresent());
        robot.interact(more::requestFocus);
        robot.push(KeyCode.SPACE).push(KeyCode.DOWN).push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        Button first = robot.lookup("#line-cutting").queryButton();
        assertThat(first.isFocused())
                .as("the keyboard goes on at the first answer")
                .isTrue();
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().piece("shape-3").orElseThrow().riders().stream()
                .anyMatch(r -> r.kind() == Rider.Kind.PARALLEL));
        assertThat(front().drawn()).isEqualTo(LineKind.STITCHING);
    }

    /** From a note that asks what a line is, the keyboard leads to the answers, which speak in the unit at work. */
    @Test
    void byKeysFromANote(FxRobot robot) throws Exception {
        openDrawing(robot, "note.svg");
        robot.clickOn("#page-notes");
        Button say = robot.lookup("#notes .button").queryAllAs(Button.class).stream()
                .filter(b -> b.isVisible() && b.getText().equals("What is it?"))
                .findFirst()
                .orElseThrow();
        robot.interact(say::requestFocus);
        robot.push(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#line-sewn").queryButton().isFocused()).isTrue();
        robot.interact(() -> app.session().setUnit(LengthUnit.INCH));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#line-sewn").queryButton().isFocused())
                .as("the keys stay")
                .isTrue();
    }

    @Test
    void theSizeOfALineIsToldInTheUnitAtWork(FxRobot robot) throws Exception {
        Path file = Files.writeString(
                folder.resolve("alone.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path d='M100,100 H300 V400 H100 Z'/></svg>");
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#step-pieces").clickOn("#no-piece");
        until(d -> d.pattern().pieces().isEmpty());
        robot.clickOn(onScreen(robot, new Point(200, 100)));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#line-card .label").queryLabeled().getText()).contains("30\u00a0cm");
        robot.interact(() -> app.session().setUnit(LengthUnit.INCH));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#line-card .label").queryLabeled().getText()).contains("11\u00a013/16\u00a0in");
    }

    @Test
    void whereThereIsNoOtherLineThePlusSaysSo(FxRobot robot) throws Exception {
        Path file = Files.writeString(
                folder.resolve("one.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path d='M100,100 H300 V400 H100 Z'/></svg>");
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#step-pieces");
        MenuButton more = robot.lookup("#more-pieces").queryAs(MenuButton.class);
        assertThat(more.getAccessibleText()).startsWith("There is no other closed line");
        assertThat(more.isDisabled()).as("what is disabled shows no hint").isFalse();
        robot.moveTo("#more-pieces");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(more.getTooltip().getText()).isEqualTo(more.getAccessibleText());
    }
}
