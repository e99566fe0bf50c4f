/**
 * Drafts the sample garments from body measurements by published drafting rules, and writes them as drawings. Each
 * rule names its source and its standing: <em>read</em> (a stored public copy was read), <em>from memory</em>, or
 * <em>common practice</em>. Millimetres; a piece is drafted with its centre line at x = 0 and y counted down from the
 * waist (skirt, trousers) or from the nape (bodice, top), then laid out on the sheet.
 */
package easewright.draft;
