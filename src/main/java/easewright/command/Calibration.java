package easewright.command;

import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.Unreadable;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The user's own word on the scale: how long one unit of the drawing is, or how long a drawn element is. Of a closed
 * element (a test square) the width is meant.
 */
record Calibration(String text, Optional<String> element, double mm) {
    private static final double SMALLEST_MM_PER_UNIT = 1e-4;
    private static final double LARGEST_MM_PER_UNIT = 1000;

    /** Reads {@code 0.2646mm} or {@code test-line=100mm}. */
    static Calibration of(String text, Typed typed) throws Trouble {
        int equals = text.lastIndexOf('=');
        Optional<String> element = equals < 0
                ? Optional.empty()
                : Optional.of(text.substring(0, equals).strip());
        try {
            double mm = typed.mm(text.substring(equals + 1));
            if (mm > 0) {
                return new Calibration(text, element, mm);
            }
        } catch (Unreadable e) {
            throw new Trouble("scale-form", Map.of("text", text));
        }
        throw new Trouble("scale-form", Map.of("text", text));
    }

    /** The same file read at this scale. */
    SvgFile apply(SvgFile file) throws Trouble, SvgProblem {
        double mmPerUnit = mm;
        if (element.isPresent()) {
            OptionalDouble drawn = file.drawnLength(element.get());
            mmPerUnit = file.unitFor(
                    drawn.orElseThrow(() -> new Trouble("scale-element", Map.of("id", element.get()))), mm);
        }
        if (!(mmPerUnit >= SMALLEST_MM_PER_UNIT && mmPerUnit <= LARGEST_MM_PER_UNIT)) {
            throw new Trouble("scale-range", Map.of("text", text, "amount.number", mmPerUnit));
        }
        return file.reread(file.options().withScale(mmPerUnit));
    }
}
