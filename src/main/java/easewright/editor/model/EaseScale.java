package easewright.editor.model;

import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.Minimum;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the small bar of a level shows, all in mm of ease on one scale from {@code from} to {@code to}.
 *
 * @param least   the smallest ease any source calls enough for wearing
 * @param bandFrom where the class of the first table begins, {@code bandTo} where it ends
 */
public record EaseScale(
        double from,
        double to,
        OptionalDouble least,
        OptionalDouble bandFrom,
        OptionalDouble bandTo,
        OptionalDouble now,
        OptionalDouble wish) {
    /**
     * @param classes what is said of it
     * @param asked   the least ease for wearing
     */
    static EaseScale of(EaseLine line, List<Classed> classes, List<Minimum> asked) {
        OptionalDouble least = asked.stream().mapToDouble(Minimum::low).min();
        OptionalDouble bandFrom = OptionalDouble.empty();
        OptionalDouble bandTo = OptionalDouble.empty();
        for (Classed classed : classes) {
            // A table of percentages has no fixed place on a bar of lengths.
            if (bandFrom.isEmpty()
                    && !classed.table().percent()
                    && classed.band().isPresent()) {
                bandFrom = OptionalDouble.of(classed.band().get().from());
                bandTo = classed.band().get().to();
            }
        }
        double high = 60;
        double low = 0;
        for (OptionalDouble value : new OptionalDouble[] {least, bandFrom, bandTo, line.ease(), line.wish()}) {
            if (value.isPresent()) {
                high = Math.max(high, value.getAsDouble() * 1.15);
                low = Math.min(low, value.getAsDouble() * 1.15);
            }
        }
        return new EaseScale(low, high, least, bandFrom, bandTo, line.ease(), line.wish());
    }

    /** Where a value lies on the bar, from 0 to 1. */
    public double share(double mm) {
        return Math.max(0, Math.min(1, (mm - from) / (to - from)));
    }
}
