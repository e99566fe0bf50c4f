package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Lists that hang on a button, the row at the top and the window for prints, worked by keys alone. */
class ListsByKeysJourneyTest extends FilesJourney {
    private static final int MOST_STEPS = 130;

    private Keys keys;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
        keys = new Keys(shown);
    }

    /** The entry that is lit in an open list; empty for none. */
    private static String lit(MenuButton list) throws Exception {
        return WaitForAsyncUtils.asyncFx(() -> list.getItems().stream()
                        .filter(i -> i.getStyleableNode() != null
                                && i.getStyleableNode().isFocused())
                        .map(MenuItem::getText)
                        .findFirst()
                        .orElse(""))
                .get();
    }

    private Node owner() throws Exception {
        return WaitForAsyncUtils.asyncFx(() -> stage.getScene().getFocusOwner()).get();
    }

    private static List<String> entries(MenuButton list) {
        return list.getItems().stream()
                .filter(i -> !i.isDisable() && !(i instanceof SeparatorMenuItem))
                .map(MenuItem::getText)
                .toList();
    }

    @Test
    void aLevelIsAddedByItsLetter(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        keys.press(KeyCode.ALT, KeyCode.DIGIT1);
        robot.interact(() -> robot.lookup("#step-levels").query().requestFocus());
        keys.press(KeyCode.SPACE).tabTo("level-add");
        MenuButton add = robot.lookup("#level-add").queryAs(MenuButton.class);
        String wanted = entries(add).stream()
                .filter(e -> e.toLowerCase(Locale.ROOT).startsWith("t"))
                .findFirst()
                .orElseThrow();
        keys.press(KeyCode.SPACE);
        assertThat(lit(add)).isEqualTo(entries(add).get(0));
        keys.press(KeyCode.T);
        assertThat(lit(add)).isEqualTo(wanted);
        keys.press(KeyCode.ENTER);
        until(d -> d.pattern().levels().stream().map(Level::name).anyMatch(wanted::equals));
    }

    /** Whatever list the Tab key comes to on the page of marks: opened, its first entry is lit, and each letter goes on. */
    @Test
    void everyListObeysLetters(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        keys.press(KeyCode.ALT, KeyCode.DIGIT1);
        Set<String> tried = new LinkedHashSet<>();
        for (String step : List.of("pieces", "levels", "seams")) {
            robot.interact(() -> robot.lookup("#step-" + step).query().requestFocus());
            keys.press(KeyCode.SPACE);
            Node begin = owner();
            for (int i = 0; i < MOST_STEPS; i++) {
                keys.press(KeyCode.TAB);
                Node at = owner();
                if (at == begin) {
                    break;
                }
                if (at instanceof MenuButton list && !entries(list).isEmpty()) {
                    tryIt(list);
                    tried.add(step + " " + list.getId());
                }
            }
        }
        assertThat(tried).as("lists of three parts of the page").hasSizeGreaterThan(3);
    }

    private void tryIt(MenuButton list) throws Exception {
        keys.press(KeyCode.DOWN);
        List<String> entries = entries(list);
        assertThat(list.isShowing()).as("%s", list).isTrue();
        assertThat(lit(list)).as("%s", list).isEqualTo(entries.get(0));
        String last = entries.get(entries.size() - 1);
        String letter = last.substring(0, 1).toUpperCase(Locale.ROOT);
        List<String> same = new ArrayList<>(entries);
        same.removeIf(e -> !e.toUpperCase(Locale.ROOT).startsWith(letter));
        // The first entry may begin with the letter as well: then it is the next of its kind.
        String wanted = same.size() > 1 && same.get(0).equals(entries.get(0)) ? same.get(1) : same.get(0);
        if (Character.isLetter(letter.charAt(0))) {
            keys.press(KeyCode.valueOf(letter));
            assertThat(lit(list)).as("%s in %s", letter, entries).isEqualTo(wanted);
        }
        keys.press(KeyCode.ESCAPE);
        assertThat(list.isShowing()).as("%s", list).isFalse();
    }

    @Test
    void theRowAtTheTopIsGoneThroughAndAFileOpenedFromItLeadsToTheTable(FxRobot robot) throws Exception {
        Path one = skirt("one.svg");
        Path two = skirt("two.svg");
        for (Path file : List.of(one, two)) {
            robot.interact(() -> app.files().open(file));
            until(d -> d.file()
                    .filter(f -> f.name().equals(file.getFileName().toString()))
                    .isPresent());
        }
        MenuButton open = robot.lookup("#open").queryAs(MenuButton.class);
        for (int again = 0; again < 2; again++) {
            keys.press(KeyCode.F10).press(KeyCode.HOME).press(KeyCode.DOWN);
            assertThat(lit(open)).startsWith("two.svg");
            keys.press(KeyCode.ESCAPE);
        }
        keys.press(KeyCode.DOWN).press(KeyCode.O);
        assertThat(lit(open)).startsWith("one.svg");
        keys.press(KeyCode.ENTER);
        until(d -> d.file().filter(f -> f.name().equals("one.svg")).isPresent());
        assertThat(keys.focused()).isEqualTo("table");

        keys.press(KeyCode.F10).press(KeyCode.HOME);
        answers.toOpen.add(two);
        keys.press(KeyCode.ENTER);
        until(d -> d.file().filter(f -> f.name().equals("two.svg")).isPresent());
        assertThat(keys.focused()).isEqualTo("table");

        LengthUnit unit = desk().unit();
        keys.press(KeyCode.F10).press(KeyCode.END);
        assertThat(keys.focused()).isEqualTo("lamp");
        keys.press(KeyCode.LEFT);
        assertThat(keys.focused()).isEqualTo("unit-inch");
        assertThat(desk().unit()).isEqualTo(unit);
        keys.press(KeyCode.SPACE);
        assertThat(desk().unit()).isNotEqualTo(unit);
        keys.press(KeyCode.LEFT).press(KeyCode.SPACE).press(KeyCode.SPACE);
        assertThat(desk().unit()).isEqualTo(unit);
        keys.press(KeyCode.LEFT);
        assertThat(keys.focused()).isEqualTo("print");
    }

    @Test
    void leavingByKeyAsksWhatClosingAsks(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        widen(robot);
        answers.leave.add(Asking.Leave.STAY);
        keys.press(KeyCode.SHORTCUT, KeyCode.Q);
        assertThat(answers.asked).contains("leave skirt.svg");
        assertThat(stage.isShowing()).isTrue();
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        keys.press(KeyCode.SHORTCUT, KeyCode.Q);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !stage.isShowing());
    }

    /** A page arrow that leads nowhere any more hands the keys on. */
    @Test
    void theKeysAreNeverLostInThePrints(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        keys.press(KeyCode.SHORTCUT, KeyCode.P);
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> !robot.lookup("#print-later").query().isDisabled());
        Stage prints = (Stage) robot.lookup("#print-later").query().getScene().getWindow();
        Keys there = new Keys(prints);
        Label page = robot.lookup("#print-page").query();
        robot.interact(() -> robot.lookup("#print-later").query().requestFocus());
        for (int i = 0; i < MOST_STEPS && there.focused().equals("print-later"); i++) {
            there.press(KeyCode.SPACE);
        }
        assertThat(robot.lookup("#print-later").query().isDisabled()).isTrue();
        String last = page.getText();
        assertThat(there.focused()).as("on the last page").isEqualTo("print-earlier");
        there.press(KeyCode.SPACE);
        assertThat(page.getText()).as("the keys go on").isNotEqualTo(last);
        for (int i = 0; i < MOST_STEPS && there.focused().equals("print-earlier"); i++) {
            there.press(KeyCode.SPACE);
        }
        assertThat(page.getText()).startsWith("Page 1 of ");
        assertThat(there.focused()).as("on the first page").isEqualTo("print-later");

        // What is shown next may have one page only.
        robot.interact(() ->
                robot.lookup("#print-kind-report").queryAs(ToggleButton.class).fire());
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> !robot.lookup("#print-save-page").query().isDisabled());
        WaitForAsyncUtils.waitForFxEvents();
        Node owner = prints.getScene().getFocusOwner();
        assertThat(owner).isNotNull();
        assertThat(owner.isDisabled()).isFalse();
    }
}
