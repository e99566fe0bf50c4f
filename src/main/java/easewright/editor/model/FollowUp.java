package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.Coupled;
import easewright.alter.Refusal;
import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.pattern.Pattern;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the changes that stand ask of the pieces sewn to those they changed: offered, and done only if the user takes
 * it.
 *
 * @param seam    name of the seam
 * @param words   what no longer fits, what would make it fit, and what that brings
 * @param result  the pattern with it
 * @param instead whether a change that stands is made in another way, not one more change
 */
public record FollowUp(String seam, String words, Pattern result, boolean instead) {
    /** Whether there are changes, so that there may be something to offer. */
    public static boolean isAsked(Desk desk) {
        return desk.trial().isEmpty() && !desk.pattern().changes().isEmpty();
    }

    /** All offers. Takes a moment: for a thread of its own. */
    public static List<FollowUp> of(Desk desk) {
        Words words = desk.words();
        List<FollowUp> all = new ArrayList<>();
        for (Coupled.Offer offer : Coupled.offers(course(desk))) {
            List<String> changes = offer.alterations().stream()
                    .map(Alteration::note)
                    .map(note -> new ChangeWords(words).brief(note, desk.pattern()))
                    .toList();
            String text = words.of(
                    "editor.follow.text",
                    Map.of(
                            "mate", offer.mate().name(),
                            "drift.signed", offer.drift(),
                            "changes", String.join(" ", changes)));
            all.add(new FollowUp(offer.mate().name(), text + girths(offer, words), offer.result(), false));
        }
        all.addAll(Recasts.of(desk, all.stream().map(FollowUp::seam).toList()));
        return List.copyOf(all);
    }

    /** The pattern before its first change and after each; only as it is where that cannot be gone through again. */
    private static List<Pattern> course(Desk desk) {
        List<Step> made = Step.course(desk.pattern()).stream().filter(Step::on).toList();
        List<Pattern> course = new ArrayList<>();
        try {
            course.add(new Replay(desk.pattern(), desk.history().states()).to(List.of()));
            for (Step step : made.subList(0, made.size() - 1)) {
                Pattern before = course.get(course.size() - 1);
                course.add(Ways.from(step.note()).apply(before).pattern());
            }
        } catch (StepRefused | Refusal notToBeRetraced) {
            return List.of(desk.pattern());
        }
        course.add(desk.pattern());
        return course;
    }

    private static String girths(Coupled.Offer offer, Words words) {
        List<String> changed = new ArrayList<>();
        new TreeMap<>(offer.girths())
                .forEach((level, by) ->
                        changed.add(words.of("editor.here.girth-by", Map.of("level", level, "by.signed", by))));
        return changed.isEmpty()
                ? ""
                : " " + words.of("editor.here.girths", Map.of("girths", String.join(", ", changed)));
    }
}
