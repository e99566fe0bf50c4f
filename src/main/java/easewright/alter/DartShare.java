package easewright.alter;

/**
 * A dart that takes part in a change.
 *
 * @param piece  id or name of the piece
 * @param weight how large a part of the whole change it takes, relative to the other darts
 */
public record DartShare(String piece, String dart, double weight) {
    /**
     * @throws IllegalArgumentException unless the weight is a number above 0
     */
    public DartShare {
        if (!(weight > 0 && Double.isFinite(weight))) {
            throw new IllegalArgumentException("The share of dart " + dart + " must be above 0");
        }
    }

    public static DartShare of(String piece, String dart) {
        return new DartShare(piece, dart, 1);
    }

    /** {@code piece/dart}, as it is kept in a record. */
    String path() {
        return piece + "/" + dart;
    }
}
