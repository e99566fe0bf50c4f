package easewright.text;

import easewright.pattern.Body;
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
}
