package easewright.alter;

/** Finds the amount at which something is met exactly. */
final class Root {
    private static final int STEPS = 40;

    private Root() {}

    /** By how much an amount misses. */
    interface Miss {
        double at(double amount) throws Refusal;
    }

    /**
     * The amount by which the miss becomes 0, by the secant; near to linear in all that is solved here, so that it is
     * met to the last digits in a few steps.
     *
     * @param atZero  the miss of amount 0
     * @param first   a first guess, not 0
     * @param close   how small the miss must become for the search to end early
     * @param allowed how small it must become at least
     * @param otherwise thrown where it is not met
     * @throws Refusal  also from the miss itself
     */
    static double of(Miss miss, double atZero, double first, double close, double allowed, Refusal otherwise)
            throws Refusal {
        double last = 0;
        double lastMiss = atZero;
        double now = first;
        double nowMiss = miss.at(now);
        double best = now;
        double bestMiss = Math.abs(nowMiss);
        for (int i = 0; i < STEPS && bestMiss > close; i++) {
            double slope = (nowMiss - lastMiss) / (now - last);
            if (slope == 0 || !Double.isFinite(slope)) {
                break;
            }
            last = now;
            lastMiss = nowMiss;
            now -= nowMiss / slope;
            nowMiss = miss.at(now);
            if (Math.abs(nowMiss) < bestMiss) {
                best = now;
                bestMiss = Math.abs(nowMiss);
            }
        }
        if (!(bestMiss <= allowed)) {
            throw otherwise;
        }
        return best;
    }

    /**
     * The amount between two others at which a miss that only grows becomes 0, by false position with the Illinois
     * weight, which keeps it between them.
     *
     * @param otherwise thrown where it does not lie between them
     */
    static double between(Miss miss, double low, double high, double close, Refusal otherwise) throws Refusal {
        double left = low;
        double right = high;
        double leftMiss = miss.at(low);
        double rightMiss = miss.at(high);
        if (leftMiss > 0 || rightMiss < 0) {
            throw otherwise;
        }
        double best = left;
        double bestMiss = Math.abs(leftMiss);
        int side = 0;
        for (int i = 0; i < 3 * STEPS && bestMiss > close && right > left; i++) {
            double middle = (left * rightMiss - right * leftMiss) / (rightMiss - leftMiss);
            double found = miss.at(middle);
            if (Math.abs(found) < bestMiss) {
                best = middle;
                bestMiss = Math.abs(found);
            }
            if (found > 0) {
                right = middle;
                rightMiss = found;
                leftMiss = side == 1 ? leftMiss / 2 : leftMiss;
                side = 1;
            } else {
                left = middle;
                leftMiss = found;
                rightMiss = side == -1 ? rightMiss / 2 : rightMiss;
                side = -1;
            }
        }
        return best;
    }
}
