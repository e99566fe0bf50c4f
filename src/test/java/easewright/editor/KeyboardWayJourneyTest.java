package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.editor.panel.SheetPanel;
import easewright.pattern.Body;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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

    /** What was pressed is there no more: the keys are where what was tried is kept, or where the other wish stands. */
    @Test
    void whatIsGivenOrAdoptedTakesTheKeysAlong(FxRobot robot) {
        robot.interact(() -> app.session().setWish("hip", OptionalDouble.of(80)));
        focus(robot, "#give-hip");
        keys.press(KeyCode.SPACE);
        assertThat(desk().trial()).isPresent();
        assertThat(keys.focused()).isEqualTo("amount");
        keys.press(KeyCode.ENTER);
        assertThat(desk().pattern().changes()).hasSize(1);

        robot.interact(() -> app.session().setWish("hip", OptionalDouble.of(20)));
        focus(robot, "#adopt-hip");
        keys.press(KeyCode.SPACE);
        assertThat(line("hip").wish().orElseThrow()).isCloseTo(80, within(0.05));
        assertThat(keys.focused()).isEqualTo("wish-hip");
    }

    /** A Tab more or less ends on the name of a level: what is typed there is not lost. */
    @Test
    void digitsAtTheNameOfALevelGoOnInItsField(FxRobot robot) {
        robot.interact(() -> app.session().edit(desk().pattern().withBody(Body.UNKNOWN)));
        WaitForAsyncUtils.waitForFxEvents();
        focus(robot, "#level-name-hip");
        keys.write("94").press(KeyCode.ENTER);
        assertThat(line("hip").body().orElseThrow()).isCloseTo(940, within(1e-9));
    }

    /** Also when the keys are there already: a digit that came back half typed does not become one of another number. */
    @Test
    void toGoToTheAmountIsToTypeItAnew(FxRobot robot) {
        focus(robot, "#amount");
        keys.write("1");
        assertThat(robot.lookup("#amount").queryAs(TextField.class).getText()).isEqualTo("1");
        keys.press(KeyCode.ALT, KeyCode.DIGIT0);
        assertThat(robot.lookup("#amount").queryAs(TextField.class).getSelectedText())
                .isEqualTo("1");
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
