package easewright.draft;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads measurements by their ISO 8559-1 names, whatever the capitals and hyphens. */
final class Wearer {
    private static final String GIRTH = " girth";

    private Wearer() {}

    /**
     * The measurement, mm.
     *
     * @throws DraftRefused if the body does not have it
     */
    static double measure(Body body, String name) {
        return find(body, name)
                .orElseThrow(() -> new DraftRefused("draft-measure-missing", Map.of("missing", List.of(name))));
    }

    /** Those of the measurements that the body does not have. */
    static List<String> missing(Body body, List<String> names) {
        List<String> missing = new ArrayList<>();
        for (String name : names) {
            if (find(body, name).isEmpty()) {
                missing.add(name);
            }
        }
        return missing;
    }

    /** By its name; a girth also by the level it was taken at, whatever it is called. */
    private static OptionalDouble find(Body body, String name) {
        String wanted = plain(name);
        Optional<BodyMeasure> named = body.measures().stream()
                .filter(m -> plain(m.name()).equals(wanted))
                .findFirst();
        if (named.isEmpty() && wanted.endsWith(GIRTH)) {
            String level = wanted.substring(0, wanted.length() - GIRTH.length());
            named = body.measures().stream()
                    .filter(m -> plain(m.level()).equals(level))
                    .findFirst();
        }
        return named.map(m -> OptionalDouble.of(m.mm())).orElse(OptionalDouble.empty());
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replaceAll("\\s+", " ");
    }
}
