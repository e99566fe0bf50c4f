package easewright.editor.panel;

import easewright.editor.model.Picking;
import easewright.editor.model.Session;
import easewright.editor.model.WayPlaces;
import easewright.editor.paint.Ink;
import easewright.editor.paint.PlacePainter;
import easewright.editor.paint.Viewport;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** The hand that shows a place on the table when a form asks for one. */
final class PlaceHand {
    /** A click this near to a line means a place on it, pixels. */
    private static final double NEAR = 12;

    private final Session session;
    private Optional<Point> over = Optional.empty();

    PlaceHand(Session session) {
        this.session = session;
    }

    boolean isAsked() {
        return session.picking().isAsking();
    }

    /** Answers with the place that a press means; whether it was asked for. */
    boolean pressed(MouseEvent e, Viewport view) {
        if (!isAsked() || e.getButton() != MouseButton.PRIMARY) {
            return false;
        }
        over = Optional.empty();
        session.picking().give(meant(e, view));
        return true;
    }

    /** Follows the pointer while a place is asked for; whether that is to be seen. */
    boolean moved(MouseEvent e, Viewport view) {
        Optional<Point> before = over;
        over = isAsked() ? Optional.of(meant(e, view)) : Optional.empty();
        return !before.equals(over);
    }

    private Point meant(MouseEvent e, Viewport view) {
        return WayPlaces.meant(session.desk().pattern(), view.toTable(e.getX(), e.getY()), NEAR / view.scale());
    }

    /** Asks no more; whether anything had been asked. */
    boolean letGo() {
        boolean asked = isAsked();
        session.picking().stop();
        over = Optional.empty();
        return asked;
    }

    /** Draws the places chosen so far, and the one under the pointer. */
    void paint(GraphicsContext gc, Viewport view, Ink ink) {
        for (Line cut : WayPlaces.cuts(session.desk())) {
            PlacePainter.cut(gc, view, ink, cut);
        }
        for (WayPlaces.Chosen place : WayPlaces.of(session.desk())) {
            PlacePainter.paint(gc, view, ink, place.at(), place.label());
        }
        String what =
                session.picking().askProperty().get().map(Picking.Ask::what).orElse("");
        over.ifPresent(p -> PlacePainter.paint(gc, view, ink, p, what));
    }
}
