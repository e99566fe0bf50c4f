package easewright.alter;

import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.pattern.EdgeRef;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;

/** A seam as it was: also before its pieces were made into left and right ones, while it was sewn alike on both sides. */
final class MateThen {
    private MateThen() {}

    /** The same seam of the same size; empty where there was none, or where its edges counted otherwise. */
    static Optional<MateWalk> of(GarmentMeasures was, MateWalk now) {
        String name = now.mate().name();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            String ending = " " + Settings.name(side);
            if (name.endsWith(ending) && named(was, now, name).isEmpty()) {
                return named(was, now, name.substring(0, name.length() - ending.length()));
            }
        }
        return named(was, now, name);
    }

    private static Optional<MateWalk> named(GarmentMeasures was, MateWalk now, String name) {
        return was.mates().stream()
                .filter(w -> w.mate().name().equals(name) && w.size().equals(now.size()))
                .filter(w -> counts(w.mate().first()) == counts(now.mate().first())
                        && counts(w.mate().second()) == counts(now.mate().second()))
                .findFirst();
    }

    /** How many edges a side is sewn of: as many as before where some were made into left and right ones. */
    private static int counts(List<EdgeRef> side) {
        return side.stream().mapToInt(EdgeRef::times).sum();
    }
}
