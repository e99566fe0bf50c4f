package easewright.alter;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.List;

/**
 * A piece without the darts that are cut out of it: each is capped as if it were folded, so that a line around the piece
 * has, over the dart, the allowance that is wanted when the dart is sewn (docs/sources.md 4.5, W8).
 */
final class FoldedOver {
    /** A cap with a peak farther off than this many mouths is none: the legs nearly lie on the seam. */
    private static final double FARTHEST = 1;

    private FoldedOver() {}

    /** The very same outline if no dart is cut out of it. */
    static Outline outline(Piece piece) {
        Piece now = piece;
        for (Dart dart : piece.darts()) {
            try {
                DartMouth mouth = dart.otherPoint().isEmpty() ? DartMouth.of(now, dart) : null;
                if (mouth != null && mouth.kind() == DartMouth.Kind.CUT_OUT) {
                    now = now.withOutline(capped(mouth, dart.point()));
                }
            } catch (Refusal offOutline) {
                // A dart that is not on the outline is not cut out of it.
                continue;
            }
        }
        return now.outline();
    }

    private static Outline capped(DartMouth mouth, Point point) {
        Point one = mouth.first();
        Point two = mouth.second();
        Point peak = new DartCap(mouth, point, mouth.before(), mouth.after()).trued();
        boolean far = !(peak.distance(one.towards(two, 0.5)) <= FARTHEST * one.distance(two));
        Point over = far ? one.towards(two, 0.5) : peak;
        return mouth.replaced(mouth.before(), List.of(new Line(one, over), new Line(over, two)), mouth.after());
    }
}
