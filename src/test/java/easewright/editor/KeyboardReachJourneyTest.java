package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.editor.model.Wanted;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Whatever a mouse can do is in the reach of keys, to be seen where they are, and to be heard. */
class KeyboardReachJourneyTest extends Journey {
    /** More than this on the way round and nobody gets anywhere. */
    private static final int MOST_STOPS = 45;

    private Keys keys;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
        keys = new Keys(shown);
    }

    private void openTheSkirt() throws Exception {
        WaitForAsyncUtils.waitForAsyncFx(
                5000, () -> app.files().openSample(Sample.all().get(0)));
        until(Desk::isOpen);
    }

    private void focus(FxRobot robot, String id) {
        robot.interact(() -> robot.lookup(id).query().requestFocus());
    }

    /** What those hear who do not see the table. */
    private static String heard(FxRobot robot) {
        return item(robot).getAccessibleText();
    }

    private static Node item(FxRobot robot) {
        return (Node) robot.lookup("#table").query().queryAccessibleAttribute(AccessibleAttribute.FOCUS_ITEM);
    }

    /** On every page the Tab key comes round to where it began, and what has the keys is to be seen. */
    @Test
    void tabComesRoundAndIsAlwaysSeen(FxRobot robot) throws Exception {
        openTheSkirt();
        for (int page = 1; page <= 7; page++) {
            focus(robot, "#table");
            Set<Node> way = new LinkedHashSet<>();
            keys.press(KeyCode.ALT, KeyCode.getKeyCode(String.valueOf(page)));
            WaitForAsyncUtils.waitForFxEvents();
            Node stop = stage.getScene().getFocusOwner();
            while (way.add(stop)) {
                assertThat(isSeen(stop)).as("page %s, %s", page, stop).isTrue();
                keys.press(KeyCode.TAB);
                stop = stage.getScene().getFocusOwner();
            }
            assertThat(way)
                    .as("page %s", page)
                    .hasSizeLessThan(MOST_STOPS)
                    .contains(robot.lookup("#table").query());
        }
    }

    /** A line of words that is pressed has no ground of its own, and a ring all the same while it has the keys. */
    @Test
    void aLineThatUnfoldsIsSeenToHaveTheKeys(FxRobot robot) throws Exception {
        openTheSkirt();
        keys.press(KeyCode.ALT, KeyCode.DIGIT1).tabTo("step-scale").tabTo("scale-otherwise");
        WaitForAsyncUtils.waitForFxEvents();
        Region line = robot.lookup("#scale-otherwise").query();
        assertThat(line.getBorder().getStrokes())
                .anySatisfy(stroke ->
                        assertThat(((Color) stroke.getTopStroke()).getOpacity()).isEqualTo(1));
    }

    /** Within the view of everything that scrolls around it. */
    private static boolean isSeen(Node node) {
        Bounds place = node.localToScene(node.getLayoutBounds());
        for (Parent around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane pane) {
                Bounds view = pane.localToScene(pane.getLayoutBounds());
                boolean in = place.getMinY() >= view.getMinY() - 1 && place.getMaxY() <= view.getMaxY() + 1;
                if (!in && place.getHeight() < view.getHeight()) {
                    return false;
                }
            }
        }
        return place.getWidth() > 0;
    }

    /** On the table a letter takes a tool, and what comes of it is heard there. */
    @Test
    void marksAreMadeByLetter(FxRobot robot) throws Exception {
        answers.toOpen.add(Path.of("src/test/resources/marking/four-pieces.svg"));
        keys.press(KeyCode.SHORTCUT, KeyCode.O);
        until(Desk::isOpen);
        robot.interact(() -> app.session().hush());
        keys.tabTo("scale-offer-0").press(KeyCode.SPACE);
        keys.tabTo("mark-next").press(KeyCode.SPACE);
        untilThought(robot);
        keys.tabTo("suggest-accept").press(KeyCode.SPACE);
        until(d -> d.pattern().pieces().stream().noneMatch(p -> p.edges().isEmpty()));
        focus(robot, "#table");
        Piece before = desk().pattern().pieces().get(0);

        keys.press(KeyCode.D);
        toTheHem(robot);
        assertThat(heard(robot)).startsWith(before.name());
        keys.times(4, KeyCode.SHIFT, KeyCode.LEFT);
        assertThat(heard(robot)).startsWith(before.name() + ", hem, 4\u00a0cm from side.");
        keys.press(KeyCode.ENTER).times(3, KeyCode.SHIFT, KeyCode.LEFT).press(KeyCode.ENTER);
        keys.times(8, KeyCode.SHIFT, KeyCode.UP).press(KeyCode.ENTER);
        until(d -> d.pattern().pieces().get(0).darts().size() == before.darts().size() + 1);
        Dart dart = desk().pattern().pieces().get(0).darts().get(before.darts().size());
        assertThat(dart.intake()).isCloseTo(30, within(0.1));
        assertThat(heard(robot)).contains("point of " + dart.name());

        keys.press(KeyCode.C).press(KeyCode.N).press(KeyCode.ENTER);
        until(d ->
                d.pattern().pieces().get(0).notches().size() == before.notches().size() + 1);
        keys.press(KeyCode.E);
        toTheHem(robot);
        keys.press(KeyCode.ENTER);
        // Where an edge ends already none can be split: the reason is heard before anything else.
        assertThat(heard(robot)).startsWith(desk().words().problem("edge-ends-there", Map.of()));
        keys.times(9, KeyCode.SHIFT, KeyCode.LEFT).press(KeyCode.ENTER);
        until(d -> d.pattern().pieces().get(0).edges().size() == before.edges().size() + 1);

        int mates = desk().pattern().mates().size();
        keys.press(KeyCode.S)
                .press(KeyCode.N)
                .press(KeyCode.ENTER)
                .press(KeyCode.N)
                .press(KeyCode.ENTER);
        until(d -> d.pattern().mates().size() == mates + 1);
        assertThat(robot.lookup("#step-seams").query().isFocusTraversable())
                .as("the part of marking that shows them")
                .isTrue();
        keys.press(KeyCode.M)
                .press(KeyCode.N)
                .press(KeyCode.ENTER)
                .press(KeyCode.N)
                .press(KeyCode.ENTER);
        assertThat(heard(robot)).contains("Click again to measure something else");
        keys.press(KeyCode.ESCAPE);
        assertThat(keys.focused()).isEqualTo("table");
    }

    /** From place to place to where the side ends at the hem. */
    private void toTheHem(FxRobot robot) {
        for (int i = 0; i < MOST_STOPS && !heard(robot).contains("where these meet: side, hem."); i++) {
            keys.press(KeyCode.N);
        }
        assertThat(heard(robot)).contains("where these meet: side, hem.");
    }

    /** What is typed on the table, asked, moved or put away leaves the keys where the work goes on. */
    @Test
    void theKeysGoOnWhereTheWorkDoes(FxRobot robot) throws Exception {
        openTheSkirt();
        focus(robot, "#table");
        Node first = item(robot);
        keys.press(KeyCode.N);
        assertThat(item(robot)).as("read only as another item").isNotSameAs(first);
        assertThat(heard(robot)).contains("side");
        keys.write("2");
        assertThat(keys.focused()).isEqualTo("amount");
        keys.press(KeyCode.ENTER);
        until(d -> d.shownTrial().isPresent());
        TextField amount = robot.lookup("#amount").query();
        assertThat(amount.queryAccessibleAttribute(AccessibleAttribute.TEXT)).isEqualTo("+2\u00a0cm");
        assertThat(amount.getAccessibleHelp()).contains("ease from");
        keys.press(KeyCode.ENTER);
        until(d -> d.pattern().changes().size() == 1);

        // Back over the level and the settings, which stand before the amount.
        for (int i = 0; i < 14 && !keys.focused().equals("ask-where"); i++) {
            keys.press(KeyCode.SHIFT, KeyCode.TAB);
        }
        assertThat(keys.focused()).isEqualTo("ask-where");
        keys.press(KeyCode.SPACE);
        assertThat(keys.focused()).isEqualTo("feels-pulls");
        keys.press(KeyCode.ESCAPE);
        assertThat(keys.focused()).isEqualTo("ask-where");
        keys.press(KeyCode.SPACE).press(KeyCode.SPACE).press(KeyCode.TAB).press(KeyCode.END);
        assertThat(keys.focused()).isEqualTo("sign-wide-hips");
        keys.press(KeyCode.HOME).press(KeyCode.SPACE).press(KeyCode.TAB);
        assertThat(keys.focused()).isEqualTo("where-side-both");
        keys.press(KeyCode.END).press(KeyCode.SPACE).press(KeyCode.TAB);
        assertThat(keys.focused()).isEqualTo("where-take");
        keys.press(KeyCode.SPACE);
        assertThat(keys.focused()).isEqualTo("amount");
        assertThat(desk().wanted()).map(Wanted::side).contains(Side.RIGHT);
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withSide(Side.BOTH)));
        // The space bar opens a list, and chooses from it.
        keys.tabTo("here-level").press(KeyCode.SPACE);
        ComboBox<?> level = robot.lookup("#here-level").query();
        assertThat(level.isShowing()).isTrue();
        keys.press(KeyCode.DOWN).press(KeyCode.SPACE);
        assertThat(level.isShowing()).isFalse();
        assertThat(level.getValue()).isEqualTo("hip");
        keys.tabTo("amount").fill("3 cm").press(KeyCode.ENTER);
        until(d -> d.pattern().changes().size() == 2);

        keys.press(KeyCode.ALT, KeyCode.DIGIT5).tabTo("change-amount-0").press(KeyCode.ALT, KeyCode.DOWN);
        untilMade();
        assertThat(keys.focused()).isEqualTo("change-amount-1");
        assertThat(((TextField) stage.getScene().getFocusOwner()).getText()).isEqualTo("+2\u00a0cm");

        // A button with nothing more to do hands the keys to the one beside it.
        focus(robot, "#undo");
        while (desk().canUndo()) {
            keys.press(KeyCode.SPACE);
        }
        assertThat(keys.focused()).isEqualTo("redo");
        robot.interact(() -> app.session().say(true, "editor.said.failed", Map.of("file", "a.svg", "reason", "no")));
        keys.tabTo("table").press(KeyCode.TAB).press(KeyCode.TAB).press(KeyCode.SPACE);
        assertThat(desk().notice()).isEmpty();
        assertThat(keys.focused()).isEqualTo("table");
        robot.interact(() -> app.session().say(true, "editor.said.failed", Map.of("file", "a.svg", "reason", "no")));
        focus(robot, "#amount");
        keys.press(KeyCode.F8);
        assertThat(stage.getScene().getFocusOwner().getAccessibleText()).contains("a.svg");
        keys.press(KeyCode.ESCAPE);
        assertThat(desk().notice()).isEmpty();
        assertThat(keys.focused()).as("where they were").isEqualTo("amount");
        keys.press(KeyCode.F1).press(KeyCode.TAB);
        assertThat(keys.focused()).as("nothing under the card is gone to").isEqualTo("keys-close");
    }
}
