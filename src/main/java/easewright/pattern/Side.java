package easewright.pattern;

/** A side of the garment, as the wearer has it. */
public enum Side {
    /** Both: what is drawn is cut alike for either side. */
    BOTH,
    LEFT,
    RIGHT;

    /** The other side; both for both. */
    public Side other() {
        return switch (this) {
            case BOTH -> BOTH;
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
        };
    }

    /** Whether something of this side is there when a side is looked at. */
    public boolean belongsTo(Side looked) {
        return this == BOTH || looked == BOTH || this == looked;
    }
}
