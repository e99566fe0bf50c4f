package easewright.alter;

import easewright.measure.StitchLines;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.Optional;

/** One change to a pattern, with all its settings. */
public sealed interface Alteration permits ByAmount, HingedSlash, SpreadSlashes, Trued, Within {
    /** The record that is kept in the pattern; {@link Ways#from} makes an equal alteration of it. */
    ChangeNote note();

    /** The same change by another amount: what the way's {@link Way#amount()} setting says, mm; itself if it has none. */
    Alteration withAmount(double mm);

    /** The change that takes this one back when made on its result; empty where there is none. */
    Optional<Alteration> opposite();

    /**
     * Makes the change.
     *
     * @throws Refusal if it cannot be done as asked; the given pattern is never altered
     */
    default Altered apply(Pattern pattern) throws Refusal {
        return apply(pattern, new StitchLines());
    }

    /**
     * The same where stitching lines are known already; those found on the way are added.
     *
     * @throws Refusal as {@link #apply(Pattern)}
     */
    default Altered apply(Pattern pattern, StitchLines lines) throws Refusal {
        if (note().settings().keySet().stream().noneMatch(Scope.SIZE::equals) && PatternPart.severalSizes(pattern)) {
            throw Refusal.of("size-needed").with("known", PatternPart.sizes(pattern));
        }
        Scope.requireOneLimb(note(), pattern);
        return make(pattern, lines);
    }

    /**
     * Makes the change on the pieces of one garment.
     *
     * @throws Refusal as {@link #apply(Pattern)}
     */
    Altered make(Pattern garment) throws Refusal;

    /**
     * The same where stitching lines are known already.
     *
     * @throws Refusal as {@link #apply(Pattern)}
     */
    default Altered make(Pattern garment, StitchLines lines) throws Refusal {
        return make(garment);
    }
}
