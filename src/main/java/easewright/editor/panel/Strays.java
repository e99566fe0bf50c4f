package easewright.editor.panel;

import easewright.editor.paint.TableScene;
import easewright.geom.Box;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Notices pieces that have come to lie outside the view: made there by a change, or moved out by one. What the user
 * has left outside on purpose is no stray. Where all is in the view, pieces that are gone leave it empty.
 */
final class Strays {
    private Map<String, Box> lay = Map.of();

    /**
     * Whether a piece lies outside now that was inside before or was not there, or the view has room for pieces that
     * are gone; remembers where all lie now.
     */
    boolean look(List<TableScene.PieceSight> pieces, TableOutlook outlook) {
        Map<String, Box> now = new HashMap<>();
        boolean any = false;
        for (TableScene.PieceSight sight : pieces) {
            Box box = sight.piece().outline().box();
            now.put(sight.piece().id(), box);
            Box before = lay.get(sight.piece().id());
            any |= !box.equals(before) && !outlook.holds(box) && (before == null || outlook.holds(before));
        }
        boolean gone = outlook.showsAll() && !now.keySet().containsAll(lay.keySet());
        lay = now;
        return any || gone;
    }
}
