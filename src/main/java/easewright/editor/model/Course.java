package easewright.editor.model;

import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.pattern.Pattern;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The list of changes as it is shown and worked on: what each did, in words, and what may be done with it. The methods
 * that alter the list give the new list; {@link Session#recast} makes the pattern after it.
 *
 * @param steps oldest first
 */
public record Course(List<Step> steps, List<Line> lines) {
    public Course {
        steps = List.copyOf(steps);
        lines = List.copyOf(lines);
    }

    /**
     * One change.
     *
     * @param words    what it does, where and by how much
     * @param amount   as it stands in its field; empty where the change has no one amount
     * @param mayRise  whether it may be made before the one above it
     * @param maySink  whether it may be made after the one below it
     */
    public record Line(boolean on, String words, String amount, boolean mayRise, boolean maySink) {}

    public static Course of(Desk desk) {
        Pattern pattern = desk.pattern();
        Words words = desk.words();
        ChangeWords told = new ChangeWords(words);
        List<Step> steps = Step.course(pattern);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            OptionalDouble amount = step.amount();
            lines.add(new Line(
                    step.on(),
                    told.of(step.note(), pattern),
                    amount.isPresent() ? words.signed(amount.getAsDouble()) : "",
                    i > 0 && Replay.mayChangePlaces(steps.get(i - 1), step),
                    i < steps.size() - 1 && Replay.mayChangePlaces(step, steps.get(i + 1))));
        }
        return new Course(steps, lines);
    }

    public List<Step> switched(int step, boolean on) {
        return with(step, steps.get(step).switched(on));
    }

    /** With another amount at one step, mm. */
    public List<Step> withAmount(int step, double mm) {
        return with(step, steps.get(step).withAmount(mm));
    }

    public List<Step> without(int step) {
        List<Step> changed = new ArrayList<>(steps);
        changed.remove(step);
        return List.copyOf(changed);
    }

    /** With one step made before the one above it. */
    public List<Step> risen(int step) {
        List<Step> changed = new ArrayList<>(steps);
        Collections.swap(changed, step - 1, step);
        return List.copyOf(changed);
    }

    private List<Step> with(int step, Step other) {
        List<Step> changed = new ArrayList<>(steps);
        changed.set(step, other);
        return List.copyOf(changed);
    }

    /** Why a list was not made, in words, for the line that was worked on. */
    public String refused(StepRefused refused, List<Step> wanted, int worked, Desk desk) {
        Words words = desk.words();
        String why = words.problem(refused.why().code(), refused.why().values());
        boolean own = refused.note().equals(steps.get(worked).note())
                || (wanted.size() == steps.size()
                        && refused.note().equals(wanted.get(worked).note()));
        if (own) {
            return words.of("editor.changes.refused", Map.of("why", why));
        }
        String which = new ChangeWords(words).brief(refused.note(), desk.pattern());
        return words.of("editor.changes.refused-other", Map.of("which", which, "why", why));
    }
}
