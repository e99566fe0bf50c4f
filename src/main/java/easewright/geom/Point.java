package easewright.geom;

/** A place, or a displacement, in the plane. Millimetres, y down. Both coordinates are finite. */
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    /**
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("Not a place: " + x + ", " + y);
        }
        // Minus zero is the same place as zero and must be equal to it.
        x += 0.0;
        y += 0.0;
    }

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** The z part of the cross product: positive where {@code other} lies clockwise (on screen) of this. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    public double norm() {
        return Math.sqrt(x * x + y * y);
    }

    public double distance(Point other) {
        return Math.sqrt((x - other.x) * (x - other.x) + (y - other.y) * (y - other.y));
    }

    /** The place at fraction {@code t} of the way to {@code other}; exactly this at 0 and exactly other at 1. */
    public Point towards(Point other, double t) {
        if (t == 1) {
            return other;
        }
        return new Point(x + (other.x - x) * t, y + (other.y - y) * t);
    }

    /**
     * The same direction with length 1.
     *
     * @throws ArithmeticException if this is the zero displacement
     */
    public Point unit() {
        double norm = norm();
        if (norm == 0) {
            throw new ArithmeticException("A displacement of length 0 has no direction");
        }
        return new Point(x / norm, y / norm);
    }

    /** This displacement turned by {@code radians}, positive clockwise on screen. */
    public Point turned(double radians) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        return new Point(x * cos - y * sin, x * sin + y * cos);
    }

    /** This displacement turned a quarter clockwise on screen, exactly. */
    public Point quarterTurned() {
        return new Point(-y, x);
    }

    /** Spelt out, since what Java makes of itself for a record takes a short run some 10 ms to get ready. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Point p && Double.compare(x, p.x) == 0 && Double.compare(y, p.y) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(x) + Double.hashCode(y);
    }
}
