/**
 * The alterations: what changes a pattern, by how much, and nothing else. Every {@link easewright.alter.Alteration}
 * is an immutable record of its settings with one {@code apply}; it gives a new pattern or a
 * {@link easewright.alter.Refusal}, never half a change.
 *
 * <p>Promises: the finished girth changes by the amount asked to 0.01 mm (in practice 1e-6); an amount of 0 returns
 * the very pattern it was given; segments outside the fixed points stay the same objects; the result is a valid
 * outline; protected edges keep their place unless the caller accepts otherwise, and then a finding says by how much
 * they drifted. All of it is meant of the stitching line, also where the drawn line is the cutting line. Lengths are
 * millimetres. What takes a change back restores the outline within 1e-6 mm where anything does.
 *
 * <p>{@link easewright.alter.Ways} is the one list of all ways; {@link easewright.alter.SettingText} reads their settings
 * as a person writes them, {@link easewright.alter.AllSizes} for all sizes of a nest; {@link easewright.alter.Coupled}
 * says what a change asks of the pieces sewn to the changed one, {@link easewright.alter.SeamMatch} what can be done about
 * a seam that does not fit, however that came.
 *
 * <p>Where to look:
 *
 * <ul>
 *   <li>displacing a run of an outline: {@code Shift}, {@code ShiftBuilder}, {@code Carry}; the exact amount is found by
 *       {@code Exact}, {@code Root} and {@code Bisect}; seams by {@code SeamWork}, both seams alike by {@code Evening}
 *   <li>cutting a piece and moving or turning a part: {@code Parting}, {@code PartMove}, {@code Slashed}, {@code Turned},
 *       {@code SlashWork}
 *   <li>darts: {@code DartWork}, {@code IntakeChange}, {@code DartMouth}, {@code DartSlide}, {@code LedOn}, {@code FoldedOver};
 *       sleeves: {@code Sleeve}, {@code SleeveShape}
 *   <li>truing: {@link easewright.alter.Truing} is the door, one {@code …Truer} a matter gives strokes ({@code Stroke}),
 *       worked out on {@code SewnCopy} and drawn by {@code Redraw}
 *   <li>the record: {@link easewright.alter.Settings}, {@link easewright.alter.Replay}, {@code Retrace}; sizes and sides:
 *       {@code Scope}, {@code Within}, {@code OneSide}
 * </ul>
 */
package easewright.alter;
