package easewright.editor;

import easewright.editor.model.Desk;
import easewright.editor.model.Hold;
import easewright.editor.model.Pulling;
import easewright.editor.model.Session;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import java.util.List;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** A mouse that takes hold of a seam at the level at work and pulls it, freely, to any amount. */
final class BenchHand {
    private final CuttingTable table;
    private final Point grip;
    /** For one millimetre of the girth, pixels. */
    private final Point step;

    BenchHand(Session session, CuttingTable table) {
        this.table = table;
        Desk desk = session.desk();
        List<Hold> holds = desk.takingHolds();
        Hold hold = holds.get(0);
        grip = table.holdsOnScreen().get(0);
        Pulling pulling = Pulling.begin(hold, holds, desk.wanted().orElseThrow(), hold.at());
        step = pulling.outward().times(table.view().scale() / pulling.sewn());
        send(MouseEvent.MOUSE_PRESSED, grip);
    }

    /**
     * @param amount by which the girth is to grow, mm
     */
    void pullTo(double amount) {
        send(MouseEvent.MOUSE_DRAGGED, grip.plus(step.times(amount)));
    }

    private void send(EventType<MouseEvent> type, Point pixel) {
        Point2D scene = table.localToScene(pixel.x(), pixel.y());
        Point2D screen = table.localToScreen(pixel.x(), pixel.y());
        table.fireEvent(new MouseEvent(
                type,
                scene.getX(),
                scene.getY(),
                screen.getX(),
                screen.getY(),
                MouseButton.PRIMARY,
                1,
                false,
                false,
                true,
                false,
                true,
                false,
                false,
                false,
                false,
                false,
                null));
    }
}
