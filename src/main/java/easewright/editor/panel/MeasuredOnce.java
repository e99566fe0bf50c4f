package easewright.editor.panel;

import java.util.function.DoubleUnaryOperator;

/**
 * How high something is at a width, pixels. Around it a layout asks several times, and words that wrap are measured anew
 * each time: while a seam is pulled that is done in every picture.
 */
final class MeasuredOnce {
    private double width = Double.NaN;
    private double height;

    /**
     * @param measure gives the height at a width
     */
    double at(double asked, DoubleUnaryOperator measure) {
        if (asked != width) {
            height = measure.applyAsDouble(asked);
            width = asked;
        }
        return height;
    }

    /** What is in it may be other by now. */
    void forget() {
        width = Double.NaN;
    }
}
