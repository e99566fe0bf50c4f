package easewright.editor.panel;

import easewright.editor.model.Hold;
import easewright.editor.model.Session;
import easewright.editor.paint.TableScene;
import easewright.geom.Curve;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/**
 * The table by mouse: what lies under the pointer and which hand takes hold of it. A place that is asked for comes first,
 * then marks, then seams and levels; what nobody wants pushes the table about.
 */
final class TableMouse {
    private static final double NEAR_LEVEL = 10;

    private final CuttingTable table;
    private final Session session;
    private final SeamPull pull;
    private final PlaceHand places;
    private Point panFrom;

    TableMouse(CuttingTable table, Session session, PlaceHand places) {
        this.table = table;
        this.session = session;
        this.places = places;
        this.pull = new SeamPull(session);
        table.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        table.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        table.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        table.addEventHandler(MouseEvent.MOUSE_MOVED, this::hovered);
        table.addEventHandler(MouseEvent.MOUSE_EXITED, e -> {
            table.light(Optional.empty());
            table.pointer(Optional.empty());
        });
        table.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
    }

    boolean isPulling() {
        return pull.isPulling();
    }

    /** Lets go of a seam that is being pulled. */
    void letGo() {
        pull.drop();
    }

    private Optional<MarkHand> hand() {
        return table.hand();
    }

    /** The hold under the pointer, or −1. */
    private int holdAt(double x, double y) {
        return table.isMarking() ? -1 : table.holds().at(new Point(x, y), table.view());
    }

    /** The level whose measuring line, or else whose name, lies under the pointer. */
    private Optional<String> levelAt(double x, double y) {
        Point at = table.view().toTable(x, y);
        for (TableScene.PieceSight piece : table.scene().pieces()) {
            for (TableScene.LevelSight level : piece.levels()) {
                for (Curve run : level.runs()) {
                    if (run.nearest(at).distance() * table.view().scale() < NEAR_LEVEL) {
                        return Optional.of(level.level());
                    }
                }
            }
        }
        return table.levelNamedAt(x, y);
    }

    private void pressed(MouseEvent e) {
        table.requestFocus();
        if (places.pressed(e, table.view())) {
            return;
        }
        if (hand().map(h -> h.pressed(e, table.view())).orElse(false)) {
            return;
        }
        int hold = e.getButton() == MouseButton.PRIMARY ? holdAt(e.getX(), e.getY()) : -1;
        if (hold >= 0) {
            table.holds().point(hold);
            List<Hold> holds = table.holds().all();
            pull.begin(holds.get(hold), holds, table.view().toTable(e.getX(), e.getY()));
            return;
        }
        Optional<String> level = levelAt(e.getX(), e.getY());
        if (e.getButton() == MouseButton.PRIMARY && level.isPresent()) {
            session.chooseLevel(level.get());
            return;
        }
        panFrom = new Point(e.getX(), e.getY());
        table.setCursor(Cursor.CLOSED_HAND);
    }

    private void dragged(MouseEvent e) {
        if (hand().map(h -> h.dragged(e, table.view())).orElse(false)) {
            return;
        }
        if (pull.isPulling()) {
            pull.to(table.view().toTable(e.getX(), e.getY()), 1 / table.view().scale(), e.isAltDown());
        } else if (panFrom != null) {
            table.moveView(e.getX() - panFrom.x(), e.getY() - panFrom.y());
            panFrom = new Point(e.getX(), e.getY());
        }
    }

    private void released(MouseEvent e) {
        hand().ifPresent(MarkHand::released);
        pull.end();
        table.letLie();
        panFrom = null;
        hovered(e);
    }

    private void hovered(MouseEvent e) {
        table.pointer(Optional.of(new Point(e.getX(), e.getY())));
        Optional<Cursor> marking = hand().flatMap(h -> h.hovered(e, table.view()));
        if (marking.isPresent()) {
            table.setCursor(marking.get());
            return;
        }
        if (places.moved(e, table.view())) {
            table.repaint();
        }
        if (places.isAsked()) {
            table.setCursor(Cursor.CROSSHAIR);
            return;
        }
        int over = holdAt(e.getX(), e.getY());
        Optional<String> level = over < 0 && !table.isMarking() ? levelAt(e.getX(), e.getY()) : Optional.empty();
        table.light(level);
        if (over >= 0) {
            Point way = table.holds().all().get(over).outward();
            table.setCursor(Math.abs(way.x()) >= Math.abs(way.y()) ? Cursor.H_RESIZE : Cursor.V_RESIZE);
        } else {
            table.setCursor(level.isPresent() ? Cursor.HAND : Cursor.OPEN_HAND);
        }
        if (over >= 0 || !table.isFocused()) {
            table.holds().point(over);
        }
    }

    private void scrolled(ScrollEvent e) {
        if (e.getDeltaY() != 0) {
            table.zoomAt(Math.pow(1.0018, e.getDeltaY()), e.getX(), e.getY());
        }
        e.consume();
    }
}
