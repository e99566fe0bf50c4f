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

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Body b && name.equals(b.name) && measures.equals(b.measures);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + measures.hashCode();
    }
}
