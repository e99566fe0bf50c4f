package easewright.editor.model;

import easewright.text.LengthUnit;

/** Amounts as people who sew say them: whole and half centimetres, halves, quarters and eighths of an inch. In mm. */
public final class RoundAmounts {
    private static final double[] METRIC = {1, 5, 10, 20, 50};
    private static final double[] INCH = {25.4 / 16, 25.4 / 8, 25.4 / 4, 25.4 / 2, 25.4};

    /** What lies as near to a round amount is that amount; parts of a step. */
    private static final double SAME = 1e-6;

    private RoundAmounts() {}

    /** The step of a press on less or more: half a centimetre, or an eighth of an inch. */
    public static double step(LengthUnit unit) {
        return unit == LengthUnit.INCH ? 25.4 / 8 : 5;
    }

    /**
     * The finest step of which each can be come to by a hand.
     *
     * @param finest the least by which the hand can change the amount, mm
     */
    static double step(double finest, LengthUnit unit) {
        double[] steps = unit == LengthUnit.INCH ? INCH : METRIC;
        for (double step : steps) {
            if (step >= finest) {
                return step;
            }
        }
        return steps[steps.length - 1];
    }

    static double nearest(double amount, double step) {
        return unsigned(Math.round(amount / step) * step);
    }

    /**
     * The next round amount.
     *
     * @param up whether a larger one is meant
     */
    public static double next(double amount, double step, boolean up) {
        double steps = amount / step;
        double next = up ? Math.floor(steps + SAME) + 1 : Math.ceil(steps - SAME) - 1;
        return unsigned(next * step);
    }

    /** There is no less than nothing of nothing. */
    private static double unsigned(double amount) {
        return amount == 0 ? 0 : amount;
    }
}
