package easewright.suggest;

/** Rounds what was measured off a drawing to what was meant. */
final class Rounding {
    /** A drawn distance this near to a round one was meant to be it, mm. */
    private static final double MEANT = 0.15;

    private Rounding() {}

    /** To the half millimetre or eighth of an inch that is near, else to 0.1 mm. */
    static double meant(double mm) {
        double half = Math.round(mm * 2) / 2.0;
        if (Math.abs(half - mm) <= MEANT) {
            return half;
        }
        double eighth = Math.round(mm / 25.4 * 8) * 25.4 / 8;
        return Math.abs(eighth - mm) <= MEANT ? eighth : Math.round(mm * 10) / 10.0;
    }
}
