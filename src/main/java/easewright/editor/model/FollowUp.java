package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.Coupled;
import easewright.alter.Refusal;
import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What can be done about a seam that does not fit: what the changes that stand ask of the pieces sewn to those they
 * changed, or what a drafter does about a seam that was drawn so. Offered, tried where it is pressed, and done only if the
 * user keeps it.
 *
 * @param seam    name of the seam
 * @param size    in which it is sewn so, where the pattern comes in several
 * @param words   what does not fit, what would make it fit, and what that brings
 * @param care    what is to be known before a press is chosen; empty for nothing
 * @param presses what can be done, the best first
 * @param changed whether the changes that stand ask for it
 */
public record FollowUp(
        String seam, Optional<String> size, String words, String care, List<Press> presses, boolean changed) {
    /** Drifts no further apart than this are one, mm. */
    private static final double SAME = 1e-6;

    public FollowUp {
        presses = List.copyOf(presses);
    }

    /**
     * One thing that can be done.
     *
     * @param label    what the press says
     * @param tried    the same of what is tried
     * @param result   the pattern with it
     * @param findings what it brings with it
     * @param isMark   whether only a mark is changed, and no line
     */
    public record Press(Said label, Said tried, Pattern result, List<Finding> findings, boolean isMark) {
        public Press {
            findings = List.copyOf(findings);
        }
    }

    /** The same with one thing more that can be done. */
    FollowUp or(Press other) {
        List<Press> more = new ArrayList<>(presses);
        more.add(other);
        return new FollowUp(seam, size, words, care, more, changed);
    }

    /** Whether there may be something to offer. */
    public static boolean isAsked(Desk desk) {
        boolean fits = desk.reading().measures().mates().stream().allMatch(w -> Cutting.same(w.drift()));
        return desk.trial().isEmpty() && !(fits && desk.pattern().changes().isEmpty());
    }

    /** All offers. Takes a moment: for a thread of its own. */
    public static List<FollowUp> of(Desk desk) {
        Words words = desk.words();
        List<FollowUp> all = new ArrayList<>();
        List<Pattern> course = course(desk);
        for (Coupled.Offer offer : Coupled.offers(course)) {
            List<String> changes = offer.alterations().stream()
                    .map(Alteration::note)
                    .map(note -> new ChangeWords(words).brief(note, desk.pattern()))
                    .toList();
            String seam = offer.mate().name();
            String text = text(offer, String.join(" ", changes), desk);
            Press match = new Press(
                    new Said("editor.follow.take", Map.of()),
                    new Said("editor.follow.take.tried", Map.of("mate", seam)),
                    offer.result(),
                    offer.findings(),
                    false);
            String girths = girths(offer.girths(), words);
            String brings = girths.isEmpty() ? "" : words.of("editor.here.girths", Map.of("girths", girths));
            all.add(new FollowUp(seam, offer.size(), text, brings, List.of(match), true));
        }
        for (FollowUp recast : Recasts.of(desk, all)) {
            all.add(SeamOffers.orMatched(recast, desk, course.get(0)));
        }
        all.addAll(SeamOffers.of(desk, course.get(0), List.copyOf(all)));
        return List.copyOf(all);
    }

    /** Which side is too long and by how much, as it is told of the seam elsewhere where that is about it as it is now. */
    private static String text(Coupled.Offer offer, String changes, Desk desk) {
        MateSides sides = MateSides.of(desk.pattern(), offer.mate());
        Map<String, Object> values = new HashMap<>(Map.of(
                "mate",
                offer.mate().name(),
                "longer",
                offer.drift() > 0 ? sides.first() : sides.second(),
                "apart",
                Math.abs(offer.drift()),
                "changes",
                changes));
        Optional<MateWalk> now = desk.reading().measures().mates().stream()
                .filter(w -> w.mate().name().equals(offer.mate().name())
                        && w.size().equals(offer.size())
                        && Math.abs(w.drift() - offer.drift()) < SAME)
                .findFirst();
        now.ifPresent(w -> values.putAll(Map.of(
                "one", sides.first(),
                "other", sides.second(),
                "first", w.first(),
                "second", w.second(),
                "ease.signed", w.mate().declaredEase(),
                "drift.signed", w.drift())));
        String off = Cutting.works(offer.drift()) ? "editor.follow.text.works" : "editor.follow.text";
        return desk.words().of(now.isPresent() ? off : "editor.follow.text.once", values);
    }

    /** Whether it is about this seam, in the size in which it is sewn. */
    boolean isAbout(MateWalk walk) {
        return seam.equals(walk.mate().name()) && size.equals(walk.size());
    }

    /** The pattern before its first change and after each; only as it is where that cannot be gone through again. */
    private static List<Pattern> course(Desk desk) {
        List<Step> made = Step.course(desk.pattern()).stream().filter(Step::on).toList();
        if (made.isEmpty()) {
            return List.of(desk.pattern());
        }
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

    /** Which girths change by something that is offered, one after the other; empty for none. */
    static String girths(Map<String, Double> by, Words words) {
        List<String> changed = new ArrayList<>();
        new TreeMap<>(by)
                .forEach((level, mm) ->
                        changed.add(words.of("editor.here.girth-by", Map.of("level", level, "by.signed", mm))));
        return String.join(", ", changed);
    }
}
