package easewright.pattern;

import java.util.List;
import java.util.OptionalDouble;

/** The wearer's measurements, as far as they are known. */
public record Body(String name, List<BodyMeasure> measures) {
    public static final Body UNKNOWN = new Body("", List.of());

    public Body {
        measures = List.copyOf(measures);
    }

    /** The body girth at a level, mm. */
    public OptionalDouble girth(String level) {
        for (BodyMeasure measure : measures) {
            if (measure.level().equals(level)) {
                return OptionalDouble.of(measure.mm());
            }
        }
        return OptionalDouble.empty();
    }
}
