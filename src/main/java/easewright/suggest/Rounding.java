package easewright.suggest;

/** Rounds what was measured off a drawing to what was meant. */
final class Rounding {
    /** A drawn distance this near to a round one was meant to be it, mm. */
    private static final double MEANT = 0.15;

    /** Lines drawn at an eighth of an inch hit it as nearly as this, mm; 5/8 in is no 16 mm then. */
    private static final double HIT = 0.02;

    private Rounding() {}

    /** To the half millimetre or eighth of an inch that is near, else to 0.1 mm. */
    static double meant(double mm) {
        double half = Math.round(mm * 2) / 2.0;
        double eighth = Math.round(mm / 25.4 * 8) * 25.4 / 8;
        boolean isEighth = Math.abs(eighth - mm) <= HIT && Math.abs(eighth - mm) < Math.abs(half - mm);
        if (!isEighth && Math.abs(half - mm) <= MEANT) {
            return half;
        }
        return Math.abs(eighth - mm) <= MEANT ? eighth : Math.round(mm * 10) / 10.0;
    }
}
