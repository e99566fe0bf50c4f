package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

/** The worst error of a property and the seed that gave it; said aloud with {@code -Dworst=say}. */
final class Worst {
    private final String what;
    private double error;
    private long seed;
    private int cases;

    Worst(String what) {
        this.what = what;
    }

    void meet(long caseSeed, double caseError) {
        cases++;
        if (!(caseError <= error)) {
            error = caseError;
            seed = caseSeed;
        }
    }

    /** Fails where the worst error is above the bound, or nothing was met. */
    void within(double bound) {
        if ("say".equals(System.getProperty("worst"))) {
            System.out.println(what + ": " + cases + " cases, worst " + error + " (seed " + seed + ")");
        }
        assertThat(cases).as(what).isPositive();
        assertThat(error).as("%s, seed %d", what, seed).isLessThanOrEqualTo(bound);
    }
}
