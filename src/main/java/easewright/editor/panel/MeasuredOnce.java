package easewright.editor.panel;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * How high something is at a width, pixels. Around it a layout asks several times, and words that wrap are measured anew
 * each time: while a seam is pulled that is done in every picture. The parts of a page ask at two or three widths: with
 * the margins around it, without them, and at none.
 *
 * <p>What holds such heights forgets them at two moments: when a layout is asked for, and when its own is done, since a part
 * that becomes higher while it is given its place asks for none: the toolkit keeps that to the part.
 */
final class MeasuredOnce {
    private final Map<Double, Double> heights = new HashMap<>();

    /**
     * @param measure gives the height at a width
     */
    double at(double asked, DoubleUnaryOperator measure) {
        Double known = heights.get(asked);
        if (known == null) {
            known = measure.applyAsDouble(asked);
            heights.put(asked, known);
        }
        return known;
    }

    /**
     * What is in it may be other by now.
     *
     * @param heights not there yet where the toolkit asks for a layout while it still makes what they are of
     */
    static void forget(MeasuredOnce... heights) {
        for (MeasuredOnce each : heights) {
            if (each != null) {
                each.heights.clear();
            }
        }
    }
}
