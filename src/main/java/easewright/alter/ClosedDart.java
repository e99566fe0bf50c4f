package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a dart's mouth looks when the dart is folded, its second leg on its first: what is to be trued there shows only then.
 *
 * @param bends by how much the seam turns where the closed legs meet it, radians
 * @param peak  where the cap belongs; empty for a dart that is cut out, which has none
 * @param off   how far the drawn cap lies from there, mm
 */
record ClosedDart(Piece piece, Dart dart, DartMouth mouth, double bends, Optional<Point> peak, double off) {
    /** By how much the leg that comes first in the drawn direction is longer than the other, mm. */
    double longer() {
        return mouth.first().distance(dart.point()) - mouth.second().distance(dart.point());
    }

    /** The same, though the seam is let be. */
    ClosedDart unbent() {
        return new ClosedDart(piece, dart, mouth, 0, peak, off);
    }

    /** The darts that have their mouths on the outline. */
    static List<ClosedDart> all(List<Piece> pieces) {
        List<ClosedDart> all = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Dart dart : piece.darts()) {
                of(piece, dart).ifPresent(all::add);
            }
        }
        return all;
    }

    /** Empty where its mouth is not on the outline, or it has none. */
    static Optional<ClosedDart> of(Piece piece, Dart dart) {
        if (dart.otherPoint().isPresent() || dart.edge().isEmpty()) {
            return Optional.empty();
        }
        DartMouth mouth;
        try {
            mouth = DartMouth.of(piece, dart);
        } catch (Refusal offOutline) {
            return Optional.empty();
        }
        if (mouth.first().distance(dart.point()) < 1 || mouth.second().distance(dart.point()) < 1) {
            return Optional.empty();
        }
        double bends = bends(mouth, dart.point());
        if (mouth.kind() == DartMouth.Kind.CUT_OUT) {
            return Optional.of(new ClosedDart(piece, dart, mouth, bends, Optional.empty(), 0));
        }
        DartCap cap = new DartCap(mouth, dart.point(), mouth.before(), mouth.after());
        Point peak = cap.trued();
        Curve drawn = new Curve(mouth.inner());
        // A cap that fits the dart pressed to either side is true.
        double off = drawn.nearest(peak).distance();
        for (Point pressed : cap.pressed()) {
            off = Math.min(off, drawn.nearest(pressed).distance());
        }
        return Optional.of(new ClosedDart(piece, dart, mouth, bends, Optional.of(peak), off));
    }

    /** By how much the seam turns where the closed legs meet it, radians. */
    static double bends(DartMouth mouth, Point point) {
        Point on = mouth.before().tangent(1);
        Point off = closing(mouth, point, mouth.after().tangent(0));
        return Math.atan2(on.cross(off), on.dot(off));
    }

    /** A direction beyond the dart as it lies when the second leg is folded onto the first. */
    private static Point closing(DartMouth mouth, Point point, Point direction) {
        Point one = mouth.first().minus(point);
        Point two = mouth.second().minus(point);
        return direction.turned(Math.atan2(two.cross(one), two.dot(one)));
    }
}
