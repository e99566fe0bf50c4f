package easewright.draft;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;

/** Reads measurements by their ISO 8559-1 names. */
final class Wearer {
    private Wearer() {}

    /**
     * The measurement, mm.
     *
     * @throws DraftRefused if the body does not have it
     */
    static double measure(Body body, String name) {
        return body.measures().stream()
                .filter(m -> m.name().equals(name))
                .mapToDouble(BodyMeasure::mm)
                .findFirst()
                .orElseThrow(() -> new DraftRefused("draft without a measurement called " + name));
    }
}
