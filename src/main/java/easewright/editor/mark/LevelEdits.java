package easewright.editor.mark;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LevelWords;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Wish;
import easewright.suggest.Reference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** What can be done to levels: where they lie, from where they are measured, which pieces count. */
public final class LevelEdits {
    private static final double SAME_PLACE = 0.01;

    private LevelEdits() {}

    /**
     * Adds a level, as far as its kind tells in the order in which levels follow down the body.
     *
     * @throws MarkRefused {@code name-empty}, {@code name-taken}
     */
    public static Pattern add(Pattern pattern, String name, LevelKind kind) throws MarkRefused {
        String wanted = name.strip();
        if (wanted.isEmpty()) {
            throw new MarkRefused("name-empty", Map.of());
        }
        if (pattern.level(wanted).isPresent()) {
            throw new MarkRefused("name-taken", Map.of("name", wanted));
        }
        List<Level> levels = new ArrayList<>(pattern.levels());
        Level called = LevelWords.called(wanted);
        Level level = kind == LevelKind.OTHER ? called : Level.of(wanted, kind);
        if (LevelWords.isHem(wanted)) {
            level = new Level(wanted, kind, called.limb() || isOfLegs(pattern));
        }
        int lower = 0;
        while (lower < levels.size() && !LevelOrder.isAbove(level, levels.get(lower))) {
            lower++;
        }
        levels.add(lower, level);
        return pattern.withLevels(levels);
    }

    /** A hem of trousers or shorts goes round one leg. */
    private static boolean isOfLegs(Pattern pattern) {
        return pattern.pieces().stream().flatMap(p -> p.edges().stream()).anyMatch(e -> e.role() == EdgeRole.CROTCH);
    }

    /**
     * Without the level, its places and its wish.
     *
     * @throws MarkRefused {@code level-in-changes}
     */
    public static Pattern remove(Pattern pattern, String name) throws MarkRefused {
        boolean changed = pattern.changes().stream()
                .anyMatch(note -> name.equals(note.settings().get("level")));
        if (changed) {
            throw new MarkRefused("level-in-changes", Map.of("level", name));
        }
        List<Level> levels =
                pattern.levels().stream().filter(l -> !l.name().equals(name)).toList();
        List<Piece> pieces = pattern.pieces().stream()
                .map(p -> p.level(name).isEmpty() ? p : without(p, name))
                .toList();
        Map<String, Wish> wishes = new TreeMap<>(pattern.wishes());
        wishes.remove(name);
        return pattern.withPieces(pieces).withLevels(levels).withWishes(wishes);
    }

    private static Piece without(Piece piece, String level) {
        return piece.withLevels(
                piece.levels().stream().filter(l -> !l.level().equals(level)).toList());
    }

    /** Takes a level off one piece. */
    public static Pattern takeOff(Pattern pattern, String pieceId, String level) {
        return pattern.withPiece(without(EdgeEdits.piece(pattern, pieceId), level));
    }

    /** Puts a level on a piece, straight across through a place, or moves it there. */
    public static Pattern place(Pattern pattern, String pieceId, String level, Point wanted) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        Point at = on(piece, wanted).orElse(wanted);
        LevelMark old = piece.level(level).orElse(null);
        Point reference =
                old != null && old.reference().isPresent() ? old.reference().get() : Reference.of(piece);
        double turn = old == null ? 0 : old.turn();
        LevelMark mark =
                LevelMark.through(level, at).placed(Optional.of(at), Optional.empty(), turn, Optional.of(reference));
        return pattern.withPiece(EdgeEdits.withLevel(piece, asBefore(pattern, piece, mark)));
    }

    /** A level that comes to lie otherwise on a piece counts there as it did, and with the overlap that was said of it. */
    private static LevelMark asBefore(Pattern pattern, Piece piece, LevelMark mark) {
        Optional<LevelMark> old = piece.level(mark.level());
        LevelMark now = old.map(o -> o.placed(mark.through(), mark.along(), mark.turn(), mark.reference()))
                .orElse(mark);
        boolean moved =
                old.flatMap(LevelMark::through).isPresent() && now.through().isPresent();
        return moved || now.overlapSaid().isPresent() ? now : Overlaps.taken(pattern, piece, now);
    }

    /** The place itself on a piece, or else beside it the middle of the piece; empty where the piece does not reach. */
    static Optional<Point> on(Piece piece, Point wanted) {
        Optional<Point> within = Optional.ofNullable(inside(piece, wanted));
        return within.map(middle -> piece.outline().contains(wanted) ? wanted : middle);
    }

    /** The stretch of the piece across the grain through a place, as a level laid there would show it. */
    static Optional<Line> across(Piece piece, Point at) {
        Point along = piece.downGrain().quarterTurned();
        var crossings = piece.outline().crossings(at, along);
        for (int i = 0; i + 1 < crossings.size(); i++) {
            Line line = new Line(crossings.get(i).point(), crossings.get(i + 1).point());
            if (line.at(line.nearest(at)).distance(at) < SAME_PLACE
                    && piece.outline().contains(line.at(0.5))) {
                return Optional.of(line);
            }
        }
        return Optional.empty();
    }

    /** Measures a level along an edge, such as a shaped waist. */
    public static Pattern along(Pattern pattern, String pieceId, String level, String edge) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPiece(EdgeEdits.withLevel(piece, asBefore(pattern, piece, LevelMark.along(level, edge))));
    }

    /** How far down the grain from its reference a straight level lies on a piece, mm. */
    public static OptionalDouble distance(Piece piece, String level) {
        return piece.level(level)
                .filter(m -> m.through().isPresent())
                .map(m -> OptionalDouble.of(m.through()
                        .get()
                        .minus(m.reference().orElseGet(() -> Reference.of(piece)))
                        .dot(piece.downGrain())))
                .orElse(OptionalDouble.empty());
    }

    /** Moves a straight level so that it lies that far down the grain from its reference, mm. */
    public static Pattern distance(Pattern pattern, String pieceId, String level, double mm) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        double now = distance(piece, level).orElse(0);
        Point through =
                piece.level(level).flatMap(LevelMark::through).orElseThrow(() -> new IllegalArgumentException(level));
        return place(pattern, pieceId, level, through.plus(piece.downGrain().times(mm - now)));
    }

    /**
     * Puts a level that far below another one, on every piece that has the other and reaches there. Where pieces that
     * are sewn together begin at the other level, the lines meet at the seam ({@link LevelLies}). Pieces on which the other does not count are asked only where the level lies on no other: the bodice at a
     * waist that the skirt counts.
     *
     * @param mm below 0: above it
     * @throws MarkRefused {@code level-reaches-no-piece}
     */
    public static Pattern below(Pattern pattern, String level, String other, double mm) throws MarkRefused {
        for (boolean counted : new boolean[] {true, false}) {
            List<Piece> having = pattern.pieces().stream()
                    .filter(p ->
                            p.level(other).filter(m -> m.counts() == counted).isPresent())
                    .toList();
            Map<String, LevelLies.Lie> lies = LevelLies.below(pattern, having, other, mm);
            Pattern placed = pattern;
            for (Piece piece : having) {
                placed = below(placed, piece, level, lies.get(piece.id()));
            }
            if (!placed.equals(pattern)) {
                return placed;
            }
        }
        throw new MarkRefused("level-reaches-no-piece", Map.of("level", level, "other", other));
    }

    /**
     * How far a level lies below another one, as {@link #below} puts it there, mm; empty where it lies otherwise, or on
     * different pieces differently.
     */
    public static OptionalDouble below(Pattern pattern, String level, String other) {
        List<Piece> having = havingBoth(pattern, level, other);
        Map<String, LevelLies.Lie> lies = LevelLies.below(pattern, having, other, 0);
        double[] each = having.stream()
                .mapToDouble(p -> p.level(level)
                        .flatMap(LevelMark::through)
                        .orElseThrow()
                        .minus(lies.get(p.id()).at(p))
                        .dot(p.downGrain()))
                .toArray();
        boolean alike = each.length > 0 && Arrays.stream(each).allMatch(mm -> Math.abs(mm - each[0]) < SAME_PLACE);
        return alike ? OptionalDouble.of(each[0]) : OptionalDouble.empty();
    }

    /**
     * On which piece that distance is measured, where others follow it at their seams at distances of their own; empty
     * where it is the same on each.
     */
    public static Optional<Piece> measuredOn(Pattern pattern, String level, String other) {
        Map<String, LevelLies.Lie> lies = LevelLies.below(pattern, havingBoth(pattern, level, other), other, 0);
        boolean alike = lies.values().stream().allMatch(lie -> Math.abs(lie.mm()) < SAME_PLACE);
        return alike ? Optional.empty() : lies.keySet().stream().findFirst().flatMap(pattern::piece);
    }

    /** How far it lies below the other at the side of a piece; below itself measures at the centre. */
    public static OptionalDouble atSide(Piece piece, String level, String other) {
        return LevelLies.atSide(piece, level, other);
    }

    /** How far it lies below the other at the side of every piece, where that is one figure and not that at the centre. */
    public static OptionalDouble atSides(Pattern pattern, String level, String other) {
        OptionalDouble centre = below(pattern, level, other);
        List<OptionalDouble> sides = havingBoth(pattern, level, other).stream()
                .map(p -> atSide(p, level, other))
                .toList();
        boolean shaped = centre.isPresent()
                && sides.stream()
                        .allMatch(s -> s.isPresent()
                                && Math.abs(s.getAsDouble() - sides.get(0).getAsDouble()) < SAME_PLACE
                                && Math.abs(s.getAsDouble() - centre.getAsDouble()) > SAME_PLACE);
        return shaped ? sides.get(0) : OptionalDouble.empty();
    }

    private static List<Piece> havingBoth(Pattern pattern, String level, String other) {
        return pattern.pieces().stream()
                .filter(p -> p.level(other).isPresent() && distance(p, level).isPresent())
                .toList();
    }

    private static Pattern below(Pattern pattern, Piece piece, String level, LevelLies.Lie lie) {
        Point at = inside(piece, lie.at(piece));
        return at == null
                ? pattern
                : pattern.withPiece(EdgeEdits.withLevel(
                        piece,
                        asBefore(pattern, piece, LevelMark.through(level, at).withReference(lie.reference()))));
    }

    /** The middle of the widest stretch of the piece on the line across the grain through a place, or null. */
    private static Point inside(Piece piece, Point at) {
        var crossings = piece.outline().crossings(at, piece.downGrain().quarterTurned());
        Point best = null;
        double widest = 0;
        for (int i = 0; i + 1 < crossings.size(); i++) {
            Point one = crossings.get(i).point();
            Point two = crossings.get(i + 1).point();
            Point middle = one.towards(two, 0.5);
            if (one.distance(two) > widest && piece.outline().contains(middle)) {
                widest = one.distance(two);
                best = middle;
            }
        }
        return best;
    }

    /** Says whether a level goes round one arm or leg, of which there are two alike, or round the body. */
    public static Pattern limb(Pattern pattern, String name, boolean limb) {
        return pattern.withLevels(pattern.levels().stream()
                .map(l -> l.name().equals(name) ? new Level(name, l.kind(), limb) : l)
                .toList());
    }

    /** Leaves a piece, and those called alike of other sizes, out of the girths at some levels. */
    public static Pattern leftOut(Pattern pattern, String pieceId, List<String> levels) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPieces(pattern.pieces().stream()
                .map(p -> p.plainName().equals(piece.plainName())
                        ? p.withLevels(p.levels().stream()
                                .map(m -> levels.contains(m.level()) ? m.notCounted() : m)
                                .toList())
                        : p)
                .toList());
    }

    /** Whether a piece is part of the girth at a level. */
    public static Pattern counts(Pattern pattern, String pieceId, String level, boolean counts) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        LevelMark m = piece.level(level).orElseThrow(() -> new IllegalArgumentException(level));
        return pattern.withPiece(EdgeEdits.withLevel(piece, m.counted(counts)));
    }
}
