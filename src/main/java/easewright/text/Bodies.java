package easewright.text;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Measurements of one wearer, or of one for each size.
 *
 * @param one    whose size is not said; {@link Body#UNKNOWN} if there is none
 * @param bySize those of each size
 * @param source where a size table was published; empty where people were measured
 * @param standing how far that may be trusted; empty likewise
 */
public record Bodies(Body one, Map<String, Body> bySize, String source, String standing) {
    public Bodies {
        bySize = Map.copyOf(bySize);
    }

    /** The pattern on these people in place of those it was for. */
    public Pattern on(Pattern pattern) {
        Map<String, Body> those = new LinkedHashMap<>();
        for (String size : PatternPart.sizes(pattern)) {
            Body body = bySize.get(size);
            if (body != null) {
                those.put(size, fitted(body, pattern));
            }
        }
        return pattern.withBody(fitted(one, pattern)).withBodies(those);
    }

    /** The body with each girth at the pattern's own name of its level, whatever the capitals. */
    private static Body fitted(Body body, Pattern pattern) {
        List<BodyMeasure> measures = new ArrayList<>();
        for (BodyMeasure m : body.measures()) {
            String level = pattern.levels().stream()
                    .map(Level::name)
                    .filter(name -> name.equalsIgnoreCase(m.level()))
                    .findFirst()
                    .orElse(m.level());
            measures.add(new BodyMeasure(m.name(), level, m.mm(), m.takenAt()));
        }
        return measures.isEmpty() ? Body.UNKNOWN : new Body(body.name(), measures);
    }
}
