package easewright.suggest;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;

/** The lines of a known piece as they are drawn bare. */
final class BareOutlines {
    private BareOutlines() {}

    static Outline stitching(Piece piece) {
        return piece.drawn() == LineKind.STITCHING ? piece.outline() : parallel(piece);
    }

    static Outline cutting(Piece piece) {
        return piece.drawn() == LineKind.CUTTING ? piece.outline() : parallel(piece);
    }

    private static Outline parallel(Piece piece) {
        Rider rider = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                .findFirst()
                .orElseThrow();
        return new Outline(rider.segments());
    }

    /** The outline with every dart cut out of it. */
    static Outline withCuts(Outline outline, List<Dart> darts) {
        Outline now = outline;
        for (Dart dart : darts) {
            Ring ring = new Ring(now);
            double one = ring.along(dart.mouth1());
            double two = ring.along(dart.mouth2());
            boolean forward = ring.way(one, two) <= ring.way(two, one);
            double from = forward ? one : two;
            double to = forward ? two : one;
            List<Segment> segments = new ArrayList<>(ring.run(to, from).segments());
            segments.add(new Line(ring.at(from), dart.point()));
            segments.add(new Line(dart.point(), ring.at(to)));
            now = new Outline(joined(segments));
        }
        return now;
    }

    /** Ends that differ in the last digits are made one. */
    private static List<Segment> joined(List<Segment> segments) {
        List<Segment> joined = new ArrayList<>();
        Point at = segments.get(0).start();
        Point first = at;
        for (int i = 0; i < segments.size(); i++) {
            Point end = i == segments.size() - 1 ? first : segments.get(i).end();
            joined.add(
                    segments.get(i) instanceof Cubic c
                            ? new Cubic(at, c.control1(), c.control2(), end)
                            : new Line(at, end));
            at = end;
        }
        return joined;
    }
}
