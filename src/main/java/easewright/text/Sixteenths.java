package easewright.text;

/**
 * Two lengths in inches that one sentence or row compares, all in sixteenths. What they are off, and what one is meant to be
 * longer by, are told of themselves, so that each is the same figure wherever it stands. The lengths follow: where rounding
 * each would leave another difference, the one that is nearest to it is told a sixteenth beside that.
 *
 * @param first  sixteenths, as all of them
 * @param second of the other
 * @param ease   what the first is meant to be longer by
 * @param off    what it is longer by beyond that
 */
record Sixteenths(long first, long second, long ease, long off) {
    private static final double STEP = 25.4 / Lengths.SIXTEENTHS;

    static Sixteenths of(double first, double second, double ease) {
        long eased = parts(ease);
        long off = parts(first - second - ease);
        long one = parts(first);
        long other = parts(second);
        while (one - other != eased + off) {
            int step = one - other < eased + off ? 1 : -1;
            if (strays(first, one + step) <= strays(second, other - step)) {
                one += step;
            } else {
                other -= step;
            }
        }
        return new Sixteenths(one, other, eased, off);
    }

    /** The same two before a change, where the one that was left alone is told as it is afterwards. */
    static Sixteenths before(double first, double second, double ease, boolean sameFirst, Sixteenths after) {
        Sixteenths alone = of(first, second, ease);
        long apart = alone.ease + alone.off;
        return sameFirst
                ? new Sixteenths(after.first, after.first - apart, alone.ease, alone.off)
                : new Sixteenths(after.second + apart, after.second, alone.ease, alone.off);
    }

    long more() {
        return first - second;
    }

    /** How far from the truth a length is then told, in sixteenths. */
    private static double strays(double mm, long told) {
        return Math.abs(mm) < Lengths.nothing(LengthUnit.MM) ? Double.MAX_VALUE : Math.abs(mm / STEP - told);
    }

    static double mm(long parts) {
        return parts * STEP;
    }

    /** Halves away from nothing. */
    private static long parts(double mm) {
        return (long) Math.signum(mm) * Lengths.steps(Math.abs(mm), STEP);
    }
}
