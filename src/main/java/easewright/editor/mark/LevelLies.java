package easewright.editor.mark;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.suggest.Reference;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From where a distance below a level is measured on each piece, so that the lines meet where the pieces are sewn
 * together. A waist may rise toward the centre on one piece and not on the other: it is measured at the centre of the
 * piece that begins most level, and the others follow from the corners that they share with it.
 */
final class LevelLies {
    private static final double SAME_CORNER = 1;

    /** A waist that differs by less from a level one is as level for this, mm; common practice. */
    private static final double SHAPED = 10;

    private LevelLies() {}

    /**
     * Where a level comes to lie on a piece.
     *
     * @param mm down the grain from the reference
     */
    record Lie(Point reference, double mm) {
        Point at(Piece piece) {
            return reference.plus(piece.downGrain().times(mm));
        }
    }

    /** A corner that two pieces share at a seam between them, where it begins at the level. */
    private record Shared(Piece one, Point onOne, Piece other, Point onOther) {
        Shared turned() {
            return new Shared(other, onOther, one, onOne);
        }
    }

    /**
     * Where the level lies, by id of each of the pieces.
     *
     * @param having the pieces that have the level from which is measured
     */
    static Map<String, Lie> below(Pattern pattern, List<Piece> having, String level, double mm) {
        Map<String, Lie> lies = new LinkedHashMap<>();
        for (Pattern garment : PatternPart.garments(pattern)) {
            List<Shared> shared = shared(garment, having, level);
            List<Shared> levelest = new ArrayList<>(shared);
            levelest.sort(Comparator.comparingLong(s -> Math.round(rise(s, level) / SHAPED)));
            for (Shared start : levelest) {
                if (!lies.containsKey(start.one().id())) {
                    lies.put(start.one().id(), new Lie(from(start.one(), level), mm));
                    lead(start.one(), level, shared, lies);
                }
            }
        }
        having.forEach(p -> lies.putIfAbsent(p.id(), new Lie(from(p, level), mm)));
        return lies;
    }

    /** How much the level rises or falls on a piece from its centre to the seam, mm. */
    private static double rise(Shared corner, String level) {
        return Math.abs(
                corner.onOne().minus(from(corner.one(), level)).dot(corner.one().downGrain()));
    }

    /** From a piece that is settled to those sewn to it, and on. */
    private static void lead(Piece settled, String level, List<Shared> shared, Map<String, Lie> lies) {
        Deque<Piece> open = new ArrayDeque<>(List.of(settled));
        while (!open.isEmpty()) {
            Piece piece = open.remove();
            Point at = lies.get(piece.id()).at(piece);
            for (Shared corner : shared) {
                if (corner.one().id().equals(piece.id())
                        && !lies.containsKey(corner.other().id())) {
                    Piece other = corner.other();
                    Point down = other.downGrain();
                    double below = at.minus(corner.onOne()).dot(piece.downGrain());
                    Point reference = from(other, level);
                    double mm = corner.onOther().minus(reference).dot(down) + below;
                    lies.put(other.id(), new Lie(reference, mm));
                    open.add(other);
                }
            }
        }
    }

    private static List<Shared> shared(Pattern garment, List<Piece> having, String level) {
        List<Shared> shared = new ArrayList<>();
        for (Mate mate : garment.mates()) {
            for (EdgeRef one : mate.first()) {
                for (EdgeRef other : mate.second()) {
                    shared(garment, having, level, one, other).ifPresent(s -> {
                        shared.add(s);
                        shared.add(s.turned());
                    });
                }
            }
        }
        return shared;
    }

    private static Optional<Shared> shared(
            Pattern garment, List<Piece> having, String level, EdgeRef one, EdgeRef other) {
        Optional<Piece> first = garment.piece(one.piece()).filter(p -> isAmong(having, p));
        Optional<Piece> second = garment.piece(other.piece()).filter(p -> isAmong(having, p));
        if (first.isEmpty()
                || second.isEmpty()
                || first.get().id().equals(second.get().id())) {
            return Optional.empty();
        }
        Optional<Point> onOne = corner(first.get(), level, one.edge());
        Optional<Point> onOther = corner(second.get(), level, other.edge());
        return onOne.isPresent() && onOther.isPresent()
                ? Optional.of(new Shared(first.get(), onOne.get(), second.get(), onOther.get()))
                : Optional.empty();
    }

    private static boolean isAmong(List<Piece> having, Piece piece) {
        return having.stream().anyMatch(p -> p.id().equals(piece.id()));
    }

    /** Where the edge that the level runs along meets a seam of the piece. */
    private static Optional<Point> corner(Piece piece, String level, String seam) {
        Optional<Edge> base = piece.level(level).flatMap(LevelMark::along).flatMap(piece::edge);
        Optional<Edge> sewn = piece.edge(seam);
        if (base.isEmpty() || sewn.isEmpty() || base.get().name().equals(seam)) {
            return Optional.empty();
        }
        return List.of(base.get().from(), base.get().to()).stream()
                .filter(p -> sewn.get().from().distance(p) < SAME_CORNER
                        || sewn.get().to().distance(p) < SAME_CORNER)
                .findFirst();
    }

    /**
     * How far a level lies down the grain from the end of another one that is not at the centre, mm: a shaped waist lies
     * higher at the side. Empty where either is not on the piece, or the other does not run along an edge.
     */
    static OptionalDouble atSide(Piece piece, String level, String other) {
        Optional<Edge> base = piece.level(other).flatMap(LevelMark::along).flatMap(piece::edge);
        Optional<Point> lies = piece.level(level).flatMap(LevelMark::through);
        if (base.isEmpty() || lies.isEmpty()) {
            return OptionalDouble.empty();
        }
        Point centre = Reference.of(piece, base.get());
        Point side =
                base.get().from().equals(centre) ? base.get().to() : base.get().from();
        return OptionalDouble.of(lies.get().minus(side).dot(piece.downGrain()));
    }

    /** The place from which a distance below a level is measured on a piece: on the edge that it runs along, if any. */
    static Point from(Piece piece, String level) {
        LevelMark mark = piece.level(level).orElseThrow();
        return mark.through()
                .or(() -> mark.along().flatMap(piece::edge).map(edge -> Reference.of(piece, edge)))
                .orElseGet(() -> Reference.of(piece));
    }
}
