package easewright.editor.panel;

import easewright.editor.model.Hold;
import easewright.editor.paint.OverlayPainter;
import easewright.editor.paint.Viewport;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a seam on the table can be taken hold of; one of the places may have the pointer's or the keys' attention. */
final class TableHolds {
    private List<Hold> holds = List.of();
    private int pointed = -1;

    /** Other holds; the attention stays with its seam, or goes to another where that takes part no longer. */
    void show(List<Hold> now) {
        pointed = isPointed() ? next(holds.get(pointed).edge(), pointed, now) : -1;
        holds = now;
    }

    private static int next(EdgeRef edge, int at, List<Hold> now) {
        int same = now.stream().map(Hold::edge).toList().indexOf(edge);
        boolean stays = at < now.size() && now.get(at).edge().equals(edge);
        return stays || same < 0 ? Math.min(at, now.size() - 1) : same;
    }

    List<Hold> all() {
        return holds;
    }

    List<Point> onScreen(Viewport view) {
        return holds.stream().map(h -> view.toScreen(h.at())).toList();
    }

    List<OverlayPainter.Grip> grips() {
        List<OverlayPainter.Grip> grips = new ArrayList<>();
        for (int i = 0; i < holds.size(); i++) {
            grips.add(new OverlayPainter.Grip(holds.get(i).at(), holds.get(i).outward(), i == pointed));
        }
        return grips;
    }

    /** Gives the attention to the next one, or with −1 to the one before; whether there is any. */
    boolean next(int step) {
        if (holds.isEmpty()) {
            return false;
        }
        pointed = Math.floorMod(pointed + step, holds.size());
        return true;
    }

    /** Gives one the attention, or with a number below 0 none; whether that is different from before. */
    boolean point(int hold) {
        boolean other = hold != pointed;
        pointed = hold;
        return other;
    }

    /** The one with the attention. */
    Optional<Hold> pointed() {
        return isPointed() ? Optional.of(holds.get(pointed)) : Optional.empty();
    }

    boolean isPointed() {
        return pointed >= 0;
    }
}
