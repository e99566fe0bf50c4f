package easewright.topology;

import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The line parallel to an outline, at a distance of its own from each segment: the stitching line inside a cutting
 * line, or a cutting line around a stitching line. Lines stay lines and curves stay curves, true to 1e-7 mm. Corners
 * are sharp: both sides are cut off where they meet or go straight on until they do. Loops, which arise where a hollow
 * is tighter than the distance, are cut away.
 */
public final class Allowance {
    /** Parts shorter than this are rounding, mm. */
    private static final double JOINED = 1e-7;

    private final Outline drawn;
    private final double[] distances;
    private final double side;
    private final Point[] corners;
    private final List<Part> parts;
    private final Outline outline;
    private final Parallels parallels;

    private Allowance(
            Outline drawn, double[] distances, double side, Point[] corners, List<Part> parts, Parallels parallels) {
        this.parallels = parallels;
        this.drawn = drawn;
        this.distances = distances;
        this.side = side;
        this.corners = corners;
        this.parts = parts;
        List<Segment> segments = new ArrayList<>();
        for (Part part : parts) {
            segments.add(part.segment());
        }
        this.outline = new Outline(segments);
    }

    /**
     * The parallel of a simple outline.
     *
     * @param distances for each segment of the outline, mm: positive inwards, negative outwards, 0 to stay on it
     * @return empty where the distances leave nothing of the piece
     * @throws IllegalArgumentException if there is not one finite distance for each segment, or a segment has no length
     */
    public static Optional<Allowance> of(Outline drawn, double[] distances) {
        return of(drawn, distances, Optional.empty());
    }

    /**
     * The same where the parallel of a similar outline is known: that of segments which are the same objects, as those
     * are that a change left alone, is not drawn again.
     */
    public static Optional<Allowance> of(Outline drawn, double[] distances, Optional<Allowance> like) {
        if (distances.length != drawn.segments().size()) {
            throw new IllegalArgumentException("One distance is needed for each segment");
        }
        for (int i = 0; i < distances.length; i++) {
            if (!Double.isFinite(distances[i])) {
                throw new IllegalArgumentException("A distance is no number");
            }
            if (!drawn.segments().get(i).hasLength()) {
                throw new IllegalArgumentException("A segment without length has no parallel");
            }
        }
        double side = drawn.signedArea() >= 0 ? 1 : -1;
        double[] own = distances.clone();
        Parallels parallels = new Parallels(like.map(l -> l.parallels));
        Corners joined = new Corners(drawn, own, side, parallels);
        Point[] corners = new Point[own.length];
        for (int i = 0; i < own.length; i++) {
            corners[i] = joined.corner(i);
        }
        Optional<List<Part>> parts = Loops.cut(joined.joined(), side);
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(new Allowance(drawn, own, side, corners, parts.get(), parallels));
    }

    /** The parallel line, in the direction of the drawn one. */
    public Outline outline() {
        return outline;
    }

    /**
     * Where a place of the drawn outline lies on the parallel: square across from it; for a drawn corner the corner of
     * the parallel; for what was cut away the nearest place that is left.
     */
    public Place place(Place onDrawn) {
        if (onDrawn.t() == 0) {
            return outline.nearest(corners[onDrawn.segment()]).place();
        }
        if (onDrawn.t() == 1) {
            return outline.nearest(corners[(onDrawn.segment() + 1) % corners.length])
                    .place();
        }
        int source = onDrawn.segment();
        Segment segment = drawn.segments().get(source);
        Point across = segment.beside(onDrawn.t(), side * distances[source]);
        Place best = null;
        double distance = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).source() == source) {
                double t = parts.get(i).segment().nearest(across);
                double away = parts.get(i).segment().at(t).distance(across);
                if (away < distance) {
                    distance = away;
                    best = new Place(i, t);
                }
            }
        }
        Nearest any = outline.nearest(across);
        return best == null || any.distance() < distance - 1e-3 ? any.place() : best;
    }

    /** Two places of the drawn outline; one and the same but where the parallel has a corner. */
    public record Across(Place before, Place after) {}

    /**
     * The places of the drawn outline that a place of the parallel lies square across from: at a corner of the parallel
     * one on the segment along which it arrives and one on that along which it leaves.
     */
    public Across across(Place onParallel) {
        Point p = outline.point(onParallel);
        int count = parts.size();
        int before = onParallel.segment();
        int after = before;
        for (int i = 0; i < count && p.distance(parts.get(before).segment().start()) <= JOINED; i++) {
            before = (before + count - 1) % count;
        }
        for (int i = 0; i < count && p.distance(parts.get(after).segment().end()) <= JOINED; i++) {
            after = (after + 1) % count;
        }
        return new Across(foot(before, p), foot(after, p));
    }

    private Place foot(int part, Point p) {
        int source = parts.get(part).source();
        return new Place(source, drawn.segments().get(source).nearest(p));
    }
}
