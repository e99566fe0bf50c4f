package easewright.editor.model;

import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;

/**
 * The changes of a pattern made anew in another course, or why that cannot be.
 *
 * @param from    the pattern of which it was made
 * @param made    empty where it was refused
 * @param why     it was refused, in words; empty where it was not
 * @param leaning the later changes that would have to go, where that is why
 */
public record Recast(Pattern from, Optional<Pattern> made, String why, Optional<Leaning> leaning) {
    /**
     * Takes a moment, and of much seconds: for a thread of its own.
     *
     * @param course as it stands
     * @param worked the line worked on
     */
    public static Recast of(Desk desk, Course course, List<Step> wanted, int worked) {
        Pattern from = desk.pattern();
        try {
            Pattern made = new Replay(from, desk.history().states()).to(wanted);
            return new Recast(from, Optional.of(made), "", Optional.empty());
        } catch (StepRefused refused) {
            Optional<Leaning> leaning = course.leaning(wanted, worked, desk);
            String why = leaning.map(l -> l.words(desk)).orElseGet(() -> course.refused(refused, wanted, worked, desk));
            return new Recast(from, Optional.empty(), why, leaning);
        }
    }
}
