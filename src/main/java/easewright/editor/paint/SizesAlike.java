package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.PieceKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How the sizes of each piece are named on one picture of the table, so that one is named as the other. */
final class SizesAlike {
    private final Map<PieceKind, Choice> choices = new HashMap<>();

    /**
     * A way to set a name, and where.
     *
     * @param way   which of all, from 0
     * @param right how far to the right on the piece, as a part of its width
     * @param down  how far down, as a part of its height
     * @param turn  radians
     */
    private record Choice(int way, double right, double down, double turn) {}

    /**
     * A way to set the name of a piece.
     *
     * @param at   its middle, pixels
     * @param turn radians
     */
    record Like(NameSetting way, Point at, double turn) {}

    /** As the last size was named; empty for the first one, and for a piece of no size. */
    Optional<Like> of(TableScene.PieceSight sight, NameSettings settings, Viewport view) {
        Choice choice = sight.piece().size().isEmpty() ? null : choices.get(kind(sight));
        List<NameSetting> ways = choice == null ? List.of() : settings.all();
        if (choice == null || choice.way() >= ways.size()) {
            return Optional.empty();
        }
        Box box = sight.piece().outline().box();
        Point at = new Point(box.minX() + choice.right() * box.width(), box.minY() + choice.down() * box.height());
        return Optional.of(new Like(ways.get(choice.way()), view.toScreen(at), choice.turn()));
    }

    /** Notes how a piece is named. */
    void put(
            TableScene.PieceSight sight, NameSettings settings, NameSetting way, Point at, double turn, Viewport view) {
        int number = sight.piece().size().isEmpty() ? -1 : settings.all().indexOf(way);
        if (number >= 0) {
            Box box = sight.piece().outline().box();
            Point place = view.toTable(at.x(), at.y());
            choices.put(
                    kind(sight),
                    new Choice(
                            number,
                            (place.x() - box.minX()) / box.width(),
                            (place.y() - box.minY()) / box.height(),
                            turn));
        }
    }

    private static PieceKind kind(TableScene.PieceSight sight) {
        return new PieceKind(sight.piece().plainName(), sight.piece().side());
    }
}
