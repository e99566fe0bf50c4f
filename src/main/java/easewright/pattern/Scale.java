package easewright.pattern;

import java.util.Optional;

/**
 * How drawing units became millimetres, and why that is believed.
 *
 * @param mmPerUnitX millimetres per user unit of the outermost drawing, across
 * @param mmPerUnitY the same, down
 * @param from       of a known line, what it was, where that is known
 */
public record Scale(double mmPerUnitX, double mmPerUnitY, Proof proof, Optional<From> from) {
    /** Grounds on which a scale is believed, best first. */
    public enum Proof {
        /** The user measured a line of known length. */
        KNOWN_LINE,
        /** The file states its physical size. */
        PHYSICAL_SIZE,
        /** No physical size: 96 units to the inch were assumed, and nothing measured may be trusted yet. */
        UNPROVED
    }

    /**
     * From what a scale was set: what was measured for it cannot prove it.
     *
     * @param words that stand beside it on the drawing; of any other line none
     */
    public record From(What what, String words) {
        /** What was measured. */
        public enum What {
            SQUARE,
            RULER,
            /** A line of a piece, or any other of which nothing is written on the drawing. */
            LINE
        }
    }

    /** One of which it is not known from what it was set. */
    public Scale(double mmPerUnitX, double mmPerUnitY, Proof proof) {
        this(mmPerUnitX, mmPerUnitY, proof, Optional.empty());
    }

    /** The same scale, set from something. */
    public Scale set(From what) {
        return new Scale(mmPerUnitX, mmPerUnitY, proof, Optional.of(what));
    }

    /** Whether the same place of a drawing is the same place in mm, believed alike; from whatever that was set. */
    public boolean isAs(Scale other) {
        return Double.compare(mmPerUnitX, other.mmPerUnitX) == 0
                && Double.compare(mmPerUnitY, other.mmPerUnitY) == 0
                && proof == other.proof;
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Scale s
                && Double.compare(mmPerUnitX, s.mmPerUnitX) == 0
                && Double.compare(mmPerUnitY, s.mmPerUnitY) == 0
                && proof == s.proof
                && from.equals(s.from);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(mmPerUnitX) + Double.hashCode(mmPerUnitY);
    }
}
