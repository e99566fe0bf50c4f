package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What stands on the sheet keeps its place while something is tried, and what belongs together stands together. */
class SheetStandsStillJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static Bounds at(Node node) {
        return node.localToScene(node.getBoundsInLocal());
    }

    private static void settle(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> robot.window(0).getScene().getRoot().layout());
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The bar of the page has its room whether it is needed or not. */
    @Test
    void noColumnMovesWhenTheBarComes(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        Set<Boolean> seen = new TreeSet<>();
        Set<Long> widths = new TreeSet<>();
        robot.interact(() -> stage.setHeight(600));
        for (String page : List.of("#page-changes", "#page-ease")) {
            robot.clickOn(page);
            settle(robot);
            ScrollPane sheet = robot.lookup(
                            n -> n instanceof ScrollPane && n.getStyleClass().contains("sheet-page") && isShown(n))
                    .queryAs(ScrollPane.class);
            ScrollBar bar = sheet.getChildrenUnmodifiable().stream()
                    .filter(ScrollBar.class::isInstance)
                    .map(ScrollBar.class::cast)
                    .filter(b -> b.getOrientation() == Orientation.VERTICAL)
                    .findFirst()
                    .orElseThrow();
            seen.add(bar.getOpacity() > 0);
            widths.add(Math.round(sheet.getViewportBounds().getWidth()));
        }
        assertThat(seen).as("needed on one of the pages alone").containsExactly(false, true);
        assertThat(widths).hasSize(1);
    }

    /** What would bring a wish about waits while another amount is tried, in its place. */
    @Test
    void whatIsMissingElsewhereStaysInItsPlace(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#wish-hip", "8 cm");
        robot.clickOn("#ease-waist .level-name");
        settle(robot);
        Button give = robot.lookup("#give-hip").queryButton();
        Bounds before = at(give);
        assertThat(isShown(give)).isTrue();
        assertThat(give.isDisabled()).isFalse();

        write(robot, "#amount", "1 cm");
        until(d -> d.shownTrial().isPresent());
        settle(robot);
        assertThat(isShown(give)).as("it stays").isTrue();
        assertThat(at(give).getMinX()).isCloseTo(before.getMinX(), within(0.5));
        assertThat(give.isDisabled()).as("one thing is tried at a time").isTrue();
        assertThat(give.getAccessibleHelp()).contains("keep it or take it back");

        robot.clickOn("#leave");
        until(d -> d.trial().isEmpty());
        assertThat(give.isDisabled()).isFalse();
        robot.clickOn(give);
        until(d -> d.shownTrial().isPresent());
        assertThat(give.isVisible()).as("what it offers is tried").isFalse();
    }

    /** The room that is kept for what comes of an amount says so, and is no higher or lower then. */
    @Test
    void theRoomForWhatComesIsNotEmpty(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        settle(robot);
        Node promise = robot.lookup("#here-promise").query();
        Node here = robot.lookup("#here").query();
        double high = at(here).getHeight();
        assertThat(isShown(promise)).isTrue();
        assertThat(promise.lookupAll(".effect-words"))
                .hasSize(3)
                .allSatisfy(l -> assertThat(((Labeled) l).getText()).isNotEmpty());

        write(robot, "#amount", "3 cm");
        until(d -> d.shownTrial().isPresent());
        settle(robot);
        assertThat(promise.isVisible()).isFalse();
        assertThat(at(here).getHeight()).isCloseTo(high, within(0.5));
        robot.clickOn("#leave");
        until(d -> d.trial().isEmpty());
        settle(robot);
        assertThat(isShown(promise)).isTrue();
        assertThat(at(here).getHeight()).isCloseTo(high, within(0.5));
    }

    @Test
    void whatIsTickedStandsBelowWhatIsChosen(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        openHow(robot);
        settle(robot);
        double chosen = robot.lookup("#here-settings .chip").queryAll().stream()
                .mapToDouble(n -> at(n).getMinX())
                .min()
                .orElseThrow();
        assertThat(at(robot.lookup("#carry").query()).getMinX()).isCloseTo(chosen, within(1.0));
    }

    /** However wide the sheet, what is done with a row stands beside it. */
    @Test
    void rowsStayTogetherOnAWideSheet(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> stage.setWidth(1900));
        robot.clickOn("#page-marks").clickOn("#step-pieces");
        settle(robot);
        settle(robot);
        List<Node> rows = List.copyOf(robot.lookup(".mark-row").queryAll());
        assertThat(rows).hasSizeGreaterThan(4);
        for (Node row : rows) {
            Node last = row.lookupAll(".button").stream()
                    .filter(b -> b.getStyleClass().contains("cross"))
                    .findFirst()
                    .orElseGet(() -> row.lookup(".dots"));
            double end = at(last).getMinX();
            double before = row.lookupAll("*").stream()
                    .filter(n -> n != last
                            && (n instanceof Labeled || n.getStyleClass().contains("text-field")))
                    .filter(n -> isShown(n) && at(n).getWidth() > 0 && !isWithin(n, last))
                    .mapToDouble(n -> at(n).getMaxX())
                    .max()
                    .orElseThrow();
            assertThat(end - before).as("%s", row).isLessThan(70);
        }
    }

    /** In the narrowest sheet, with the bar of a page that is longer than the window. */
    @Test
    void whereANotchLiesIsReadWhole(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-marks").clickOn("#step-pieces");
        settle(robot);
        List<Node> lengths = robot.lookup("#notch-0-0").queryAll().stream().toList();
        assertThat(lengths).hasSize(1);
        Parent row = lengths.get(0).getParent();
        assertThat(row.lookupAll(".label"))
                .hasSize(2)
                .allSatisfy(
                        l -> assertThat(((Text) l.lookup(".text")).getText()).isEqualTo(((Labeled) l).getText()));
        List<Double> places =
                robot.lookup(n -> n.getId() != null && n.getId().matches("notch-[0-9]+-0")).queryAll().stream()
                        .map(n -> at(n).getMinX())
                        .toList();
        assertThat(places).allSatisfy(x -> assertThat(x).isCloseTo(places.get(0), within(0.6)));
    }

    private static boolean isWithin(Node part, Node whole) {
        return part != null && (part == whole || isWithin(part.getParent(), whole));
    }
}
