package easewright.editor.panel;

import easewright.editor.paint.Viewport;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.Optional;

/** Which part of the table is in the view: all of it, however the window changes, until the user looks elsewhere. */
final class TableOutlook {
    /** Left free round what is all in view, pixels. */
    private static final double MARGIN = 53;

    /** More is left free below it: the buttons of the view and messages lie there. */
    private static final double FOOT = 6;

    private Viewport view = new Viewport(1, 0, 0);
    private double width;
    private double height;
    private boolean showingAll = true;

    Viewport view() {
        return view;
    }

    boolean showsAll() {
        return showingAll;
    }

    /** The view has another size, pixels. */
    void resize(double newWidth, double newHeight) {
        width = newWidth;
        height = newHeight;
    }

    /** Shows all of what there is, if there is anything and room for it. */
    void fit(Optional<Box> all) {
        if (all.isPresent() && width > 2 * MARGIN && height > 2 * MARGIN) {
            view = Viewport.fitting(all.get(), width, height - FOOT, MARGIN);
        }
        showingAll = true;
    }

    /** Nearer or farther about the middle of the view. */
    void zoom(double factor) {
        zoomAt(factor, width / 2, height / 2);
    }

    /** Nearer or farther about a place of the view, pixels. */
    void zoomAt(double factor, double x, double y) {
        look(view.zoomedAt(factor, x, y));
    }

    /** By so many pixels. */
    void move(double dx, double dy) {
        look(view.movedBy(dx, dy));
    }

    /** Brings a place into the middle, as near as it is. */
    void centre(Point place) {
        look(view.withAt(place, width / 2, height / 2));
    }

    /** Fills the view with a part of the table, mm, if there is a view. */
    void fill(Box part) {
        if (width > 0 && height > 0) {
            look(Viewport.fitting(part, width, height, 0));
        }
    }

    private void look(Viewport elsewhere) {
        view = elsewhere;
        showingAll = false;
    }

    boolean holds(Point place) {
        Point at = view.toScreen(place);
        return at.x() > 0 && at.y() > 0 && at.x() < width && at.y() < height;
    }

    /** Whether all of a box is in the view, if only just. */
    boolean holds(Box box) {
        Point least = view.toScreen(new Point(box.minX(), box.minY()));
        Point most = view.toScreen(new Point(box.maxX(), box.maxY()));
        return least.x() >= 0 && least.y() >= 0 && most.x() <= width && most.y() <= height;
    }
}
