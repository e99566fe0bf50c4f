package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The lines drawn along with an outline, after runs of it were drawn anew. */
final class Riders {
    private final Piece drawn;
    private final List<Stroke> runs;

    Riders(Piece drawn, List<Stroke> runs) {
        this.drawn = drawn;
        this.runs = List.copyOf(runs);
    }

    /** How a closed line that keeps its distance is drawn anew; empty where it did not keep it. */
    interface Beside {
        Optional<List<Segment>> anew(List<Segment> line);
    }

    /** One stroke for each line that follows. */
    List<Stroke> strokes(Beside beside) {
        List<Stroke> strokes = new ArrayList<>();
        for (Rider rider : drawn.riders()) {
            Optional<List<Segment>> anew = rider.kind() == Rider.Kind.PARALLEL && CutTruer.isClosed(rider.segments())
                    ? beside.anew(rider.segments())
                    : Optional.empty();
            UnaryOperator<Point> way = rider.kind() == Rider.Kind.INNER ? this::withMouth : this::carried;
            List<Segment> after = anew.orElseGet(() -> carried(rider.segments(), way));
            if (!after.equals(rider.segments())) {
                strokes.add(new CutStroke(drawn.id(), rider.id(), rider.segments(), after));
            }
        }
        return strokes;
    }

    private static List<Segment> carried(List<Segment> segments, UnaryOperator<Point> way) {
        List<Segment> all = new ArrayList<>();
        for (Segment s : segments) {
            Point start = way.apply(s.start());
            Point end = way.apply(s.end());
            if (start.equals(s.start()) && end.equals(s.end())) {
                all.add(s);
            } else if (s instanceof Cubic c) {
                Point control1 = c.control1().plus(start.minus(s.start()));
                all.add(new Cubic(start, control1, c.control2().plus(end.minus(s.end())), end));
            } else {
                all.add(new Line(start, end));
            }
        }
        return all;
    }

    /** The leg of a dart drawn within the piece goes with its end of the mouth; nothing else there moves. */
    private Point withMouth(Point p) {
        for (Dart dart : drawn.darts()) {
            for (Point mouth : List.of(dart.mouth1(), dart.mouth2())) {
                Optional<Point> to = p.distance(mouth) <= Shift.ON_OUTLINE ? moved(mouth) : Optional.empty();
                if (to.isPresent()) {
                    return p.plus(to.get().minus(mouth));
                }
            }
        }
        return p;
    }

    /** Where a mark goes that lies on a run drawn anew; empty where it stays. */
    private Optional<Point> moved(Point mark) {
        return runs.stream()
                .filter(RunStroke.class::isInstance)
                .flatMap(s -> ((RunStroke) s).marks().stream())
                .filter(m -> m.from().distance(mark) < 1e-6)
                .map(RunStroke.Mark::to)
                .findFirst();
    }

    /** With the place of the outline nearest to it, if that is on a run drawn anew. */
    private Point carried(Point p) {
        double away = drawn.outline().nearest(p).distance();
        for (Stroke stroke : runs) {
            if (stroke instanceof RunStroke run) {
                Nearest near = new Curve(run.before()).nearest(p);
                if (near.distance() <= away + 1e-6) {
                    Point to = run.marks().stream()
                            .filter(m -> m.from().distance(near.point()) < 1e-6)
                            .map(RunStroke.Mark::to)
                            .findFirst()
                            .orElseGet(() ->
                                    new Curve(run.after()).nearest(near.point()).point());
                    Point by = to.minus(near.point());
                    return by.norm() < 1e-9 ? p : p.plus(by);
                }
            }
        }
        return p;
    }
}
