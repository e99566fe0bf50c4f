package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.SetAside;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One line in the course of changes of a pattern.
 *
 * @param on whether the change is made; else it is set aside
 */
public record Step(ChangeNote note, boolean on) {
    /** The whole course of a pattern, oldest first, with what is set aside in its place. */
    public static List<Step> course(Pattern pattern) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i <= pattern.changes().size(); i++) {
            for (SetAside aside : pattern.aside()) {
                if (aside.before() == i) {
                    steps.add(new Step(aside.note(), false));
                }
            }
            if (i < pattern.changes().size()) {
                steps.add(new Step(pattern.changes().get(i), true));
            }
        }
        return List.copyOf(steps);
    }

    /** What is set aside in a course. */
    public static List<SetAside> aside(List<Step> course) {
        List<SetAside> aside = new ArrayList<>();
        int made = 0;
        for (Step step : course) {
            if (step.on()) {
                made++;
            } else {
                aside.add(new SetAside(made, step.note()));
            }
        }
        return List.copyOf(aside);
    }

    public Step switched(boolean onNow) {
        return new Step(note, onNow);
    }

    /** By how much, mm; empty where the change is of a kind not known here, or its amount cannot be read. */
    public OptionalDouble amount() {
        return Ways.of(note.method())
                .flatMap(way -> way.amountOf(note))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** The same change by another amount, mm; itself where its kind is not known here. */
    public Step withAmount(double mm) {
        return new Step(
                Ways.of(note.method()).map(way -> way.withAmount(note, mm)).orElse(note), on);
    }

    /** Whether it changes lengths along the grain, which is settled before widths (E-372, docs/sources.md 4.4). */
    public boolean isLength() {
        return Ways.of(note.method()).filter(way -> way.aim() == Way.Aim.LENGTH).isPresent();
    }
}
