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
     * @throws Refusal from the miss itself, or with the given code where it is not met
     */
    static double of(Miss miss, double atZero, double first, double close, double allowed, String code) throws Refusal {
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
            throw Refusal.of(code);
        }
        return best;
    }
}
