package easewright.editor.mark;

import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import easewright.svg.SvgProblem;

/** Brings the file on the table to another scale. */
final class ScaleSetting {
    private static final double SMALLEST_MM_PER_UNIT = 1e-4;
    private static final double LARGEST_MM_PER_UNIT = 1000;

    private ScaleSetting() {}

    /**
     * One step that can be undone; tells at the foot of the table if the file cannot take the scale.
     *
     * @param statedToo whether lengths stated in numbers, such as allowances, change along
     * @throws IllegalArgumentException if the scale cannot be right
     */
    static void set(Session session, double mmPerUnit, Scale.From from, boolean statedToo) {
        if (!(mmPerUnit >= SMALLEST_MM_PER_UNIT && mmPerUnit <= LARGEST_MM_PER_UNIT)) {
            throw new IllegalArgumentException("No drawing has " + mmPerUnit + " mm to the unit");
        }
        session.desk().file().ifPresent(file -> {
            try {
                Pattern present = session.desk().pattern();
                Pattern alone = file.svg().atScale(present, mmPerUnit, statedToo);
                Pattern scaled = alone.withScale(alone.scale().set(from));
                if (statedToo && file.svg().resting().isPresent()) {
                    session.reread(file.svg().withStatedAtScale(mmPerUnit), scaled);
                } else {
                    session.edit(scaled);
                }
            } catch (SvgProblem e) {
                session.say(true, "problem." + e.code(), e.values());
            }
        });
    }
}
