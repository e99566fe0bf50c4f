package easewright.pattern;

/**
 * One measurement of the wearer, mm.
 *
 * @param name    ISO 8559-1 name where there is one ("Hip girth"), else the user's own
 * @param level   name of the level whose girth it is; empty for lengths
 * @param mm      the measurement
 * @param takenAt in words, where on the body it was taken ("narrowest", "20 cm below waist"); may be empty
 */
public record BodyMeasure(String name, String level, double mm, String takenAt) {
    /**
     * @throws IllegalArgumentException if the name is blank or the measurement is not above 0
     */
    public BodyMeasure {
        Names.require(name, "measurement");
        if (!(mm > 0 && Double.isFinite(mm))) {
            throw new Unfit("mark-measure-none", "Measurement " + name + " must be above 0");
        }
    }
}
