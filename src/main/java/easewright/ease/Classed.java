package easewright.ease;

import java.util.Optional;

/** What one table says of an ease. The word must never be shown without its number and its table's source. */
public record Classed(EaseTable table, Where where, Optional<Band> band) {
    /** Where the ease lies in the table. */
    public enum Where {
        BELOW,
        WITHIN,
        ABOVE
    }

    /** The table's word for it; empty where the ease lies below the lowest or above the highest class. */
    public String word() {
        return band.map(Band::word).orElse("");
    }
}
