package easewright.check;

import easewright.ease.EaseSheet;
import easewright.measure.GarmentMeasures;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A pattern, what it measures, and the ease it has.
 *
 * @param pieces those that have to be looked at: all, or what a change made anew, since of a piece that is the same
 *               object there is nothing to say that was not said before
 */
record Sight(Pattern pattern, GarmentMeasures measures, EaseSheet sheet, List<Piece> pieces) {
    Sight(Pattern pattern, GarmentMeasures measures, EaseSheet sheet) {
        this(pattern, measures, sheet, pattern.pieces());
    }

    /** The ids of the pieces that have to be looked at. */
    Set<String> ids() {
        return pieces.stream().map(Piece::id).collect(Collectors.toSet());
    }

    /** What a piece of the pattern after a change was in this one, as {@link SidePair#before} has it. */
    Optional<Piece> before(Piece now, Sight after) {
        return SidePair.before(pattern, after.pattern, now);
    }

    /** A piece that a change made anew, as it was and as it is. */
    record Remade(Piece then, Piece now) {}

    /** The pieces after a change that were others in this pattern; one that was not there before is none of them. */
    List<Remade> remade(Sight after) {
        List<Remade> remade = new ArrayList<>();
        for (Piece now : after.pieces) {
            before(now, after).filter(then -> then != now).ifPresent(then -> remade.add(new Remade(then, now)));
        }
        return remade;
    }

    /** The same without the pieces that were there before, as they are measured. */
    Sight unlike(Sight before) {
        if (!pattern.levels().equals(before.pattern.levels())) {
            return this;
        }
        List<Piece> now = pattern.pieces();
        List<Piece> then = before.pattern.pieces();
        Set<Piece> old = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Piece> young = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            // Mostly each piece is where it was.
            if (i >= then.size() || now.get(i) != then.get(i)) {
                if (old.isEmpty()) {
                    old.addAll(then);
                }
                if (!old.contains(now.get(i))) {
                    young.add(now.get(i));
                }
            }
        }
        return new Sight(pattern, measures, sheet, young);
    }
}
