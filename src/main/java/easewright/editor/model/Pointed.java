package easewright.editor.model;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a list beside the table points at.
 *
 * @param piece its id
 * @param at    the place on it; empty where the whole piece is meant
 * @param also  places at which the same is to be seen
 * @param with  the ids of the other pieces that it concerns
 * @param lines as they would be drawn there
 * @param redrawn whether those lie otherwise than the lines that are there
 */
public record Pointed(
        String piece, Optional<Point> at, List<Point> also, Set<String> with, List<Segment> lines, boolean redrawn) {
    /** So much is shown about a place at least, mm: less has nothing in it to tell where one is. */
    private static final double AROUND = 30;

    public Pointed {
        also = List.copyOf(also);
        with = Set.copyOf(with);
        lines = List.copyOf(lines);
    }

    /** Lines that are there. */
    public Pointed(String piece, Optional<Point> at, List<Point> also, Set<String> with, List<Segment> lines) {
        this(piece, at, also, with, lines, false);
    }

    /** One place. */
    public Pointed(String piece, Optional<Point> at, List<Segment> lines) {
        this(piece, at, List.of(), Set.of(), lines);
    }

    /** A whole piece. */
    public static Pointed at(String piece) {
        return new Pointed(piece, Optional.empty(), List.of());
    }

    /** Whether a piece is meant, wholly or with a place on it. */
    boolean means(String id) {
        return piece.equals(id) || with.contains(id);
    }

    /** All places at which something is to be seen; none for a whole piece. */
    public List<Point> places() {
        return Stream.concat(at.stream(), also.stream()).toList();
    }

    /** What has to be in view to see it well; empty for a whole piece. */
    public Optional<Box> around() {
        return at.map(p -> Stream.concat(
                                also.stream().map(other -> round(other, AROUND)),
                                lines.stream().map(Segment::box))
                        .reduce(round(p, AROUND), Box::union))
                .map(Pointed::withRim);
    }

    private static Box round(Point p, double by) {
        return new Box(p.x() - by, p.y() - by, p.x() + by, p.y() + by);
    }

    private static Box withRim(Box box) {
        double rim = 0.15 * Math.max(box.width(), box.height());
        return new Box(box.minX() - rim, box.minY() - rim, box.maxX() + rim, box.maxY() + rim);
    }
}
