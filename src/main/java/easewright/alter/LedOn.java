package easewright.alter;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.List;

/**
 * A piece without the darts that are cut out of it: the seam is led straight on over them from either side, so that its
 * parallels go on as far as the legs, wherever those lean.
 */
final class LedOn {
    /** How far from either side, as a share of the mouth. */
    private static final double SHARE = 0.45;

    private LedOn() {}

    /** The very same piece if no dart is cut out of it. */
    static Piece over(Piece piece) {
        Piece now = piece;
        for (Dart dart : piece.darts()) {
            try {
                DartMouth mouth = dart.otherPoint().isEmpty() ? DartMouth.of(now, dart) : null;
                if (mouth != null && mouth.kind() == DartMouth.Kind.CUT_OUT) {
                    double far = SHARE * mouth.first().distance(mouth.second());
                    Point one = mouth.first().plus(mouth.before().tangent(1).times(far));
                    Point two = mouth.second().minus(mouth.after().tangent(0).times(far));
                    List<Segment> inner =
                            List.of(new Line(mouth.first(), one), new Line(one, two), new Line(two, mouth.second()));
                    now = now.withOutline(mouth.replaced(mouth.before(), inner, mouth.after()));
                }
            } catch (Refusal offOutline) {
                // A dart that is not on the outline is not cut out of it.
                continue;
            }
        }
        return now;
    }
}
