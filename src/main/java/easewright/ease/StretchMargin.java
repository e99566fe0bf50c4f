package easewright.ease;

/**
 * The share of a cloth's stretch that a garment may use up at rest, so that enough is left to move in. No standard
 * gives one; it is a setting with its grounds beside it.
 *
 * @param atRestPercent percent of the cloth's stretch
 */
public record StretchMargin(double atRestPercent, String source, String standing) {}
