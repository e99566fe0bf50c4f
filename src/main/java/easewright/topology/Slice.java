package easewright.topology;

/** One stretch of cloth under a straight level: from and to along the level, mm from the point it goes through. */
public record Slice(double from, double to) {
    public double width() {
        return to - from;
    }

    /** How far the place lies outside the stretch, 0 inside, mm. */
    public double distance(double along) {
        return Math.max(0, Math.max(from - along, along - to));
    }

    /** The width the two stretches share, mm. */
    public double shared(Slice other) {
        return Math.max(0, Math.min(to, other.to) - Math.max(from, other.from));
    }
}
