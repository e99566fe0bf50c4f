package easewright.geom;

/**
 * A map of the plane that keeps straight lines straight, in SVG's order: x' = a x + c y + e, y' = b x + d y + f.
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
    public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

    public static Affine translation(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    public static Affine translation(Point by) {
        return translation(by.x(), by.y());
    }

    public static Affine scaling(double x, double y) {
        return new Affine(x, 0, 0, y, 0, 0);
    }

    /** A turn about a place, positive clockwise on screen. */
    public static Affine rotation(double radians, Point about) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        return new Affine(
                cos,
                sin,
                -sin,
                cos,
                about.x() - cos * about.x() + sin * about.y(),
                about.y() - sin * about.x() - cos * about.y());
    }

    public Point apply(Point p) {
        return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
    }

    /** Maps a displacement: the shift of the map is left out. */
    public Point applyToDirection(Point v) {
        return new Point(a * v.x() + c * v.y(), b * v.x() + d * v.y());
    }

    /** The map that first does {@code inner} and then this: the matrix product this · inner. */
    public Affine after(Affine inner) {
        return new Affine(
                a * inner.a + c * inner.b,
                b * inner.a + d * inner.b,
                a * inner.c + c * inner.d,
                b * inner.c + d * inner.d,
                a * inner.e + c * inner.f + e,
                b * inner.e + d * inner.f + f);
    }

    public double determinant() {
        return a * d - b * c;
    }

    /** Whether the map flattens the plane, or nearly so, and cannot be undone. */
    public boolean isSingular() {
        double size = Math.max(Math.max(Math.abs(a), Math.abs(b)), Math.max(Math.abs(c), Math.abs(d)));
        return !Double.isFinite(size)
                || !Double.isFinite(e)
                || !Double.isFinite(f)
                || Math.abs(determinant()) <= 1e-12 * size * size;
    }

    /**
     * The map that undoes this one.
     *
     * @throws ArithmeticException if the map {@linkplain #isSingular() cannot be undone}
     */
    public Affine inverse() {
        if (isSingular()) {
            throw new ArithmeticException("This map flattens the plane and cannot be undone");
        }
        double det = determinant();
        return new Affine(d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
    }

    /** Spelt out for speed, as in {@link Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Affine m
                && Double.compare(a, m.a) == 0
                && Double.compare(b, m.b) == 0
                && Double.compare(c, m.c) == 0
                && Double.compare(d, m.d) == 0
                && Double.compare(e, m.e) == 0
                && Double.compare(f, m.f) == 0;
    }

    @Override
    public int hashCode() {
        int linear = 31 * (31 * Double.hashCode(a) + Double.hashCode(b)) + Double.hashCode(c);
        return 31 * (31 * (31 * linear + Double.hashCode(d)) + Double.hashCode(e)) + Double.hashCode(f);
    }
}
