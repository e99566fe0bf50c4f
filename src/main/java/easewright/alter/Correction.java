package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Moves all that is marked on a piece by what it came to lie off after changes.
 *
 * @param piece  the piece before the changes
 * @param is     what the changes make of it
 * @param wanted what they are to make of it
 * @param cuts   whether among the changes are such as cut through lines beside the outline
 */
record Correction(Piece piece, Piece is, Piece wanted, boolean cuts) {
    /** A mark that comes to lie this near to a corner of the drawing lies in it, mm. */
    private static final double IN_CORNER = 0.05;

    /** One mark moved by the way from what came of it to what is wanted. */
    private interface Move<T> {
        T of(T mark, T is, T wanted);
    }

    /**
     * The piece with its marks moved, each by its own; those of a kind of which there are not as many stay.
     *
     * @throws IllegalArgumentException if what is moved can no more be a mark
     */
    Piece made() {
        return piece.toBuilder()
                .edges(each(piece.edges(), is.edges(), wanted.edges(), this::edge))
                .darts(each(piece.darts(), is.darts(), wanted.darts(), this::dart))
                .notches(each(piece.notches(), is.notches(), wanted.notches(), this::notch))
                .levels(each(piece.levels(), is.levels(), wanted.levels(), Correction::level))
                .riders(each(piece.riders(), is.riders(), wanted.riders(), this::rider))
                .grain(each(piece.grain(), is.grain(), wanted.grain(), Correction::grain))
                .build();
    }

    private static <T> List<T> each(List<T> marks, List<T> is, List<T> wanted, Move<T> move) {
        if (is.size() != marks.size() || wanted.size() != marks.size()) {
            return marks;
        }
        List<T> moved = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            moved.add(move.of(marks.get(i), is.get(i), wanted.get(i)));
        }
        return moved;
    }

    private static <T> Optional<T> each(Optional<T> mark, Optional<T> is, Optional<T> wanted, Move<T> move) {
        return mark.isPresent() && is.isPresent() && wanted.isPresent()
                ? Optional.of(move.of(mark.get(), is.get(), wanted.get()))
                : mark;
    }

    private static Point place(Point mark, Point is, Point wanted) {
        return mark.plus(wanted.minus(is));
    }

    /** A place on the outline stays there, and in a corner if it comes near one. */
    private Point onLine(Point mark, Point is, Point wanted) {
        Outline outline = piece.outline();
        Point there = place(mark, is, wanted);
        Point on = outline.nearest(there).point();
        if (outline.nearest(mark).distance() > Shift.ON_OUTLINE) {
            return there;
        }
        for (Segment s : outline.segments()) {
            if (s.start().distance(on) <= IN_CORNER) {
                return s.start();
            }
        }
        return on;
    }

    private Edge edge(Edge edge, Edge is, Edge wanted) {
        return edge.withEnds(onLine(edge.from(), is.from(), wanted.from()), onLine(edge.to(), is.to(), wanted.to()));
    }

    private Dart dart(Dart dart, Dart is, Dart wanted) {
        return new Dart(
                dart.name(),
                onLine(dart.mouth1(), is.mouth1(), wanted.mouth1()),
                onLine(dart.mouth2(), is.mouth2(), wanted.mouth2()),
                onLine(dart.point(), is.point(), wanted.point()),
                each(dart.otherPoint(), is.otherPoint(), wanted.otherPoint(), Correction::place),
                dart.edge());
    }

    private Notch notch(Notch notch, Notch is, Notch wanted) {
        return new Notch(notch.name(), onLine(notch.at(), is.at(), wanted.at()));
    }

    private static LevelMark level(LevelMark mark, LevelMark is, LevelMark wanted) {
        LevelMark moved = each(mark.through(), is.through(), wanted.through(), Correction::place)
                .map(mark::withThrough)
                .orElse(mark);
        return each(mark.reference(), is.reference(), wanted.reference(), Correction::place)
                .map(moved::withReference)
                .orElse(moved);
    }

    private static Grain grain(Grain grain, Grain is, Grain wanted) {
        return new Grain(place(grain.from(), is.from(), wanted.from()), place(grain.to(), is.to(), wanted.to()));
    }

    /**
     * Part by part, in those in which the changes part it; where they cut it, left as it is unless the parts are the same.
     */
    private Rider rider(Rider rider, Rider is, Rider wanted) {
        if (wanted.original().isPresent()) {
            // It is known how it was drawn.
            return rider;
        }
        boolean same = kinds(rider).equals(kinds(is)) && kinds(rider).equals(kinds(wanted));
        if (cuts && !same) {
            return rider;
        }
        List<Segment> parts = AlikeParts.of(rider.segments(), is.segments());
        List<Segment> there = AlikeParts.of(wanted.segments(), is.segments());
        return rider.withSegments(each(parts, is.segments(), there, Correction::segment));
    }

    private static List<Class<?>> kinds(Rider rider) {
        return rider.segments().stream().<Class<?>>map(Object::getClass).toList();
    }

    private static Segment segment(Segment segment, Segment is, Segment wanted) {
        if (is.equals(wanted)) {
            return segment;
        }
        Point start = place(segment.start(), is.start(), wanted.start());
        Point end = place(segment.end(), is.end(), wanted.end());
        if (segment instanceof Line && is instanceof Line && wanted instanceof Line) {
            return new Line(start, end);
        }
        Cubic one = cubic(segment);
        return new Cubic(
                start,
                place(one.control1(), cubic(is).control1(), cubic(wanted).control1()),
                place(one.control2(), cubic(is).control2(), cubic(wanted).control2()),
                end);
    }

    private static Cubic cubic(Segment segment) {
        return segment instanceof Cubic cubic
                ? cubic
                : new Cubic(segment.start(), segment.at(1 / 3.0), segment.at(2 / 3.0), segment.end());
    }
}
