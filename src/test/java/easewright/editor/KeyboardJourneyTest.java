package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.pattern.Scale;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
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
    private Keys keys;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
        keys = new Keys(shown);
    }

    @Test
    void fromTheStartToASavedFile(FxRobot robot) throws Exception {
        openTheSkirtByKey();

        keys.tabTo("body-hip");
        keys.fill("98,5 cm");
        assertThat(line("hip").body().orElseThrow()).isCloseTo(985, within(1e-9));
        double finished = line("hip").finished();

        keys.tabTo("here-level");
        keys.press(KeyCode.DOWN);
        until(d -> d.wanted().filter(w -> w.level().equals("hip")).isPresent());
        robot.interact(() -> robot.lookup("#table").query().requestFocus());
        keys.press(KeyCode.N).press(KeyCode.SHIFT, KeyCode.RIGHT).press(KeyCode.RIGHT);
        until(d -> d.shownTrial().isPresent());
        // Whoever does not see the table hears which seam is held, and how far it is pulled.
        assertThat(robot.lookup("#table").query().getAccessibleText()).contains("side", "+1.1\u00a0cm");
        keys.press(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("amount");
        keys.fill("24 mm");
        assertThat(line("hip").finished()).isCloseTo(finished + 24, within(0.01));
        keys.tabTo("keep");
        keys.press(KeyCode.SPACE);
        until(d -> d.pattern().changes().size() == 1);

        // The page as a whole has the keys first, to be heard and scrolled, and then what stands first on it.
        keys.press(KeyCode.ALT, KeyCode.DIGIT5);
        assertThat(keys.focused()).isEqualTo("changes");
        keys.press(KeyCode.TAB);
        assertThat(keys.focused()).isEqualTo("change-on-0");
        keys.tabTo("change-amount-0");
        keys.fill("30 mm");
        untilMade();
        assertThat(line("hip").finished()).isCloseTo(finished + 30, within(0.01));

        Path saved = folder.resolve("by-keyboard.svg");
        answers.toSave.add(saved);
        keys.press(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        assertThat(SvgFile.read(saved).pattern().changes()).hasSize(1);
    }

    /** From a drawing without marks or size to levels on its pieces. */
    @Test
    void fromABareDrawingToItsLevels(FxRobot robot) throws Exception {
        answers.toOpen.add(Path.of("src/test/resources/marking/four-pieces.svg"));
        keys.press(KeyCode.SHORTCUT, KeyCode.O);
        until(Desk::isOpen);
        keys.tabTo("scale-offer-0");
        keys.press(KeyCode.SPACE);
        until(d -> d.pattern().scale().proof() == Scale.Proof.KNOWN_LINE);
        keys.tabTo("mark-next");
        keys.press(KeyCode.SPACE);
        untilThought(robot);
        // From any tick, and not through all of them.
        robot.interact(() -> robot.lookup(".mark-row .check-box").query().requestFocus());
        keys.press(KeyCode.SHORTCUT, KeyCode.ENTER);
        until(d -> d.pattern().pieces().stream().noneMatch(p -> p.edges().isEmpty()));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("mark-next");

        keys.tabTo("tool-notch");
        int notches = desk().pattern().pieces().get(0).notches().size();
        keys.press(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("table");
        keys.press(KeyCode.N);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#table").query().getAccessibleText())
                .contains(desk().pattern().pieces().get(0).name() + ", where these meet");
        keys.press(KeyCode.ENTER);
        until(d -> d.pattern().pieces().get(0).notches().size() == notches + 1);
        keys.press(KeyCode.ESCAPE).press(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("tool-notch");
        keys.tabTo("notch-0-0");
        keys.fill("15 cm");
        keys.tabTo("mark-next");
        keys.press(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("step-seams");
        assertThat(desk().pattern().mates()).isNotEmpty();
        keys.tabTo("mark-next");
        keys.press(KeyCode.SPACE);
        keys.tabTo("level-own");
        keys.fill("high hip");
        until(d -> d.pattern().level("high hip").isPresent());
        keys.tabTo("level-below-high-hip");
        keys.fill("10 cm");
        until(d -> d.shownReading().measures().girth("high hip").isPresent());
        keys.tabTo("mark-next");
        keys.press(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        keys.tabTo("body-waist");
    }

    private void openTheSkirtByKey() throws Exception {
        WaitForAsyncUtils.waitForFxEvents();
        keys.tabTo("sample-skirt");
        keys.press(KeyCode.SPACE);
        until(Desk::isOpen);
    }

    /** What is done by key may take away or make anew what the key was pressed on: the keys stay there all the same. */
    @Test
    void theKeysStayWhereTheWorkIs(FxRobot robot) throws Exception {
        openTheSkirtByKey();

        // Arrow keys in a choice do what a press does, and a second press on what is chosen changes nothing.
        keys.tabTo("here-level");
        keys.write("h");
        until(d -> d.wanted().filter(w -> w.level().equals("hip")).isPresent());
        keys.press(KeyCode.F1);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("keys-close");
        assertThat(robot.lookup("#keys-close").queryAs(Button.class).getAccessibleHelp())
                .contains("F6")
                .contains("Shift+N")
                .contains("1 mm, with Shift 1 cm");
        // The unit may be changed while the list is open, and the keys stay in it.
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> app.session().setUnit(LengthUnit.INCH));
        assertThat(robot.lookup("#keys-close").queryAs(Button.class).getAccessibleHelp())
                .contains("1/16 in, with Shift 1/2 in");
        assertThat(keys.focused()).isEqualTo("keys-close");
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> app.session().setUnit(LengthUnit.CM));
        keys.press(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("here-level");
        keys.tabTo("here-how").press(KeyCode.SPACE);
        assertThat(keys.focused()).isEqualTo("here-how");
        keys.tabTo("side-both");
        keys.press(KeyCode.RIGHT);
        until(d -> d.wanted().orElseThrow().side() == Side.LEFT);
        assertThat(keys.focused()).isEqualTo("side-left");
        keys.press(KeyCode.LEFT).press(KeyCode.SPACE);
        until(d -> d.wanted().orElseThrow().side() == Side.BOTH);
        assertThat(robot.lookup("#side-both").queryAs(ToggleButton.class).isSelected())
                .isTrue();

        // The seams are listed anew when one is left out.
        String seam = "seam-" + desk().holds().get(0).edge();
        keys.tabTo(seam);
        keys.press(KeyCode.SPACE);
        until(d -> d.wanted().orElseThrow().leftOut().size() == 1);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo(seam);

        keys.press(KeyCode.ALT, KeyCode.DIGIT1).press(KeyCode.ALT, KeyCode.DIGIT0);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("amount");
        keys.fill("24 mm");
        keys.tabTo("keep");
        keys.press(KeyCode.SPACE);
        until(d -> d.pattern().changes().size() == 1);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("amount");

        // In a field in which nothing is being typed, to take back is to take back the work.
        keys.press(KeyCode.SHORTCUT, KeyCode.Z);
        until(d -> d.pattern().changes().isEmpty());
        keys.press(KeyCode.SHORTCUT, KeyCode.Y);
        until(d -> d.pattern().changes().size() == 1);
        keys.write("3").press(KeyCode.SHORTCUT, KeyCode.Z);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(desk().pattern().changes()).hasSize(1);
        keys.press(KeyCode.ESCAPE);

        // A change taken out takes its buttons along; the table is one key away, and the way back is the same key.
        keys.press(KeyCode.ALT, KeyCode.DIGIT5);
        keys.tabTo("change-remove-0");
        keys.press(KeyCode.SPACE);
        until(d -> d.pattern().changes().isEmpty());
        WaitForAsyncUtils.waitForFxEvents();
        String place = keys.focused();
        assertThat(place).isEqualTo("changes");
        keys.press(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("table");
        keys.press(KeyCode.F6);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo(place);
    }

    /** A way that asks for a place on the table is answered there by key as well. */
    @Test
    void aCutIsShownByKey(FxRobot robot) throws Exception {
        openTheSkirtByKey();
        keys.tabTo("here-level");
        keys.write("h");
        keys.tabTo("here-how").press(KeyCode.SPACE);
        keys.tabTo("way");
        keys.write("sl");
        until(d -> d.wanted().orElseThrow().other().isPresent());
        keys.tabTo("pick-slash");
        keys.press(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("table");
        keys.press(KeyCode.N).press(KeyCode.N).press(KeyCode.ENTER);
        for (int i = 0; i < 9; i++) {
            keys.press(KeyCode.N);
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#table").query().getAccessibleText())
                .contains("Now click where the slash ends", "Back/hem@13.5cm");
        keys.press(KeyCode.ENTER);
        until(d -> d.wanted().orElseThrow().other().orElseThrow().texts("slash").size() == 1);
        // From the table too, and not to the view of it all.
        keys.press(KeyCode.ALT, KeyCode.DIGIT0);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("amount");
    }
}
