package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A change as a person made it: one record, or one for each of the sizes that were changed alike in one go. Such records
 * follow each other, and all but the first say in which size that one was made ({@link Scope#AS_IN}).
 *
 * @param steps at least one
 */
public record OneChange(List<Step> steps) {
    public OneChange {
        steps = List.copyOf(steps);
    }

    /** The changes that a course is made of, in its order. */
    public static List<OneChange> course(List<Step> course) {
        List<OneChange> all = new ArrayList<>();
        List<Step> one = new ArrayList<>();
        for (Step step : course) {
            if (!one.isEmpty() && !belongs(one, step)) {
                all.add(new OneChange(one));
                one.clear();
            }
            one.add(step);
        }
        if (!one.isEmpty()) {
            all.add(new OneChange(one));
        }
        return List.copyOf(all);
    }

    /** The changes that are made in a pattern. */
    public static List<OneChange> made(Pattern pattern) {
        return course(
                pattern.changes().stream().map(note -> new Step(note, true)).toList());
    }

    /** Whether a record is of the same change as those before it: only so far as it still is the same. */
    private static boolean belongs(List<Step> one, Step next) {
        Step first = one.get(0);
        Scope scope = Scope.of(next.note());
        return scope.asIn().isPresent()
                && scope.asIn().equals(Scope.of(first.note()).size())
                && first.on() == next.on()
                && first.note().method().equals(next.note().method())
                && first.amount().equals(next.amount())
                && one.stream().noneMatch(s -> Scope.of(s.note()).size().equals(scope.size()));
    }

    /** The record in the first size, or the only one. */
    public ChangeNote note() {
        return steps.get(0).note();
    }

    /** The sizes in which it is made; empty where it names none. */
    public List<String> sizes() {
        return steps.stream()
                .map(s -> Scope.of(s.note()).size())
                .flatMap(Optional::stream)
                .toList();
    }

    public boolean isInSeveralSizes() {
        return steps.size() > 1;
    }

    /** Whether it is made; else it is set aside. */
    public boolean on() {
        return steps.get(0).on();
    }

    /** By how much, mm, as {@link Step#amount}. */
    public OptionalDouble amount() {
        return steps.get(0).amount();
    }

    public OneChange switched(boolean onNow) {
        return new OneChange(steps.stream().map(s -> s.switched(onNow)).toList());
    }

    /** The same by another amount in every size, mm. */
    public OneChange withAmount(double mm) {
        return new OneChange(steps.stream().map(s -> s.withAmount(mm)).toList());
    }

    /** Whether two neighbouring changes may change places, as {@link Replay#mayChangePlaces} says. */
    public static boolean mayChangePlaces(OneChange earlier, OneChange later) {
        return Replay.mayChangePlaces(earlier.steps.get(0), later.steps.get(0));
    }
}
