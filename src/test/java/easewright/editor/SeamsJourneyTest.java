package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Sewing edges together in the window: what is made is seen, and the keys stay where one works. */
class SeamsJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static Point middle(Pattern pattern, String piece, String edge) {
        Piece on = pattern.piece(piece).orElseThrow();
        Edge found = on.edge(edge).orElseThrow();
        var run = found.on(on.outline());
        return run.pointAtLength(run.length() / 2);
    }

    private Node lastCard(FxRobot robot) {
        List<Node> cards = List.copyOf(robot.lookup(".seam-card").queryAll());
        return cards.get(cards.size() - 1);
    }

    @Test
    void aSeamThatWasSewnIsSeenAndKeepsTheKeys(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> stage.setHeight(620));
        robot.clickOn("#page-marks").clickOn("#step-seams").clickOn("#tool-sew");
        int before = desk().pattern().mates().size();
        robot.clickOn(onScreen(robot, middle(desk().pattern(), "Front", "hem")))
                .clickOn(onScreen(robot, middle(desk().pattern(), "Back", "hem")));
        until(d -> d.pattern().mates().size() == before + 1);
        WaitForAsyncUtils.waitForFxEvents();
        Node card = lastCard(robot);
        Node page = card;
        while (!(page instanceof ScrollPane)) {
            page = page.getParent();
        }
        Bounds seen = page.localToScene(page.getLayoutBounds());
        Bounds made = card.localToScene(card.getLayoutBounds());
        assertThat(made.getMinY()).isGreaterThanOrEqualTo(seen.getMinY());
        assertThat(made.getMaxY()).isLessThanOrEqualTo(seen.getMaxY() + 1);

        MenuButton chip = robot.from(card).lookup(".chip").queryAs(MenuButton.class);
        robot.interact(() -> {
            chip.requestFocus();
            chip.getItems().get(1).fire();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(desk().pattern().mates().get(before).first().get(0).times()).isEqualTo(2);
        assertThat(stage.getScene().getFocusOwner())
                .isNotInstanceOf(TextInputControl.class)
                .isInstanceOfSatisfying(
                        MenuButton.class, now -> assertThat(now.getText()).contains("hem"));
        robot.write("x").push(KeyCode.ESCAPE);
        assertThat(desk().pattern().mates().get(before).name()).isEqualTo("hem");
    }

    /** However wide the sheet, the sign for one more edge stands beside the last one. */
    @Test
    void theSignForOneMoreEdgeNeverStandsAlone(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-marks").clickOn("#step-seams");
        WaitForAsyncUtils.waitForFxEvents();
        int seen = 0;
        for (FlowPane side : robot.lookup(n -> n instanceof FlowPane pane
                        && !pane.lookupAll(".chip").isEmpty()
                        && !pane.lookupAll(".dots").isEmpty()
                        && isInSeamCard(pane))
                .queryAllAs(FlowPane.class)) {
            for (double wide = 180; wide < 340; wide += 5) {
                double width = wide;
                robot.interact(() -> {
                    side.setMaxWidth(width);
                    side.getScene().getRoot().layout();
                });
                double more = middle(side.lookup(".dots"));
                assertThat(side.lookupAll(".chip"))
                        .as("at %s", wide)
                        .anyMatch(chip -> Math.abs(middle(chip) - more) < 2);
                seen++;
            }
        }
        assertThat(seen).isPositive();
    }

    private static boolean isInSeamCard(Node node) {
        Node at = node;
        while (at != null && !at.getStyleClass().contains("seam-card")) {
            at = at.getParent();
        }
        return at != null;
    }

    private static double middle(Node node) {
        return node.localToScene(node.getLayoutBounds()).getCenterY();
    }

    /** A level that was added lies under the others in the list, and is seen at once, to be placed. */
    @Test
    void aLevelThatWasAddedIsSeenWhole(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> stage.setHeight(620));
        robot.clickOn("#page-marks").clickOn("#step-levels");
        int before = desk().pattern().levels().size();
        write(robot, "#level-own", "knee");
        until(d -> d.pattern().levels().size() == before + 1);
        WaitForAsyncUtils.waitForFxEvents();
        Node place = robot.lookup("#level-place-knee").query();
        Node card = place.getParent().getParent();
        assertThat(isWhollySeen(card)).isTrue();
        assertThat(isWhollySeen(
                        robot.lookup("#level-place-waist").query().getParent().getParent()))
                .as("there is not room for all cards, so it was scrolled to")
                .isFalse();
    }

    private static boolean isWhollySeen(Node node) {
        Node around = node;
        while (!(around instanceof ScrollPane)) {
            around = around.getParent();
        }
        ScrollPane pane = (ScrollPane) around;
        Bounds seen = pane.localToScene(pane.getLayoutBounds());
        return seen.contains(node.localToScene(node.getLayoutBounds()));
    }
}
