package easewright.ease;

import java.util.OptionalDouble;

/**
 * One class of a table. Published bands leave holes (2 7/8 to 3 in): a value in a hole belongs to the upper band,
 * since it has passed the lower band's top.
 *
 * @param from lower end, mm, or percent of the body girth in a table of percentages
 * @param to   upper end, itself still in the band; empty for "over …"
 */
public record Band(String word, double from, OptionalDouble to) {}
