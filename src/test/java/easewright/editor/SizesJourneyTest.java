package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Course;
import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Box;
import easewright.geom.Point;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A file with several sizes: which is at work is said where the amount is typed, and others are changed with it. */
class SizesJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static String nameHeard(FxRobot robot, String field) {
        Node label = (Node) robot.lookup(field).query().queryAccessibleAttribute(AccessibleAttribute.LABELED_BY);
        return label.getAccessibleText();
    }

    private static CheckBox tick(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(CheckBox.class);
    }

    /** By keyboard alone, from one size to three and back to none. */
    @Test
    void oneChangeIsMadeInSeveralSizesAtOnce(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        Labeled title = robot.lookup("#here-title").queryLabeled();
        assertThat(title.getText()).isEqualTo("This much, here");
        assertThat(nameHeard(robot, "#amount")).isEqualTo("Change of the finished girth");
        assertThat(robot.lookup("#also-in").query().isVisible()).isFalse();
        robot.interact(() -> app.files().open(Path.of("sample-pieces/skirt-sizes.svg")));
        until(d -> d.size().isPresent());
        assertThat(title.getText()).isEqualTo("This much, here, in size 10");
        robot.interact(() -> app.session().chooseSize("12"));
        assertThat(title.getText()).isEqualTo("This much, here, in size 12");
        assertThat(nameHeard(robot, "#amount")).isEqualTo("Change of the finished girth, in size 12");

        robot.interact(() -> app.session().chooseLevel("hip"));
        Keys keys = new Keys(stage);
        robot.interact(() -> robot.lookup("#ask-where").query().requestFocus());
        keys.press(KeyCode.TAB).press(KeyCode.TAB);
        assertThat(keys.focused()).isEqualTo("also-10");
        assertThat(tick(robot, "#also-10").getAccessibleText()).isEqualTo("Also in size 10");
        assertThat(tick(robot, "#also-10").getHeight()).isGreaterThanOrEqualTo(24);
        keys.press(KeyCode.RIGHT).press(KeyCode.SPACE);
        until(d -> d.sizesTaking().equals(List.of("12", "14")));
        assertThat(title.getText()).isEqualTo("This much, here, in 2 sizes");
        keys.press(KeyCode.RIGHT).press(KeyCode.SPACE);
        until(d -> d.sizesTaking().equals(List.of("10", "12", "14")));
        assertThat(keys.focused()).as("the keys stay").isEqualTo("also-all");
        assertThat(tick(robot, "#also-10").isSelected()).isTrue();
        keys.press(KeyCode.TAB);
        assertThat(keys.focused()).as("the ticks are one stop").isEqualTo("here-level");
        robot.interact(() -> robot.lookup("#amount").query().requestFocus());
        keys.fill("2.4 cm");
        until(d -> d.shownTrial().isPresent());
        assertThat(robot.lookup("#outcome").queryLabeled().getText()).contains("The same in each of these sizes.");
        assertThat(robot.lookup("#ease-hip .classes").queryAllAs(Labeled.class))
                .extracting(Labeled::getText)
                .as(
                        "the word with its number and the other sizes find no room together: the other sizes stand in the row")
                .satisfies(said ->
                        assertThat(said.get(said.size() - 1)).endsWith("Ease in sizes 10 and 14: 7.4\u00a0cm."));
        EaseRow hip = EasePage.of(desk()).rows().stream()
                .filter(row -> row.name().equals("hip"))
                .findFirst()
                .orElseThrow();
        assertThat(hip.told(desk().words()))
                .as("and the word stands below")
                .anyMatch(line -> line.startsWith("7.4\u00a0cm is \u201c"));
        robot.interact(() -> tick(robot, "#also-14").fire());
        assertThat(desk().shownTrial().orElseThrow().sizes()).containsExactly("10", "12");
        assertThat(tick(robot, "#also-all").isSelected()).isFalse();
        keys.press(KeyCode.ENTER);
        until(d -> d.pattern().changes().size() == 2);
        assertThat(robot.lookup("#outcome").queryLabeled().getText()).startsWith("Kept in sizes 10 and 12: hip");

        keys.press(KeyCode.ALT, KeyCode.DIGIT5);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup(".change-words").queryAllAs(Labeled.class))
                .extracting(Labeled::getText)
                .singleElement()
                .asString()
                .startsWith("In sizes 10 and 12: hip: +2.4");
        keys.tabTo("change-amount-0").fill("-70 cm");
        untilMade();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#change-0 .complaint").queryAllAs(Labeled.class))
                .anyMatch(l -> l.getText().contains("In size 10: "));
        keys.fill("3 cm");
        until(d -> Course.of(d).lines().get(0).amount().equals("+3\u00a0cm"));
        assertThat(desk().pattern().changes()).hasSize(2);
        keys.press(KeyCode.SHORTCUT, KeyCode.Z).press(KeyCode.SHORTCUT, KeyCode.Z);
        until(d -> d.pattern().changes().isEmpty());
    }

    @Test
    void aProposalIsTakenForTheSizesThatAreTicked(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.files().open(Path.of("sample-pieces/skirt-sizes.svg")));
        until(d -> d.size().isPresent());
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAlsoIn(Set.of("14"))));
        robot.clickOn("#ask-where").clickOn("#feels-pulls").clickOn("#sign-seat");
        robot.interact(() -> robot.lookup("#where-take").queryButton().fire());
        until(d -> d.wanted().flatMap(w -> w.other()).isPresent());
        assertThat(desk().wanted().orElseThrow().alsoIn()).containsExactly("14");
    }

    /** Of a sheet of sizes little is seen: the size that is pressed fills the view, also when it is at work already. */
    @Test
    void aSizeThatIsPressedFillsTheView(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().open(Path.of("sample-pieces/skirt-sizes.svg")));
        until(d -> d.size().isPresent());
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        double all = table.view().scale();
        for (String size : List.of("10", "14")) {
            robot.clickOn(robot.lookup("#size-choice .chip")
                    .match(chip -> ((Labeled) chip).getText().equals(size))
                    .<Node>query());
            WaitForAsyncUtils.waitForFxEvents();
            assertThat(desk().size()).hasValue(size);
            assertThat(table.view().scale()).isGreaterThan(1.5 * all);
            assertThat(desk().pattern().pieces())
                    .filteredOn(p -> p.size().equals(Optional.of(size)))
                    .isNotEmpty()
                    .allSatisfy(
                            p -> assertThat(isInView(table, p.outline().box())).isTrue());
        }
        robot.interact(table::fit);
        assertThat(table.view().scale()).isEqualTo(all);
    }

    private static boolean isInView(CuttingTable table, Box box) {
        Point least = table.view().toScreen(new Point(box.minX(), box.minY()));
        Point most = table.view().toScreen(new Point(box.maxX(), box.maxY()));
        return least.x() > 0 && least.y() > 0 && most.x() < table.getWidth() && most.y() < table.getHeight();
    }
}
