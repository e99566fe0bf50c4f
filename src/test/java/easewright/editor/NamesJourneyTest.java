package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.editor.mark.MarkState;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.pattern.Side;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Every control has a name for those who do not see it, and a hint in plain words for those who do. */
class NamesJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** Of all windows that are open; a hint beside the pointer is a window as well. */
    private static List<Control> controls() {
        List<Control> found = new ArrayList<>();
        for (Window each : List.copyOf(Window.getWindows())) {
            if (each.isShowing() && !(each instanceof PopupWindow)) {
                collect(each.getScene().getRoot(), found);
            }
        }
        return found;
    }

    /** Down to controls that are to be seen; what a control is built of is its own affair. */
    private static void collect(Node node, List<Control> found) {
        if (!node.isVisible()) {
            return;
        }
        if (isWorked(node)) {
            found.add((Control) node);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
        }
    }

    private static boolean isWorked(Node node) {
        return node instanceof ButtonBase
                || node instanceof TextInputControl
                || node instanceof ComboBoxBase<?>
                || node instanceof ChoiceBox<?>
                || node instanceof ListView<?>
                || node instanceof Slider
                || node instanceof Spinner<?>;
    }

    /** What is heard first: of a field or a list the words of its label, because what stands in it is heard as well. */
    private static String name(Control control) {
        AccessibleRole role = control.getAccessibleRole();
        if (role == AccessibleRole.TEXT_FIELD || role == AccessibleRole.COMBO_BOX) {
            Node label = (Node) control.queryAccessibleAttribute(AccessibleAttribute.LABELED_BY);
            assertThat(control.getAccessibleText())
                    .as("would be heard in place of what stands there")
                    .isNull();
            return label == null ? "" : (String) label.queryAccessibleAttribute(AccessibleAttribute.TEXT);
        }
        String own = control.getAccessibleText() == null ? "" : control.getAccessibleText();
        String text = control instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
        return own + text;
    }

    /** @return how many controls there are */
    private static int allAreNamed(String when) {
        List<String> faults = new ArrayList<>();
        List<Control> controls = controls();
        for (Control control : controls) {
            String name = name(control);
            String hint = (String) control.queryAccessibleAttribute(AccessibleAttribute.HELP);
            if (name.strip().length() < 2 || isKey(name)) {
                faults.add("no name: " + control);
            }
            // Of a list the name stands on a label that is not to be seen.
            boolean nameIsHint =
                    (hint == null || hint.isEmpty()) && name.strip().length() >= 2 && hasHint(control);
            if (!nameIsHint && (hint == null || hint.isBlank() || isKey(hint))) {
                faults.add("no hint: " + control);
            }
        }
        assertThat(faults).as(when).isEmpty();
        return controls.size();
    }

    /** Beside the pointer; where that is no more than the name, it is not heard a second time. */
    private static boolean hasHint(Control control) {
        return control.getProperties().keySet().stream()
                .anyMatch(
                        k -> k instanceof Class<?> kind && kind.getSimpleName().equals("Hints"));
    }

    private static boolean isKey(String words) {
        return words.contains("editor.") || words.contains(".setting.") || words.contains("{");
    }

    @Test
    void aHintComesToThePointer(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitForFxEvents();
        Button open = robot.lookup("#start-open").query();
        assertThat(open.getTooltip()).as("made when the pointer comes").isNull();
        robot.moveTo(open).moveBy(3, 2);
        until(d -> Window.getWindows().stream().anyMatch(Tooltip.class::isInstance));
        robot.interact(() -> assertThat(open.getTooltip().getText())
                .isEqualTo(open.getAccessibleHelp())
                .isEqualTo(desk().words().of("editor.open.hint")));
    }

    @Test
    void onTheEmptyTableAndOnEveryPage(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitForFxEvents();
        robot.lookup("#sample-skirt").query();
        robot.interact(() -> allAreNamed("start"));
        openTheSkirt(robot);
        write(robot, "#body-hip", "98 cm");
        write(robot, "#wish-hip", "9 cm");
        write(robot, "#amount", "2 cm");
        robot.interact(() -> allAreNamed("trial"));
        write(robot, "#amount", "9 m");
        robot.interact(() -> allAreNamed("refused"));
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        until(d -> !d.pattern().changes().isEmpty());
        robot.interact(() -> app.session().say(true, "editor.said.failed", Map.of("file", "x", "reason", "y")));
        for (String page : List.of("marks", "ease", "rings", "size", "changes", "notes")) {
            robot.clickOn("#page-" + page);
            robot.interact(() -> allAreNamed(page));
        }
        unfoldHere(robot);
        robot.clickOn("#ask-where").clickOn("#feels-pulls").clickOn("#sign-seat");
        robot.interact(() -> allAreNamed("where"));
        robot.clickOn("#where-take");
        until(d -> d.wanted().flatMap(w -> w.other()).isPresent());
        assertThat(robot.lookup("#where").query().isVisible()).isFalse();
        assertThat(robot.lookup("#here-how").queryLabeled().getText())
                .as("the way that was set up is told")
                .startsWith("How: ")
                .doesNotContain("at Back side");
        openHow(robot);
        assertThat(isShown(robot.lookup("#way-form").query())).isTrue();
        robot.clickOn("#ask-where").clickOn("#feels-pulls");
        assertThat(isShown(robot.lookup("#way-form").query()))
                .as("what it asks has nothing to do with the answers")
                .isFalse();
        robot.push(KeyCode.ESCAPE);
        assertThat(isShown(robot.lookup("#way-form").query())).isTrue();
        robot.clickOn("#ask-where").clickOn("#feels-pulls").clickOn("#sign-one-hip");
        assertThat(robot.lookup("#where-take").queryButton().isDisabled())
                .as("which of the two is asked first")
                .isTrue();
        robot.clickOn("#where-side-right").clickOn("#where-take");
        until(d -> d.wanted().orElseThrow().side() == Side.RIGHT);
        assertThat(desk().wanted().orElseThrow().atSeams()).isTrue();
    }

    @Test
    void inEveryPartOfTheMarks(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-marks");
        for (MarkState.Step step : MarkState.Step.values()) {
            robot.clickOn("#step-" + step.key());
            robot.interact(() -> assertThat(allAreNamed(step.key())).isGreaterThan(10));
        }
        robot.clickOn("#step-pieces").clickOn("#tool-dart");
        robot.interact(() -> allAreNamed("a tool in hand"));
    }

    @Test
    void ofADrawingWithoutMarks(FxRobot robot) throws Exception {
        Path bare = Path.of("docs/first-fit/skirt.svg").toAbsolutePath();
        robot.interact(() -> app.files().open(bare));
        until(Desk::isOpen);
        robot.clickOn("#step-scale");
        robot.interact(() -> allAreNamed("scale"));
        robot.clickOn("#step-suggested");
        untilThought(robot);
        robot.interact(() -> assertThat(allAreNamed("suggestions")).isGreaterThan(20));
    }

    @Test
    void inSeveralSizes(FxRobot robot) throws Exception {
        Path sizes = Path.of("sample-pieces/skirt-sizes.svg").toAbsolutePath();
        robot.interact(() -> app.files().open(sizes));
        until(Desk::isOpen);
        write(robot, "#amount", "2 cm");
        robot.interact(() -> allAreNamed("one of several sizes"));
        robot.clickOn("#page-marks");
        for (MarkState.Step step : MarkState.Step.values()) {
            robot.clickOn("#step-" + step.key());
            robot.interact(() -> allAreNamed(step.key()));
        }
        robot.clickOn("#print");
        robot.interact(() -> allAreNamed("prints of several sizes"));
        robot.push(KeyCode.ESCAPE);
    }

    /** A change at one seam alone leaves lines to true and a band that no longer fits. */
    @Test
    void whereSomethingIsToBeTrued(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> {
            app.session().chooseLevel("waist");
            app.session().want(desk().wanted().orElseThrow().withAmount(20));
            app.session().keep();
        });
        robot.clickOn("#page-true");
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> !robot.lookup("#follow-0").queryAll().isEmpty());
        robot.interact(() -> allAreNamed("true"));
        robot.clickOn("#page-changes");
        robot.interact(() -> allAreNamed("changes"));
    }

    @Test
    void inThePrintsAndTheListOfKeys(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        int without = controls().size();
        robot.push(KeyCode.F1);
        robot.interact(() -> assertThat(allAreNamed("keys")).isGreaterThan(without));
        robot.push(KeyCode.ESCAPE);
        robot.clickOn("#print");
        for (String kind : List.of("pieces", "report")) {
            robot.clickOn("#print-kind-" + kind);
            robot.interact(() -> assertThat(allAreNamed(kind)).isGreaterThan(without + 8));
        }
        robot.push(KeyCode.ESCAPE);
    }

    @Test
    void inTheFormOfEveryWay(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        openHow(robot);
        for (Way way : Ways.all()) {
            robot.interact(() -> {
                Desk desk = desk();
                app.session().want(desk.wanted().orElseThrow().withOther(Optional.of(OtherWay.of(way))));
                allAreNamed(way.method());
            });
        }
    }
}
