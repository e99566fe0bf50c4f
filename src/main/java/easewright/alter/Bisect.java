package easewright.alter;

/** Finds how much of a change would still work. */
final class Bisect {
    private static final int HALVINGS = 20;

    private Bisect() {}

    /** A change tried with another amount. */
    interface Trial {
        void with(double amount) throws Refusal;
    }

    /** The refusal, with the largest amount in the same direction that the trial lets pass, if it is not next to 0. */
    static Refusal largest(Refusal why, double amount, Trial trial) {
        return largest(why, amount, HALVINGS, trial);
    }

    /**
     * The same to within the amount halved so many times, for trials that take long.
     */
    static Refusal largest(Refusal why, double amount, int halvings, Trial trial) {
        double works = 0;
        double fails = amount;
        for (int i = 0; i < halvings; i++) {
            double middle = (works + fails) / 2;
            if (passes(trial, middle)) {
                works = middle;
            } else {
                fails = middle;
            }
        }
        return why.withLargest(works);
    }

    private static boolean passes(Trial trial, double amount) {
        try {
            trial.with(amount);
            return true;
        } catch (Refusal tooMuch) {
            return false;
        }
    }
}
