package easewright.editor.model;

import java.util.OptionalDouble;

/** The hand test for recovery: the fold that was stretched is let go, and measured again after a minute. */
public final class RecoveryTest {
    private RecoveryTest() {}

    /**
     * How much of the stretch the cloth takes back, 100·(L1 − L2)/(L1 − L0) percent (docs/sources.md 5); empty if it
     * cannot have come out so (shorter than it was marked, longer than it was stretched, or not stretched at all).
     *
     * @param restedMm  L2
     * @param stretched by how much it was stretched, percent
     * @param markedMm  L0
     */
    public static OptionalDouble percent(double restedMm, double stretched, double markedMm) {
        double gained = markedMm * stretched / 100;
        double percent = 100 * (markedMm + gained - restedMm) / gained;
        return gained > 0 && percent >= 0 && percent <= 100 ? OptionalDouble.of(percent) : OptionalDouble.empty();
    }

    /** The length to which the marked one comes back, mm. */
    public static double rested(double recovery, double stretched, double markedMm) {
        return markedMm * (1 + stretched / 100 * (1 - recovery / 100));
    }
}
