package easewright.ease;

import java.util.OptionalDouble;

/**
 * The least ease for wearing that one source gives for a region of the body, woven cloth.
 *
 * @param region   the kind of level in words ("high hip"), or a region without girth ("crotch depth")
 * @param low      mm
 * @param high     upper end of the range, if a range is given, mm
 * @param garment  garments it is for, with commas between
 * @param note     other conditions; may be empty
 * @param source   where it was published
 * @param standing published, second-hand, from memory, common practice
 */
public record Minimum(
        String region, double low, OptionalDouble high, String garment, String note, String source, String standing) {
    /**
     * The finest division of a tape in inches, 1/16 in, mm. A shortfall of no more is lost in measuring and in the
     * rounding between inches and centimetres, and careful makers keep their patterns no truer (Threads 200, in
     * docs/sources.md 3).
     */
    public static final double READ_WITHIN = 25.4 / 16;

    /** Whether an ease (mm) falls short of it by more than can be measured. */
    public boolean isMissedBy(double ease) {
        return ease < low - READ_WITHIN - 1e-6;
    }

    /**
     * Where an ease stands in a picture, mm: one that is a little less than the least figure and yet counts as met beside
     * that, since what no tape tells apart is not to look as if it fell short.
     */
    public static double drawn(double ease, OptionalDouble least) {
        double low = least.orElse(ease);
        return ease < low && ease >= low - READ_WITHIN - 1e-6 ? low : ease;
    }

    /** Whether an ease (mm) is a little less than the figure itself and yet counts as met. */
    public boolean isNearlyMetBy(double ease) {
        return ease < low - 1e-6 && !isMissedBy(ease);
    }
}
