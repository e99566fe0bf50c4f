package easewright.ease;

import easewright.pattern.Level;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The ease at one level. Lengths in mm.
 *
 * @param body          girth of the body, if known
 * @param finished      girth of the garment
 * @param ease          finished − body
 * @param percent       ease in percent of the body girth
 * @param classes       what each table that applies says
 * @param minimums      the least wearing ease that each source gives here; none for knits
 * @param stretchNeeded by how much the cloth must stretch at rest: body/finished − 1 in percent, never below 0; given
 *                      for knits and wherever the garment is smaller than the body
 * @param wish          wanted ease
 * @param missing       wish − ease: what must still be added (taken away if negative)
 */
public record EaseLine(
        Level level,
        OptionalDouble body,
        double finished,
        OptionalDouble ease,
        OptionalDouble percent,
        List<Classed> classes,
        List<Minimum> minimums,
        OptionalDouble stretchNeeded,
        OptionalDouble wish,
        OptionalDouble missing) {
    public EaseLine {
        classes = List.copyOf(classes);
        minimums = List.copyOf(minimums);
    }
}
