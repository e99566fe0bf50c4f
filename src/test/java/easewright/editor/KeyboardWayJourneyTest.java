package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.editor.panel.SheetPanel;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The way from one thing to the next by keys is short, and what is typed comes where the keys were sent. */
class KeyboardWayJourneyTest extends Journey {
    /** More than lie between the amount and what is done with it. */
    private static final int MOST_STOPS = 12;

    private Keys keys;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
        keys = new Keys(shown);
    }

    @BeforeEach
    void openTheSkirt() throws Exception {
        WaitForAsyncUtils.waitForAsyncFx(
                5000, () -> app.files().openSample(Sample.all().get(0)));
        until(Desk::isOpen);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void focus(FxRobot robot, String id) {
        robot.interact(() -> robot.lookup(id).query().requestFocus());
    }

    private String level() {
        return desk().wanted().orElseThrow().level();
    }

    /** On a slow machine keys that were pressed come before what was left for later. */
    @Test
    void theKeysAreOnAPageAsSoonAsItIsTurnedTo(FxRobot robot) {
        SheetPanel sheet = robot.lookup("#sheet").queryAs(SheetPanel.class);
        for (String page : new String[] {"marks", "rings", "changes", "true", "notes", "ease"}) {
            robot.interact(() -> {
                sheet.goTo(page);
                assertThat(stage.getScene().getFocusOwner())
                        .as(page)
                        .satisfies(stop ->
                                assertThat(stop.localToScene(0, 0).getX()).isGreaterThanOrEqualTo(sheet.getLayoutX()));
            });
        }
        robot.interact(() -> {
            sheet.goTo("ease");
            assertThat(stage.getScene().getFocusOwner().getId()).isEqualTo("body-waist");
            sheet.goTo("marks");
            sheet.toAmount();
            assertThat(stage.getScene().getFocusOwner().getId()).isEqualTo("amount");
        });
    }

    @Test
    void theLevelIsChosenFromTheTable(FxRobot robot) throws Exception {
        focus(robot, "#table");
        String first = level();
        keys.press(KeyCode.L);
        until(d -> !level().equals(first));
        assertThat(robot.lookup("#table").query().getAccessibleText()).contains(level());
        keys.press(KeyCode.SHIFT, KeyCode.L);
        until(d -> level().equals(first));
        int levels = desk().pattern().levels().size();
        keys.times(levels, KeyCode.L);
        assertThat(level()).isEqualTo(first);
        // While marks are made no level is at work.
        keys.press(KeyCode.ALT, KeyCode.DIGIT1);
        focus(robot, "#table");
        keys.press(KeyCode.L);
        assertThat(level()).isEqualTo(first);
    }

    @Test
    void whoAddsALevelGoesOnInIt(FxRobot robot) throws Exception {
        keys.press(KeyCode.ALT, KeyCode.DIGIT1).tabTo("step-scale").times(4, KeyCode.RIGHT);
        keys.tabTo("level-own").fill("yoke");
        until(d -> d.pattern().level("yoke").isPresent());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(keys.focused()).isEqualTo("level-below-yoke");
        keys.fill("8 cm");
        until(d -> d.reading().measures().girth("yoke").isPresent());
    }

    @Test
    void measurementsAreTypedOneBelowTheOther(FxRobot robot) throws Exception {
        keys.press(KeyCode.ALT, KeyCode.DIGIT2);
        assertThat(keys.focused()).isEqualTo("body-waist");
        keys.press(KeyCode.SHORTCUT, KeyCode.A).write("74").press(KeyCode.DOWN);
        assertThat(keys.focused()).isEqualTo("body-hip");
        assertThat(robot.lookup("#body-waist").queryAs(TextField.class).getText())
                .isEqualTo("74\u00a0cm");
        keys.press(KeyCode.DOWN);
        assertThat(keys.focused()).isEqualTo("body-hip");
        keys.tabTo("wish-hip").press(KeyCode.UP);
        assertThat(keys.focused()).isEqualTo("wish-waist");
    }

    @Test
    void whoAsksWhereComesThereByTab(FxRobot robot) throws Exception {
        assertThat(onTheWay("ask-where", 2)).containsExactly("ask-where", "here-less");
        tryAnAmount();
        assertThat(onTheWay("ask-where", 2)).containsExactly("ask-where", "here-less");
        // Also where the arrow had the keys last.
        focus(robot, "#here-less");
        assertThat(onTheWay("ask-where", 2)).containsExactly("ask-where", "here-less");
    }

    @Test
    void inATrialTabGoesAsItIsSeen(FxRobot robot) throws Exception {
        tryAnAmount();
        assertThat(onTheWay("amount", MOST_STOPS))
                .containsSubsequence("amount", "less", "more", "here-how", "leave", "keep");
    }

    private void tryAnAmount() throws Exception {
        keys.press(KeyCode.ALT, KeyCode.DIGIT0).fill("2 cm");
        until(d -> d.shownTrial().isPresent());
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The stops of the Tab key from one of them on. */
    private List<String> onTheWay(String from, int stops) {
        keys.tabTo(from);
        List<String> way = new ArrayList<>(List.of(from));
        while (way.size() < stops && !way.contains("keep")) {
            keys.press(KeyCode.TAB);
            way.add(String.valueOf(keys.focused()));
        }
        return way;
    }

    @Test
    void whatIsTypedAfterEnterTakesThePlaceOfWhatWasTaken(FxRobot robot) throws Exception {
        keys.press(KeyCode.ALT, KeyCode.DIGIT2).tabTo("body-hip").fill("106");
        TextField hip = robot.lookup("#body-hip").queryAs(TextField.class);
        assertThat(hip.getSelectedText()).isEqualTo("106\u00a0cm");
        keys.write("62");
        assertThat(hip.getText()).isEqualTo("62");
        // What is not understood is put right where it is wrong.
        keys.fill("6x");
        assertThat(hip.getSelectedText()).isEmpty();
    }

    @Test
    void aPageIsTurnedBySight(FxRobot robot) {
        robot.interact(() -> stage.setHeight(600));
        keys.press(KeyCode.ALT, KeyCode.DIGIT2);
        ScrollPane page = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        double top = page.getVvalue();
        double rest = page.getContent().getLayoutBounds().getHeight()
                - page.getViewportBounds().getHeight();
        assertThat(rest).isGreaterThan(50);
        keys.press(KeyCode.PAGE_DOWN);
        double step = (page.getVvalue() - top) * rest;
        assertThat(step).isGreaterThan(Math.min(rest, page.getViewportBounds().getHeight()) / 2);
        assertThat(keys.focused()).isEqualTo("body-waist");
        keys.press(KeyCode.PAGE_UP);
        assertThat(page.getVvalue()).isEqualTo(top);
    }

    @Test
    void theRowAtTheTopIsOneKeyAway(FxRobot robot) {
        keys.press(KeyCode.ALT, KeyCode.DIGIT0).press(KeyCode.F10);
        assertThat(keys.focused()).isEqualTo("open");
        keys.press(KeyCode.RIGHT).press(KeyCode.RIGHT);
        assertThat(keys.focused()).isEqualTo("export");
        keys.press(KeyCode.F6).press(KeyCode.F10);
        assertThat(keys.focused()).isEqualTo("export");
    }
}
