package easewright.print.sheet;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.PieceMeasures;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which of the lines drawn on a piece a print draws itself, from their marks.
 *
 * @param measures of the piece
 */
record DrawnByMarks(Piece piece, PieceMeasures measures) {
    /** A drawn line this near to a mark of ours shows the same, mm. */
    private static final double SAME = 3;

    /** A line so little longer than the way between its ends is straight, mm. */
    private static final double STRAIGHT = 0.1;

    boolean show(Rider rider) {
        return rider.kind() == Rider.Kind.ATTACHED && isTickOrLevel(rider) || isOfDart(rider);
    }

    /** Whether a drawn tick or level is one that we draw ourselves from its mark. */
    private boolean isTickOrLevel(Rider rider) {
        Point from = rider.segments().get(0).start();
        Point to = rider.segments().get(rider.segments().size() - 1).end();
        boolean notch = piece.notches().stream()
                .anyMatch(n -> n.at().distance(from) <= 2 * SAME && n.at().distance(to) <= 2 * SAME);
        boolean level = measures.levels().stream()
                .flatMap(w -> w.spans().stream())
                .anyMatch(s -> (s.from().distance(from) <= SAME && s.to().distance(to) <= SAME)
                        || (s.from().distance(to) <= SAME && s.to().distance(from) <= SAME));
        return notch || level;
    }

    /**
     * Whether what is drawn is nothing but legs of a dart, straight ones, as we draw them from its mark, and at most its
     * mouth along the outline. A line through its middle, or across it, is drawn by no mark.
     */
    private boolean isOfDart(Rider rider) {
        return piece.darts().stream()
                .anyMatch(dart -> rider.segments().stream()
                        .allMatch(s -> s.length() - s.start().distance(s.end()) < STRAIGHT
                                && (isLeg(s, dart) || isMouthOnOutline(s, dart))));
    }

    private static boolean isLeg(Segment drawn, Dart dart) {
        return joins(drawn, mouths(dart), tips(dart)) || joins(drawn, tips(dart), mouths(dart));
    }

    private boolean isMouthOnOutline(Segment drawn, Dart dart) {
        return joins(drawn, mouths(dart), mouths(dart))
                && piece.outline().nearest(drawn.at(0.5)).distance() <= SAME;
    }

    private static boolean joins(Segment drawn, List<Point> some, List<Point> others) {
        return some.stream().anyMatch(p -> p.distance(drawn.start()) <= SAME)
                && others.stream().anyMatch(p -> p.distance(drawn.end()) <= SAME);
    }

    private static List<Point> mouths(Dart dart) {
        return List.of(dart.mouth1(), dart.mouth2());
    }

    /** The points of a dart: two where it is closed at both ends. */
    static List<Point> tips(Dart dart) {
        return Stream.concat(Stream.of(dart.point()), dart.otherPoint().stream())
                .toList();
    }
}
