package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Side;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Records of changes as they are when a piece is drawn by another of its lines: it is called by the id of that line, and
 * places on the one are places on the other.
 *
 * @param before the piece by the line that was its own, unchanged
 * @param id     of the piece now
 * @param across the place on the line that is its own now, for one on the line that was
 */
public record OtherLine(Piece before, String id, UnaryOperator<Point> across) {
    /** A place this near to the outline lies on it, mm. */
    private static final double ON_OUTLINE = 1;

    /** The same change of the piece as it is now. */
    public Step of(Step step) {
        ChangeNote note = step.note();
        Map<String, String> settings = new LinkedHashMap<>();
        note.settings().forEach((key, value) -> settings.put(key, value(note, key, value)));
        return new Step(new ChangeNote(note.method(), settings), step.on());
    }

    private String value(ChangeNote note, String key, String value) {
        Optional<Setting.Kind> kind = Ways.of(note.method())
                .flatMap(way -> way.settings().stream()
                        .filter(s -> key.equals(s.key()) || key.startsWith(s.key() + "."))
                        .map(Setting::kind)
                        .findFirst());
        if (kind.isEmpty()) {
            return called(value);
        }
        return switch (kind.get()) {
            case SHARES, EDGE, DARTS, PIECE, PIECES -> called(value);
            case PLACE, PLACES -> place(value);
            case SLASHES -> key.endsWith(".piece") ? called(value) : place(value);
            case LEVEL, NAME, NAMES, SIGNED_LENGTH, CHOICE, FLAG -> value;
        };
    }

    /** What is the piece or its copy for one side, or something on it: an edge, a dart. */
    private String called(String value) {
        String called = called(value, before.id(), id);
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            String ending = PieceCopy.ending(side);
            called = called.equals(value)
                    ? called(value, PieceCopy.id(before.id(), ending), PieceCopy.id(id, ending))
                    : called;
        }
        return called;
    }

    private static String called(String value, String was, String is) {
        boolean meant = value.equals(was) || value.startsWith(was + "/");
        return meant ? is + value.substring(was.length()) : value;
    }

    private String place(String value) {
        Settings one = new Settings().text("place", value);
        try {
            Point at = one.point("place");
            return before.outline().comesWithin(at, ON_OUTLINE)
                    ? new Settings().point("place", across.apply(at)).text("place")
                    : value;
        } catch (Refusal noPlace) {
            return value;
        }
    }
}
