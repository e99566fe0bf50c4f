package easewright.editor.mark;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts notches and darts where a number says, exactly. */
public final class MeasureEdits {
    private static final double SMALLEST_DART = 1;

    /** Halvings of a dart's width that end below a millionth of a millimetre. */
    private static final int HALVINGS = 50;

    private MeasureEdits() {}

    /** How far along the drawn edge from its start a place lies, mm. */
    static double along(Piece piece, Edge edge, Point at) {
        Outline outline = piece.outline();
        Place from = outline.nearest(edge.from()).place();
        Place to = outline.nearest(at).place();
        return from.equals(to) ? 0 : outline.run(from, to).length();
    }

    /**
     * Puts a notch this far along its edge, from where places on it are counted.
     *
     * @param number of the notch in the piece's list, from 0
     * @throws MarkRefused {@code notch-on-no-edge}, {@code notch-off-edge}
     */
    public static Pattern notchAt(Pattern pattern, String pieceId, int number, double mm) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        List<Notch> notches = new ArrayList<>(piece.notches());
        Notch notch = notches.get(number);
        Edge edge = EdgeEdits.at(piece, piece.outline().nearest(notch.at()).point())
                .orElseThrow(() -> new MarkRefused("notch-on-no-edge", Map.of()));
        Curve run = edge.on(piece.outline());
        if (mm < 0 || mm > run.length()) {
            throw new MarkRefused("notch-off-edge", Map.of("edge", edge.name(), "length", run.length()));
        }
        notches.set(number, new Notch(notch.name(), run.pointAtLength(AlongEdge.counted(piece, edge, mm))));
        return pattern.withPiece(piece.toBuilder().notches(notches).build());
    }

    /**
     * Makes a dart's mouth this wide, straight across, by as much on both sides; its point stays.
     *
     * @throws MarkRefused {@code dart-too-small}, {@code dart-too-wide}, {@code dart-cut-out} where its legs are lines
     *                     of the outline
     */
    public static Pattern dartWidth(Pattern pattern, String pieceId, String name, double mm) throws MarkRefused {
        if (mm < SMALLEST_DART) {
            throw new MarkRefused("dart-too-small", Map.of());
        }
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        Dart dart = dart(piece, name);
        if (DartLegs.areOutline(piece, dart)) {
            throw new MarkRefused("dart-cut-out", Map.of("dart", dart.name()));
        }
        Optional<Edge> edge = dart.edge().flatMap(piece::edge);
        if (edge.isEmpty()) {
            Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
            Point half = dart.mouth2().minus(dart.mouth1()).unit().times(mm / 2);
            return with(pattern, piece, dart, middle.minus(half), middle.plus(half), dart.point());
        }
        Curve run = edge.get().on(piece.outline());
        double one = along(piece, edge.get(), dart.mouth1());
        double two = along(piece, edge.get(), dart.mouth2());
        double middle = (one + two) / 2;
        double most = Math.min(middle, run.length() - middle);
        if (width(run, middle, most) < mm) {
            throw new MarkRefused("dart-too-wide", Map.of("most", width(run, middle, most)));
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < HALVINGS; i++) {
            double half = (low + high) / 2;
            if (width(run, middle, half) < mm) {
                low = half;
            } else {
                high = half;
            }
        }
        double first = one < two ? middle - high : middle + high;
        double second = one < two ? middle + high : middle - high;
        return with(pattern, piece, dart, run.pointAtLength(first), run.pointAtLength(second), dart.point());
    }

    private static double width(Curve run, double middle, double half) {
        return run.pointAtLength(middle - half).distance(run.pointAtLength(middle + half));
    }

    /**
     * Makes a dart this long from the middle of its mouth to its point, in the direction it has. Legs that are drawn
     * go along, in the outline as well.
     *
     * @throws MarkRefused {@code dart-too-small}, {@code dart-point-outside}, {@code dart-drawn}, {@code dart-changed}
     */
    public static Pattern dartLength(Pattern pattern, String pieceId, String name, double mm) throws MarkRefused {
        if (mm < SMALLEST_DART) {
            throw new MarkRefused("dart-too-small", Map.of());
        }
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        Dart dart = dart(piece, name);
        Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
        Point tip = middle.plus(dart.point().minus(middle).unit().times(mm));
        Dart moved = new Dart(name, dart.mouth1(), dart.mouth2(), tip, dart.otherPoint(), dart.edge());
        if (DartLegs.areOutline(piece, dart)) {
            return with(pattern, DartLegs.cutAnew(piece, dart, moved), dart, moved);
        }
        requireInside(piece, dart, dart.point(), tip);
        return with(pattern, piece, dart, moved);
    }

    /** A pleat has its point beyond the piece, and keeps it there. */
    private static void requireInside(Piece piece, Dart dart, Point was, Point is) throws MarkRefused {
        if (piece.outline().contains(was) && !piece.outline().contains(is)) {
            throw new MarkRefused("dart-point-outside", Map.of("dart", dart.name()));
        }
    }

    /**
     * Makes a dart that is closed at both ends this long from the middle of its mouth to its other point.
     *
     * @throws MarkRefused {@code dart-too-small}, {@code dart-point-outside}
     * @throws IllegalArgumentException if the dart has no other point
     */
    public static Pattern dartOtherLength(Pattern pattern, String pieceId, String name, double mm) throws MarkRefused {
        if (mm < SMALLEST_DART) {
            throw new MarkRefused("dart-too-small", Map.of());
        }
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        Dart dart = dart(piece, name);
        Point other = dart.otherPoint().orElseThrow(() -> new IllegalArgumentException("No other point: " + name));
        Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
        Point tip = middle.plus(other.minus(middle).unit().times(mm));
        requireInside(piece, dart, other, tip);
        Dart moved = new Dart(name, dart.mouth1(), dart.mouth2(), dart.point(), Optional.of(tip), dart.edge());
        return with(pattern, piece, dart, moved);
    }

    private static Dart dart(Piece piece, String name) {
        return piece.darts().stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No such dart: " + name));
    }

    private static Pattern with(Pattern pattern, Piece piece, Dart dart, Point one, Point two, Point tip) {
        return with(pattern, piece, dart, new Dart(dart.name(), one, two, tip, dart.otherPoint(), dart.edge()));
    }

    /** Lines of the drawing that are the dart's own go along: a mark that moved alone would part from them. */
    private static Pattern with(Pattern pattern, Piece piece, Dart dart, Dart moved) {
        List<Dart> darts =
                piece.darts().stream().map(d -> d == dart ? moved : d).toList();
        return pattern.withPiece(
                DartLegs.following(piece, dart, moved).toBuilder().darts(darts).build());
    }
}
