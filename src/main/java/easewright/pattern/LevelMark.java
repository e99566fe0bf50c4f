package easewright.pattern;

import easewright.geom.Point;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * Where a level lies on one piece: either a straight line {@code through} a point, square to the grain unless turned,
 * or {@code along} an edge of the outline (a shaped waist is measured along its stitching line).
 *
 * <p>Where a straight level meets the outline more than twice, {@link Span#NEAREST} takes the one stretch of cloth
 * that holds {@code through}, or else lies nearest to it, and {@link Span#ALL} takes every stretch. A dart cut out of
 * the outline does not divide a stretch: it is closed first and its intake subtracted.
 *
 * @param level     name of the {@link Level}
 * @param turn      degrees clockwise from square to the grain
 * @param counts    whether this piece counts in the girth (a facing or lining does not)
 * @param overlapSaid width here beyond the centre line (button extension), not part of the girth, mm; empty where nothing
 *                  was said of it: an overlap of 0 may be meant, or not have been thought of
 * @param reference point from which the level's distance is stated, measured along the grain
 */
public record LevelMark(
        String level,
        Optional<Point> through,
        Optional<String> along,
        double turn,
        boolean counts,
        OptionalDouble overlapSaid,
        Span span,
        Optional<Point> reference) {
    /** Which stretches of cloth a straight level takes. */
    public enum Span {
        NEAREST,
        ALL
    }

    /**
     * @throws IllegalArgumentException unless exactly one of {@code through} and {@code along} is given
     */
    public LevelMark {
        Names.require(level, "level");
        if (through.isPresent() == along.isPresent()) {
            throw new IllegalArgumentException("Level " + level + " needs a place or an edge, and not both");
        }
        double overlap = overlapSaid.orElse(0);
        if (!Double.isFinite(turn) || !(overlap >= 0 && Double.isFinite(overlap))) {
            throw new IllegalArgumentException("Level " + level + " has a turn or overlap that is no number");
        }
    }

    /** A mark of which nothing is said of an overlap of 0. */
    public LevelMark(
            String level,
            Optional<Point> through,
            Optional<String> along,
            double turn,
            boolean counts,
            double overlap,
            Span span,
            Optional<Point> reference) {
        this(
                level,
                through,
                along,
                turn,
                counts,
                overlap == 0 ? OptionalDouble.empty() : OptionalDouble.of(overlap),
                span,
                reference);
    }

    /** What was said of it, or else 0, mm. */
    public double overlap() {
        return overlapSaid.orElse(0);
    }

    public static LevelMark through(String level, Point point) {
        return new LevelMark(level, Optional.of(point), Optional.empty(), 0, true, 0, Span.NEAREST, Optional.empty());
    }

    public static LevelMark along(String level, String edge) {
        return new LevelMark(level, Optional.empty(), Optional.of(edge), 0, true, 0, Span.NEAREST, Optional.empty());
    }

    public LevelMark withThrough(Point point) {
        return placed(Optional.of(point), along, turn, reference);
    }

    public LevelMark withReference(Point point) {
        return placed(through, along, turn, Optional.of(point));
    }

    /** The same mark elsewhere; whether it counts, its overlap and its stretches stay. */
    public LevelMark placed(Optional<Point> at, Optional<String> edge, double degrees, Optional<Point> from) {
        return new LevelMark(level, at, edge, degrees, counts, overlapSaid, span, from);
    }

    /** The same mark with both its places moved; its turn and overlap stay. */
    public LevelMark mapped(UnaryOperator<Point> move) {
        return placed(through.map(move), along, turn, reference.map(move));
    }

    /** The same mark with an overlap said, mm; 0 where the edges only meet. */
    public LevelMark withOverlap(double mm) {
        return new LevelMark(level, through, along, turn, counts, OptionalDouble.of(mm), span, reference);
    }

    /** The same mark of which no overlap is said. */
    public LevelMark withoutOverlap() {
        return new LevelMark(level, through, along, turn, counts, OptionalDouble.empty(), span, reference);
    }

    public LevelMark counted(boolean counted) {
        return new LevelMark(level, through, along, turn, counted, overlapSaid, span, reference);
    }

    public LevelMark notCounted() {
        return counted(false);
    }
}
