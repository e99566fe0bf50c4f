package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Ways;
import easewright.editor.model.OtherWay;
import easewright.editor.paint.Viewport;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** The pointer tells what can be taken hold of on the table. */
class PointerJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private Cursor over(FxRobot robot, double x, double y) {
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point2D at = table.localToScene(x, y);
        robot.interact(() -> table.fireEvent(new MouseEvent(
                MouseEvent.MOUSE_MOVED,
                at.getX(),
                at.getY(),
                at.getX(),
                at.getY(),
                MouseButton.NONE,
                0,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                true,
                false,
                true,
                null)));
        return table.getCursor();
    }

    /** The middle of a level on the first piece, pixels of the table. */
    private Point level(FxRobot robot, String name) {
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Line span = desk().reading().measures().girths().stream()
                .filter(g -> g.level().name().equals(name))
                .map(g -> g.parts().get(0).spans().get(0))
                .map(s -> new Line(s.from(), s.to()))
                .findFirst()
                .orElseThrow();
        return table.view().toScreen(span.at(0.1));
    }

    @Test
    void itsFormSaysWhatAClickOrAPullWouldDo(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session().chooseLevel("hip"));
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point hold = table.holdsOnScreen().get(0);
        assertThat(over(robot, 3, 3)).as("the table is pushed").isEqualTo(Cursor.OPEN_HAND);
        for (double off : new double[] {-12, 0, 12}) {
            assertThat(over(robot, hold.x() + off, hold.y()))
                    .as("a seam is pulled, within 24 pixels")
                    .isEqualTo(Cursor.H_RESIZE);
            assertThat(over(robot, hold.x(), hold.y() + off)).isEqualTo(Cursor.H_RESIZE);
        }
        Point waist = level(robot, "waist");
        assertThat(over(robot, waist.x(), waist.y())).as("a level is chosen").isEqualTo(Cursor.HAND);
        robot.clickOn("#page-marks").clickOn("#step-levels");
        Point hip = level(robot, "hip");
        assertThat(over(robot, hip.x(), hip.y())).as("a level is moved").isEqualTo(Cursor.V_RESIZE);
        robot.clickOn("#step-pieces");
        assertThat(over(robot, hip.x(), hip.y() + 30)).as("a piece is chosen").isEqualTo(Cursor.HAND);
    }

    @Test
    void aPlaceIsNoLongerAskedForWhereTheWayThatWantsItIsLeft(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session()
                .want(desk().wanted().orElseThrow().withOther(Ways.of("slash").map(OtherWay::of))));
        robot.clickOn("#pick-slash");
        assertThat(app.session().picking().isAsking()).isTrue();
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withOther(Optional.empty())));
        assertThat(app.session().picking().isAsking()).isFalse();
    }

    /** While a slash is asked for, the foot of the table, the button and the pointer say so, end after end. */
    @Test
    void aSlashIsAskedForInWords(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session()
                .want(desk().wanted().orElseThrow().withOther(Ways.of("slash").map(OtherWay::of))));
        assertThat(robot.lookup("#hint-bar").query().isVisible()).isFalse();
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Viewport before = table.view();
        for (boolean byEscape : new boolean[] {true, false}) {
            robot.clickOn("#pick-slash");
            assertThat(inScene(robot.lookup("#hint-bar").query()).getMinY())
                    .as("below the pieces, as they lie")
                    .isGreaterThan(inScene(table).getMaxY() - 60);
            assertThat(inScene(robot.lookup("#hint-bar .label").query()).getCenterY())
                    .as("as high as its button")
                    .isCloseTo(inScene(robot.lookup("#tool-stop").query()).getCenterY(), within(1.0));
            assertThat(table.view()).isEqualTo(before);
            assertThat(asked(robot)).isEqualTo("Click where the slash begins: it opens there.");
            assertThat(robot.lookup("#pick-slash").query().getStyleClass()).contains("asking");
            assertThat(robot.lookup("#table").query().getCursor()).isEqualTo(Cursor.CROSSHAIR);
            robot.interact(() -> app.session().picking().give(new Point(180, 729)));
            assertThat(asked(robot)).isEqualTo("Now click where the slash ends.");
            assertThat(robot.lookup("#pick-slash").query().getStyleClass()).containsOnlyOnce("asking");
            if (byEscape) {
                robot.push(KeyCode.ESCAPE);
            } else {
                robot.clickOn("#tool-stop");
            }
            assertThat(app.session().picking().isAsking()).isFalse();
            assertThat(robot.lookup("#hint-bar").query().isVisible()).isFalse();
            assertThat(robot.lookup("#pick-slash").query().getStyleClass()).doesNotContain("asking");
        }
        robot.clickOn("#pick-slash");
        robot.interact(() -> app.session().picking().give(new Point(180, 729)));
        robot.interact(() -> app.session().picking().give(new Point(180, 130)));
        assertThat(robot.lookup("#hint-bar").query().isVisible()).isFalse();
        assertThat(desk().wanted().orElseThrow().other().orElseThrow().texts("slash"))
                .hasSize(1);
    }

    private static Bounds inScene(Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    private static String asked(FxRobot robot) {
        return robot.from(robot.lookup("#hint-bar"))
                .lookup(".label")
                .queryAs(Label.class)
                .getText();
    }
}
