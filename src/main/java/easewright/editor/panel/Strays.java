package easewright.editor.panel;

import easewright.editor.paint.TableScene;
import easewright.editor.paint.Viewport;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Notices pieces that have come to lie outside the view: made there by a change, or moved out by one. What the user
 * has left outside on purpose is no stray.
 */
final class Strays {
    private Map<String, Box> lay = Map.of();

    /** Whether a piece lies outside now that was inside before or was not there; remembers where all lie now. */
    boolean look(List<TableScene.PieceSight> pieces, Viewport view, double width, double height) {
        Map<String, Box> now = new HashMap<>();
        boolean any = false;
        for (TableScene.PieceSight sight : pieces) {
            Box box = sight.piece().outline().box();
            now.put(sight.piece().id(), box);
            Box before = lay.get(sight.piece().id());
            any |= !box.equals(before)
                    && !isInside(box, view, width, height)
                    && (before == null || isInside(before, view, width, height));
        }
        lay = now;
        return any;
    }

    private static boolean isInside(Box box, Viewport view, double width, double height) {
        Point least = view.toScreen(new Point(box.minX(), box.minY()));
        Point most = view.toScreen(new Point(box.maxX(), box.maxY()));
        return least.x() >= 0 && least.y() >= 0 && most.x() <= width && most.y() <= height;
    }
}
