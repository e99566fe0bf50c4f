package easewright.editor.model;

import easewright.alter.OneChange;
import easewright.alter.Scope;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.pattern.Pattern;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The list of changes as it is shown and worked on: what each did, in words, and what may be done with it. The methods
 * that alter the list give the new list; {@link Recast} makes the pattern after it.
 *
 * @param changes oldest first, one for each line; what was made alike in several sizes is one
 */
public record Course(List<OneChange> changes, List<Line> lines) {
    public Course {
        changes = List.copyOf(changes);
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
        List<OneChange> changes = OneChange.course(Step.course(pattern));
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            OneChange change = changes.get(i);
            OptionalDouble amount = change.amount();
            lines.add(new Line(
                    change.on(),
                    told.of(change, pattern),
                    amount.isPresent() ? words.signed(amount.getAsDouble()) : "",
                    i > 0 && OneChange.mayChangePlaces(changes.get(i - 1), change),
                    i < changes.size() - 1 && OneChange.mayChangePlaces(change, changes.get(i + 1))));
        }
        return new Course(changes, lines);
    }

    /** All records, oldest first. */
    public List<Step> steps() {
        return steps(changes);
    }

    private static List<Step> steps(List<OneChange> changes) {
        return changes.stream().flatMap(c -> c.steps().stream()).toList();
    }

    public List<Step> switched(int line, boolean on) {
        return with(line, changes.get(line).switched(on));
    }

    /** With another amount of one change, mm. */
    public List<Step> withAmount(int line, double mm) {
        return with(line, changes.get(line).withAmount(mm));
    }

    public List<Step> without(int line) {
        List<OneChange> changed = new ArrayList<>(changes);
        changed.remove(line);
        return steps(changed);
    }

    /** With one change made before the one above it. */
    public List<Step> risen(int line) {
        List<OneChange> changed = new ArrayList<>(changes);
        Collections.swap(changed, line - 1, line);
        return steps(changed);
    }

    private List<Step> with(int line, OneChange other) {
        List<OneChange> changed = new ArrayList<>(changes);
        changed.set(line, other);
        return steps(changed);
    }

    /**
     * The later changes that would have to go so that a list that was refused can be made.
     *
     * @param worked the line that was worked on
     */
    public Optional<Leaning> leaning(List<Step> wanted, int worked, Desk desk) {
        return Leaning.on(desk, wanted, worked, OneChange.course(wanted).size() < changes.size());
    }

    /** Why a list was not made, in words, for the line that was worked on. */
    public String refused(StepRefused refused, List<Step> wanted, int worked, Desk desk) {
        Words words = desk.words();
        if (refused.why().code().equals("change-one-way")) {
            String way = new ChangeWords(words).brief(refused.note(), desk.pattern());
            return words.of("editor.changes.refused-one-way", Map.of("which", way));
        }
        String why = words.problem(refused.why().code(), refused.why().values());
        OneChange change = changes.get(worked);
        List<OneChange> otherwise = OneChange.course(wanted);
        boolean own =
                isOf(change, refused) || (otherwise.size() == changes.size() && isOf(otherwise.get(worked), refused));
        if (own && change.isInSeveralSizes()) {
            String size = Scope.of(refused.note()).size().orElse("");
            return words.of("editor.changes.refused-in", Map.of("size", size, "why", why));
        }
        if (own) {
            return words.of("editor.changes.refused", Map.of("why", why));
        }
        String which = new ChangeWords(words).brief(refused.note(), desk.pattern());
        return words.of("editor.changes.refused-other", Map.of("which", which, "why", why));
    }

    private static boolean isOf(OneChange change, StepRefused refused) {
        return change.steps().stream().anyMatch(s -> s.note().equals(refused.note()));
    }
}
