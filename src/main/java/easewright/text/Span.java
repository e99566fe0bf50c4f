package easewright.text;

/**
 * A figure that is not the same everywhere, from the least to the greatest, to be shown as such: "1 cm to 1.2 cm".
 *
 * @param low  in what a plain figure under the same key would be in
 */
public record Span(double low, double high) {}
