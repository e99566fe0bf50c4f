package easewright.pattern;

/**
 * How drawing units became millimetres, and why that is believed.
 *
 * @param mmPerUnitX millimetres per user unit of the outermost drawing, across
 * @param mmPerUnitY the same, down
 */
public record Scale(double mmPerUnitX, double mmPerUnitY, Proof proof) {
    /** Grounds on which a scale is believed, best first. */
    public enum Proof {
        /** The user measured a line of known length. */
        KNOWN_LINE,
        /** The file states its physical size. */
        PHYSICAL_SIZE,
        /** No physical size: 96 units to the inch were assumed, and nothing measured may be trusted yet. */
        UNPROVED
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Scale s
                && Double.compare(mmPerUnitX, s.mmPerUnitX) == 0
                && Double.compare(mmPerUnitY, s.mmPerUnitY) == 0
                && proof == s.proof;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(mmPerUnitX) + Double.hashCode(mmPerUnitY);
    }
}
