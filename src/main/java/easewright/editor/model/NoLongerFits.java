package easewright.editor.model;

import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What is said in a line of seams that fitted until something was changed. */
public final class NoLongerFits {
    private NoLongerFits() {}

    /**
     * @param asked what is offered for such seams; not empty
     */
    public static String words(Desk desk, List<FollowUp> asked) {
        if (asked.size() > 1) {
            return desk.words().of("editor.follow.some", Map.of("count", asked.size()));
        }
        FollowUp offer = asked.get(0);
        return desk.reading().measures().mates().stream()
                .filter(offer::isAbout)
                .findFirst()
                .map(walk -> words(desk, offer, walk))
                .orElseGet(() -> desk.words().of("editor.follow.one"));
    }

    /** How bad it is, as the notes have it. */
    public static Severity severity(Desk desk, List<FollowUp> asked) {
        Set<Object> seams = asked.stream().map(FollowUp::seam).collect(Collectors.toSet());
        return desk.reading().findings().stream()
                .filter(f -> seams.contains(f.values().get("mate")))
                .map(Finding::severity)
                .max(Comparator.naturalOrder())
                .orElse(Severity.CAUTION);
    }

    /** Names the side that would be changed, or else the shorter one. */
    private static String words(Desk desk, FollowUp offer, MateWalk walk) {
        MateSides sides = MateSides.of(desk.pattern(), walk.mate());
        List<String> longer = walk.drift() > 0 ? sides.first() : sides.second();
        List<String> shorter = walk.drift() > 0 ? sides.second() : sides.first();
        Optional<Pattern> fitted = offer.presses().stream().findFirst().map(FollowUp.Press::result);
        List<String> moved = fitted.stream()
                .flatMap(p -> desk.pattern().pieces().stream().filter(is -> isOther(is, p)))
                .map(Piece::name)
                .toList();
        boolean tooLong =
                moved.stream().anyMatch(longer::contains) && moved.stream().noneMatch(shorter::contains);
        List<String> named = tooLong ? longer : shorter;
        String key = "editor.follow.one." + (tooLong ? "long" : "short");
        return desk.words()
                .of(
                        named.size() > 1 ? key + ".several" : key,
                        Map.of(
                                "pieces", named,
                                "first", walk.first(),
                                "second", walk.second(),
                                "ease.signed", walk.mate().declaredEase(),
                                "apart", Math.abs(walk.drift())));
    }

    private static boolean isOther(Piece piece, Pattern fitted) {
        return fitted.piece(piece.id())
                .filter(p -> p.outline().equals(piece.outline()))
                .isEmpty();
    }
}
