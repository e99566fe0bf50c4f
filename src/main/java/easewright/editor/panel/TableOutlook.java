package easewright.editor.panel;

import easewright.editor.paint.Viewport;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;

/** Which part of the table is in the view: all of it, however the window changes, until the user looks elsewhere. */
final class TableOutlook {
    /** Left free round what is all in view, pixels. */
    private static final double MARGIN = 53;

    /** Left free below it: the buttons of the view lie there, and a message of three lines. */
    private static final double FOOT = 80;

    /** Between the pieces and what lies below them, pixels. */
    private static final double GAP = 6;

    private Viewport view = new Viewport(1, 0, 0);
    private double width;
    private double height;
    private boolean showingAll = true;
    private Bounds over = new BoundingBox(0, 0, -1, -1);

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

    /** What is said lies so over the foot of the view, pixels; empty while nothing is. */
    void layOver(Bounds said) {
        over = said;
    }

    /** Shows all of what there is, if there is anything and room for it, and higher up where something would lie over it. */
    void fit(List<Box> parts) {
        fit(parts, FOOT);
        if (lieUnder(parts)) {
            fit(parts, height - over.getMinY() + GAP);
        }
        showingAll = true;
    }

    /** Shows a part of what there is as all of it would be shown. */
    void fitPart(List<Box> parts) {
        fit(parts);
        showingAll = false;
    }

    private void fit(List<Box> parts, double foot) {
        Optional<Box> all = parts.stream().reduce(Box::union);
        if (all.isPresent() && width > 2 * MARGIN && height > MARGIN + foot) {
            view = Viewport.fitting(all.get(), width, height - foot + MARGIN, MARGIN);
        }
    }

    /** Whether anything of it lies under what is said. */
    boolean lieUnder(List<Box> parts) {
        return !over.isEmpty()
                && parts.stream()
                        .anyMatch(part -> view.screenX(part.maxX()) > over.getMinX()
                                && view.screenX(part.minX()) < over.getMaxX()
                                && view.screenY(part.maxY()) > over.getMinY());
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
