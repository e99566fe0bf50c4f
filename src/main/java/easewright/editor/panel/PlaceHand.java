package easewright.editor.panel;

import easewright.editor.model.Picking;
import easewright.editor.model.Session;
import easewright.editor.model.WayPlaces;
import easewright.editor.paint.Ink;
import easewright.editor.paint.LabelRoom;
import easewright.editor.paint.PlacePainter;
import easewright.editor.paint.Viewport;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** The hand that shows a place on the table when a form asks for one, with mouse or keyboard. */
final class PlaceHand {
    /** A click this near to a line means a place on it, pixels. */
    private static final double NEAR = 12;

    private final Session session;
    private Optional<Point> over = Optional.empty();
    /** Where among the certain places the keys are. */
    private int gone = -1;

    PlaceHand(Session session) {
        this.session = session;
        // However the question ends, nothing is pointed at for it any more.
        session.picking().askProperty().addListener(o -> over = Optional.empty());
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

    /** Whether the key was for the place that is asked for. */
    boolean key(KeyEvent e) {
        if (!isAsked() || e.isShortcutDown() || e.isAltDown()) {
            return false;
        }
        double step = TableKeys.step(session.desk().unit(), e.isShiftDown());
        switch (e.getCode()) {
            case N -> next(e.isShiftDown() ? -1 : 1);
            case P -> nextPiece(e.isShiftDown() ? -1 : 1);
            case ENTER, SPACE -> {
                Optional<Point> here = over;
                over = Optional.empty();
                here.ifPresent(session.picking()::give);
            }
            case LEFT -> nudge(-step, 0, step);
            case RIGHT -> nudge(step, 0, step);
            case UP -> nudge(0, -step, step);
            case DOWN -> nudge(0, step, step);
            default -> {
                return false;
            }
        }
        e.consume();
        return true;
    }

    private void next(int by) {
        List<Point> places = WayPlaces.certain(session.desk().pattern());
        if (!places.isEmpty()) {
            gone = Math.floorMod(gone < 0 && by < 0 ? by : gone + by, places.size());
            over = Optional.of(places.get(gone));
        }
    }

    /** To the first certain place of the next piece, or of the one before. */
    private void nextPiece(int by) {
        List<Integer> firsts = WayPlaces.firstOfPieces(session.desk().pattern());
        if (!firsts.isEmpty()) {
            int piece = (int) firsts.stream().filter(f -> f <= gone).count() - 1;
            gone = firsts.get(TableKeys.next(piece, by, firsts.size()));
            over = Optional.of(WayPlaces.certain(session.desk().pattern()).get(gone));
        }
    }

    /** A step that goes more along a line than away from it stays on the line, mm. */
    private void nudge(double dx, double dy, double step) {
        over = over.map(p -> WayPlaces.meant(session.desk().pattern(), p.plus(new Point(dx, dy)), 0.75 * step));
    }

    /** What is asked for, in words, while there is a question. */
    Optional<String> asks() {
        return asked().map(a -> CuttingTableWords.asked(session.desk(), a));
    }

    /** Where the hand is, in words. */
    Optional<String> place() {
        return over.map(p -> WayPlaces.text(session.desk(), p));
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

    /** The cuts chosen so far, and the one that is being drawn, as far as the pointer. */
    List<Line> cuts() {
        List<Line> cuts = new ArrayList<>(WayPlaces.cuts(session.desk()));
        asked().flatMap(Picking.Ask::from)
                .flatMap(from -> over.filter(to -> !to.equals(from)).map(to -> new Line(from, to)))
                .ifPresent(cuts::add);
        return cuts;
    }

    /**
     * Draws the places chosen so far, and the one under the pointer.
     *
     * @param room that words on the table have left
     */
    void paint(GraphicsContext gc, Viewport view, Ink ink, LabelRoom room) {
        LabelRoom free = room.above();
        for (WayPlaces.Chosen place : WayPlaces.of(session.desk())) {
            PlacePainter.paint(gc, view, ink, place.at(), place.label(), free);
        }
        asked().flatMap(Picking.Ask::from).ifPresent(from -> PlacePainter.paint(gc, view, ink, from, "", free));
        String what =
                asked().map(a -> CuttingTableWords.askedHere(session.desk(), a)).orElse("");
        over.ifPresent(p -> PlacePainter.paint(gc, view, ink, p, what, free));
    }

    private Optional<Picking.Ask> asked() {
        return session.picking().askProperty().get();
    }
}
