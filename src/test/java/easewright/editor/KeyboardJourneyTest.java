package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.pattern.Scale;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The whole task with no hand on the mouse. */
class KeyboardJourneyTest extends Journey {
    private static final int MOST_STEPS = 120;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private String focused() {
        Node owner = stage.getScene().getFocusOwner();
        return owner == null || owner.getId() == null ? "" : owner.getId();
    }

    /** From control to control until the one is reached. */
    private void tabTo(FxRobot robot, String id) {
        for (int i = 0; i < MOST_STEPS && !focused().equals(id); i++) {
            robot.push(KeyCode.TAB);
            WaitForAsyncUtils.waitForFxEvents();
        }
        assertThat(focused()).isEqualTo(id);
    }

    private static void type(FxRobot robot, String text) {
        robot.push(KeyCode.SHORTCUT, KeyCode.A).write(text).push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void fromTheStartToASavedFile(FxRobot robot) throws Exception {
        openTheSkirtByKey(robot);

        tabTo(robot, "body-hip");
        type(robot, "98,5 cm");
        assertThat(line("hip").body().orElseThrow()).isCloseTo(985, within(1e-9));
        double finished = line("hip").finished();

        tabTo(robot, "here-level");
        robot.push(KeyCode.DOWN);
        until(d -> d.wanted().filter(w -> w.level().equals("hip")).isPresent());
        robot.interact(() -> robot.lookup("#table").query().requestFocus());
        robot.push(KeyCode.N).push(KeyCode.SHIFT, KeyCode.RIGHT).push(KeyCode.RIGHT);
        until(d -> d.shownTrial().isPresent());
        // Whoever does not see the table hears which seam is held, and how far it is pulled.
        assertThat(robot.lookup("#table").query().getAccessibleText()).contains("side", "+1.1\u00a0cm");
        robot.push(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("amount");
        type(robot, "24 mm");
        assertThat(line("hip").finished()).isCloseTo(finished + 24, within(0.01));
        tabTo(robot, "keep");
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().changes().size() == 1);

        robot.push(KeyCode.ALT, KeyCode.DIGIT5);
        tabTo(robot, "change-amount-0");
        type(robot, "30 mm");
        assertThat(line("hip").finished()).isCloseTo(finished + 30, within(0.01));

        Path saved = folder.resolve("by-keyboard.svg");
        answers.toSave.add(saved);
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        assertThat(SvgFile.read(saved).pattern().changes()).hasSize(1);
    }

    /** From a drawing without marks or size to levels on its pieces. */
    @Test
    void fromABareDrawingToItsLevels(FxRobot robot) throws Exception {
        answers.toOpen.add(Path.of("src/test/resources/marking/four-pieces.svg"));
        robot.push(KeyCode.SHORTCUT, KeyCode.O);
        until(Desk::isOpen);
        tabTo(robot, "scale-offer-0");
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().scale().proof() == Scale.Proof.KNOWN_LINE);
        tabTo(robot, "mark-next");
        robot.push(KeyCode.SPACE);
        untilThought(robot);
        tabTo(robot, "suggest-accept");
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().pieces().stream().noneMatch(p -> p.edges().isEmpty()));

        tabTo(robot, "mark-next");
        robot.push(KeyCode.SPACE);
        tabTo(robot, "tool-notch");
        int notches = desk().pattern().pieces().get(0).notches().size();
        robot.push(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("table");
        robot.push(KeyCode.N);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#table").query().getAccessibleText())
                .contains(desk().pattern().pieces().get(0).name() + ", where these meet");
        robot.push(KeyCode.ENTER);
        until(d -> d.pattern().pieces().get(0).notches().size() == notches + 1);
        robot.push(KeyCode.ESCAPE).push(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("tool-notch");
        tabTo(robot, "notch-0-0");
        type(robot, "15 cm");
        tabTo(robot, "mark-next");
        robot.push(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("step-seams");
        assertThat(desk().pattern().mates()).isNotEmpty();
        tabTo(robot, "mark-next");
        robot.push(KeyCode.SPACE);
        tabTo(robot, "level-own");
        type(robot, "high hip");
        until(d -> d.pattern().level("high hip").isPresent());
        tabTo(robot, "level-below-high-hip");
        type(robot, "10 cm");
        until(d -> d.shownReading().measures().girth("high hip").isPresent());
        tabTo(robot, "mark-next");
        robot.push(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        tabTo(robot, "body-waist");
    }

    private void openTheSkirtByKey(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitForFxEvents();
        tabTo(robot, "sample-skirt");
        robot.push(KeyCode.SPACE);
        until(Desk::isOpen);
    }

    /** What is done by key may take away or make anew what the key was pressed on: the keys stay there all the same. */
    @Test
    void theKeysStayWhereTheWorkIs(FxRobot robot) throws Exception {
        openTheSkirtByKey(robot);

        // Arrow keys in a choice do what a press does, and a second press on what is chosen changes nothing.
        tabTo(robot, "here-level");
        robot.write("h");
        until(d -> d.wanted().filter(w -> w.level().equals("hip")).isPresent());
        robot.push(KeyCode.F1);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("keys-close");
        assertThat(robot.lookup("#keys-close").queryAs(Button.class).getAccessibleHelp())
                .contains("F6")
                .contains("Shift+N")
                .contains("1 mm, with Shift 1 cm");
        // The unit may be changed while the list is open, and the keys stay in it.
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> app.session().setUnit(LengthUnit.INCH));
        assertThat(robot.lookup("#keys-close").queryAs(Button.class).getAccessibleHelp())
                .contains("1/16 in, with Shift 1/2 in");
        assertThat(focused()).isEqualTo("keys-close");
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> app.session().setUnit(LengthUnit.CM));
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("here-level");
        tabTo(robot, "side-both");
        robot.push(KeyCode.RIGHT);
        until(d -> d.wanted().orElseThrow().side() == Side.LEFT);
        assertThat(focused()).isEqualTo("side-left");
        robot.push(KeyCode.LEFT).push(KeyCode.SPACE);
        until(d -> d.wanted().orElseThrow().side() == Side.BOTH);
        assertThat(robot.lookup("#side-both").queryAs(ToggleButton.class).isSelected())
                .isTrue();

        // The seams are listed anew when one is left out.
        String seam = "seam-" + desk().holds().get(0).edge();
        tabTo(robot, seam);
        robot.push(KeyCode.SPACE);
        until(d -> d.wanted().orElseThrow().leftOut().size() == 1);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo(seam);

        robot.push(KeyCode.ALT, KeyCode.DIGIT1).push(KeyCode.ALT, KeyCode.DIGIT0);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("amount");
        type(robot, "24 mm");
        tabTo(robot, "keep");
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().changes().size() == 1);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("amount");

        // In a field in which nothing is being typed, to take back is to take back the work.
        robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        until(d -> d.pattern().changes().isEmpty());
        robot.push(KeyCode.SHORTCUT, KeyCode.Y);
        until(d -> d.pattern().changes().size() == 1);
        robot.write("3").push(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(desk().pattern().changes()).hasSize(1);
        robot.push(KeyCode.ESCAPE);

        // A change taken out takes its buttons along; the table is one key away, and the way back is the same key.
        robot.push(KeyCode.ALT, KeyCode.DIGIT5);
        tabTo(robot, "change-remove-0");
        robot.push(KeyCode.SPACE);
        until(d -> d.pattern().changes().isEmpty());
        WaitForAsyncUtils.waitForFxEvents();
        String place = focused();
        assertThat(place).isEqualTo("changes-undo");
        robot.push(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("table");
        robot.push(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo(place);
    }

    /** A way that asks for a place on the table is answered there by key as well. */
    @Test
    void aCutIsShownByKey(FxRobot robot) throws Exception {
        openTheSkirtByKey(robot);
        tabTo(robot, "here-level");
        robot.write("h");
        tabTo(robot, "way");
        robot.write("sl");
        until(d -> d.wanted().orElseThrow().other().isPresent());
        tabTo(robot, "pick-slash");
        robot.push(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("table");
        robot.push(KeyCode.N).push(KeyCode.N).push(KeyCode.ENTER);
        for (int i = 0; i < 9; i++) {
            robot.push(KeyCode.N);
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#table").query().getAccessibleText()).contains("Now where it ends", "Back/hem@13.5cm");
        robot.push(KeyCode.ENTER);
        until(d -> d.wanted().orElseThrow().other().orElseThrow().texts("slash").size() == 1);
        // From the table too, and not to the view of it all.
        robot.push(KeyCode.ALT, KeyCode.DIGIT0);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(focused()).isEqualTo("amount");
    }
}
