package easewright.geom;

import java.util.Collection;
import java.util.Optional;

/** An upright rectangle. Millimetres. */
public record Box(double minX, double minY, double maxX, double maxY) {
    /**
     * The smallest box around the places.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static Box around(Collection<Point> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("No places to put a box around");
        }
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (Point p : points) {
            minX = Math.min(minX, p.x());
            minY = Math.min(minY, p.y());
            maxX = Math.max(maxX, p.x());
            maxY = Math.max(maxY, p.y());
        }
        return new Box(minX, minY, maxX, maxY);
    }

    public Box union(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    /** Whether the two have some area in common. */
    public boolean overlaps(Box other) {
        return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
    }

    /** What both cover; empty if they have no area in common. */
    public Optional<Box> shared(Box other) {
        return overlaps(other)
                ? Optional.of(new Box(
                        Math.max(minX, other.minX),
                        Math.max(minY, other.minY),
                        Math.min(maxX, other.maxX),
                        Math.min(maxY, other.maxY)))
                : Optional.empty();
    }

    public Box grown(double margin) {
        return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
    }

    public boolean contains(Point p) {
        return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
    }

    /** Whether all of another lies inside, or on the edge. */
    public boolean contains(Box other) {
        return other.minX >= minX && other.maxX <= maxX && other.minY >= minY && other.maxY <= maxY;
    }

    /** The distance from a place to this box, 0 inside. */
    public double distance(Point p) {
        return gap(p, minX, minY, maxX, maxY);
    }

    /** The same without making a box: searches over thousands of segments ask this. */
    static double gap(Point p, double minX, double minY, double maxX, double maxY) {
        double dx = Math.max(0, Math.max(minX - p.x(), p.x() - maxX));
        double dy = Math.max(0, Math.max(minY - p.y(), p.y() - maxY));
        return Math.sqrt(dx * dx + dy * dy);
    }
}
