package easewright.ease;

import easewright.measure.Girth;
import easewright.pattern.Level;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ease at one level. Lengths in mm.
 *
 * @param girth         of the garment, with the level and, where there are several, the size and the limb
 * @param body          girth of the body, if known
 * @param ease          finished − body
 * @param percent       ease in percent of the body girth
 * @param classes       what each table that applies says
 * @param minimums      the least wearing ease that each source gives here; none for knits
 * @param stretchNeeded by how much the cloth must stretch at rest: body/finished − 1 in percent, never below 0; given
 *                      for knits and wherever the garment is smaller than the body by what is shown
 * @param wish          wanted ease
 * @param wishPercent   the same in percent of the body girth, where it was said so
 * @param missing       wish − ease: what must still be added (taken away if negative)
 */
public record EaseLine(
        Girth girth,
        OptionalDouble body,
        OptionalDouble ease,
        OptionalDouble percent,
        List<Classed> classes,
        List<Minimum> minimums,
        OptionalDouble stretchNeeded,
        OptionalDouble wish,
        OptionalDouble wishPercent,
        OptionalDouble missing) {
    public EaseLine {
        classes = List.copyOf(classes);
        minimums = List.copyOf(minimums);
    }

    public Level level() {
        return girth.level();
    }

    /** The size, where the pattern comes in several. */
    public Optional<String> size() {
        return girth.size();
    }

    public double finished() {
        return girth.finished();
    }

    /** The level's name, with the side where left and right have each their own. */
    public String name() {
        return girth.name();
    }

    /** Whether the other one is about the same level, size and limb. */
    public boolean sameAs(EaseLine other) {
        return girth.sameAs(other.girth);
    }
}
