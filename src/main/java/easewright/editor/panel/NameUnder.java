package easewright.editor.panel;

import easewright.editor.paint.TableScene;
import easewright.editor.paint.Viewport;
import easewright.geom.Point;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The piece under the pointer, whose whole name is shown there if it is not written on the table. */
final class NameUnder {
    /** A thin band is pointed at from so far, pixels. */
    private static final double NEAR = 5;

    private Optional<TableScene.PieceSight> under = Optional.empty();
    private Point at = Point.ORIGIN;
    private Set<String> lacking = Set.of();

    /**
     * The pointer has come to a pixel; whether another name is to be seen by that, or none any more.
     *
     * @param pieces the last of which lies uppermost
     */
    boolean moved(Point pixel, Viewport view, List<TableScene.PieceSight> pieces) {
        Optional<TableScene.PieceSight> before = shown();
        Point place = view.toTable(pixel.x(), pixel.y());
        Optional<TableScene.PieceSight> now = pieces.stream()
                .filter(sight -> isAt(sight.piece(), place, NEAR / view.scale()))
                .reduce((lower, upper) -> upper);
        if (!same(now, under)) {
            under = now;
            at = pixel;
        }
        return !same(before, shown());
    }

    /** The pointer has gone; whether a name is gone with it. */
    boolean gone() {
        boolean was = shown().isPresent();
        under = Optional.empty();
        return was;
    }

    /** The table has been painted: the names of these pieces are not on it, or not wholly. */
    void painted(Set<String> without) {
        lacking = without;
    }

    /** The piece whose name is to be shown. */
    Optional<TableScene.PieceSight> shown() {
        return under.filter(sight -> lacking.contains(sight.piece().id()));
    }

    /** Where the pointer came to it, pixels. */
    Point at() {
        return at;
    }

    private static boolean same(Optional<TableScene.PieceSight> one, Optional<TableScene.PieceSight> other) {
        return one.map(s -> s.piece().id()).equals(other.map(s -> s.piece().id()));
    }

    private static boolean isAt(Piece piece, Point place, double near) {
        return piece.outline().box().grown(near).contains(place)
                && (piece.outline().contains(place)
                        || piece.outline().nearest(place).distance() <= near);
    }
}
