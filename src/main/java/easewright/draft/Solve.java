package easewright.draft;

import java.util.function.DoubleUnaryOperator;

/** Finds the setting of a draft that makes a length come out as wanted, as truing does with ruler and eraser. */
final class Solve {
    private Solve() {}

    /**
     * The x between low and high at which {@code measure} is {@code wanted}.
     *
     * @throws DraftRefused if the measure does not pass the wanted value between the two
     */
    static double when(DraftLine what, DoubleUnaryOperator measure, double wanted, double low, double high) {
        double atLow = measure.applyAsDouble(low) - wanted;
        double atHigh = measure.applyAsDouble(high) - wanted;
        if (atLow * atHigh > 0) {
            throw DraftRefused.line(what);
        }
        double from = low;
        double to = high;
        for (int i = 0; i < 200 && Math.abs(to - from) > 1e-13 * (1 + Math.abs(to)); i++) {
            double middle = (from + to) / 2;
            double miss = measure.applyAsDouble(middle) - wanted;
            if (miss == 0) {
                return middle;
            }
            if ((miss > 0) == (atLow > 0)) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return (from + to) / 2;
    }
}
