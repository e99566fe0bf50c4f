package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Segment;

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

    /** How far the places of one outline lie from another at most, mm. */
    static double apart(Outline one, Outline other) {
        double most = 0;
        for (Segment s : one.segments()) {
            for (int i = 0; i < 8; i++) {
                most = Math.max(most, other.nearest(s.at(i / 8.0)).distance());
            }
        }
        return most;
    }
}
