package easewright.editor.model;

import easewright.pattern.Pattern;
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
 */
public record Kept(
        Pattern made,
        Optional<String> size,
        List<String> sizes,
        String level,
        double amount,
        Optional<FollowUp.Press> offer) {
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
                        t.offer()));
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
