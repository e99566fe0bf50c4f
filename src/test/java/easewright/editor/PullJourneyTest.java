package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.TableScenes;
import easewright.editor.model.Wanted;
import easewright.editor.paint.TableScene;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.event.EventType;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** What is worked out while a seam is pulled, and how often. */
class PullJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static void fire(CuttingTable table, EventType<MouseEvent> type, double x, double y) {
        boolean down = type != MouseEvent.MOUSE_RELEASED;
        var at = table.localToScene(x, y);
        table.fireEvent(new MouseEvent(
                type,
                at.getX(),
                at.getY(),
                at.getX(),
                at.getY(),
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                down,
                false,
                false,
                true,
                false,
                false,
                null));
    }

    /** The amount that the place on the screen stands for, to half a centimetre: one pixel is some millimetres. */
    private double amountAt(Point hold, double dx, double scale) {
        var holds = desk().holds();
        double outward = holds.get(0).outward().x();
        int sewn = easewright.editor.model.Hold.sewn(holds);
        assertThat(sewn / scale).isBetween(1.0, 5.0);
        return Math.round(dx / scale * outward * sewn / 5) * 5;
    }

    @Test
    void aHandIsFollowedOncePerPictureAndToItsVeryEnd(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        // So near that a pixel of the hand is less than the half centimetre that a pull goes by.
        robot.interact(() -> table.zoom(1.3));
        Point hold = table.holdsOnScreen().get(0);
        double expected = amountAt(hold, 30, table.view().scale());
        AtomicInteger changes = new AtomicInteger();
        robot.interact(() -> {
            app.session().deskProperty().addListener((o, before, now) -> changes.incrementAndGet());
            fire(table, MouseEvent.MOUSE_PRESSED, hold.x(), hold.y());
            for (int i = 1; i <= 40; i++) {
                fire(table, MouseEvent.MOUSE_DRAGGED, hold.x() + i, hold.y());
            }
            assertThat(changes).as("before the next picture").hasValue(0);
        });
        until(d -> d.trial().isPresent());
        assertThat(changes).hasValue(1);
        robot.interact(() -> {
            for (int i = 40; i >= 30; i--) {
                fire(table, MouseEvent.MOUSE_DRAGGED, hold.x() + i, hold.y());
            }
            fire(table, MouseEvent.MOUSE_RELEASED, hold.x() + 30, hold.y());
            assertThat(changes).as("let go").hasValue(2);
        });
        double amount = desk().wanted().map(Wanted::amount).orElseThrow();
        assertThat(amount).isEqualTo(expected);
        assertThat(desk().shownTrial().orElseThrow().wanted().amount()).isEqualTo(amount);
    }

    /** No reader could say one amount in every picture. */
    @Test
    void whatAPullCameToIsHeardWhenTheHandLetsGo(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        CuttingTable table = robot.lookup("#table").queryAs(CuttingTable.class);
        Point hold = table.holdsOnScreen().get(0);
        robot.interact(() -> fire(table, MouseEvent.MOUSE_PRESSED, hold.x(), hold.y()));
        String held = table.getAccessibleText();
        robot.interact(() -> fire(table, MouseEvent.MOUSE_DRAGGED, hold.x() + 25, hold.y()));
        until(d -> d.trial().isPresent());
        assertThat(table.getAccessibleText()).isEqualTo(held);
        robot.interact(() -> fire(table, MouseEvent.MOUSE_RELEASED, hold.x() + 25, hold.y()));
        String outcome = robot.lookup("#outcome").queryAs(Label.class).getText();
        assertThat(table.getAccessibleText()).isNotEqualTo(held).contains(outcome);
    }

    @Test
    void marksThatAreNotLookedAtWait(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-marks");
        robot.clickOn("#page-ease");
        robot.interact(() -> app.session().edit(desk().pattern().withMates(List.of())));
        ToggleButton seams = robot.lookup("#step-seams").queryAs(ToggleButton.class);
        assertThat(seams.getText()).startsWith("\u2713");
        robot.clickOn("#page-marks");
        assertThat(seams.getText()).doesNotStartWith("\u2713");
    }

    /** A piece of which nothing new is to be seen keeps its picture. */
    @Test
    void picturesOfPiecesThatDidNotChangeAreKept(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        TableScenes scenes = new TableScenes();
        List<TableScene.PieceSight> still = scenes.of(desk()).pieces();
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAmount(12)));
        List<TableScene.PieceSight> pulled = scenes.of(desk()).pieces();
        int kept = 0;
        for (int i = 0; i < still.size(); i++) {
            boolean same = desk().shown().pieces().get(i) == still.get(i).piece();
            assertThat(pulled.get(i) == still.get(i)).isEqualTo(same);
            kept += same ? 1 : 0;
        }
        assertThat(kept).isBetween(1, still.size() - 1);
        robot.interact(() -> app.session().leave());
        assertThat(scenes.of(desk()).pieces()).isEqualTo(still);
    }
}
