package easewright.ease;

import java.util.OptionalDouble;

/**
 * One class of knit cloth in one source.
 *
 * @param stretch   the stretch across that defines it, percent; empty where the source gives a reduction only
 * @param reduction by how much patterns for it are reduced, percent, if the source says so
 */
public record StretchClass(
        String word, OptionalDouble stretch, OptionalDouble reduction, String source, String standing) {}
