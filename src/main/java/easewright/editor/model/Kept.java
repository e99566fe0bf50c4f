package easewright.editor.model;

import easewright.alter.OneChange;
import easewright.alter.Way;
import easewright.pattern.Pattern;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A change that has just been kept, as long as nothing new is begun: its amount no longer stands in its field, and it
 * would seem to be gone.
 *
 * @param made   the pattern with the change
 * @param sizes  in which it was made, where the pattern comes in several
 * @param amount by which the girth at the level, or the length, was changed, mm
 * @param offer  what it was, where it had been offered
 * @param way    what it was, where its amount is not that of the girth at the level
 */
public record Kept(
        Pattern made,
        Optional<String> size,
        List<String> sizes,
        String level,
        double amount,
        Optional<FollowUp.Press> offer,
        Optional<OfWay> way) {
    /** A change whose amount is a gap or a length, with what was read before it and after. */
    record OfWay(Reading before, Reading after) {
        static Optional<OfWay> of(Trial.Shown trial, Desk before) {
            return trial.wanted()
                    .other()
                    .filter(o -> o.way().aim() != Way.Aim.GIRTH)
                    .map(o -> new OfWay(before.reading(), trial.reading()));
        }

        private Map<String, Object> told(Pattern made, Words words) {
            List<OneChange> changes = OneChange.made(made);
            String what = new ChangeWords(words).done(changes.get(changes.size() - 1), made);
            return Map.of("what", what, "girths", HereWords.girths(before, after, words));
        }
    }

    /**
     * What was kept last and is still to be said, after a step.
     *
     * @param last what was to be said before it
     */
    static Optional<Kept> after(Optional<Kept> last, Desk before, Desk now) {
        Optional<Kept> fresh = before.shownTrial()
                .filter(t -> t.altered().pattern() == now.pattern())
                .map(t -> new Kept(
                        now.pattern(),
                        now.size(),
                        t.sizes(),
                        t.wanted().level(),
                        t.wanted().amount(),
                        t.offer(),
                        OfWay.of(t, before)));
        return fresh.or(() -> last).filter(k -> k.isLast(now));
    }

    private boolean isLast(Desk now) {
        return made == now.pattern()
                && now.trial().isEmpty()
                && size.equals(now.size())
                && now.wanted()
                        .filter(w -> w.amount() == 0 && w.level().equals(level))
                        .isPresent();
    }

    /** That it is kept, and where it stands now. */
    public String words(Desk desk) {
        if (offer.isEmpty() && way.isPresent()) {
            return desk.words().of("editor.here.kept.way", way.get().told(made, desk.words()));
        }
        return offer.map(o -> desk.words()
                        .of(
                                o.isMark() ? "editor.here.kept.mark" : "editor.here.kept.offer",
                                Map.of("what", o.tried().in(desk.words()))))
                .orElseGet(() -> desk.words()
                        .of(
                                sizes.size() > 1 ? "editor.here.kept.sizes" : "editor.here.kept",
                                Map.of("level", level, "amount.signed", amount, "sizes", sizes)));
    }
}
