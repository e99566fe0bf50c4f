package easewright.draft;

import easewright.geom.Crossing;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/** Measures drafted pieces with a plain tape: independent of the measuring room, so that the drafts stand alone. */
final class Sewn {
    private Sewn() {}

    /** Length of an edge along its stitching line, dart mouths left out, mm. */
    static double length(Piece piece, Edge edge) {
        Outline line = piece.outline();
        if (piece.drawn() == LineKind.CUTTING) {
            // Only straight bands are drawn by their cutting line: both ends lie one allowance further out, or none.
            Curve run = edge.on(line);
            double out = 0;
            for (Edge other : piece.edges()) {
                boolean corner = Math.abs(direction(other).cross(direction(edge))) > 0.5;
                boolean meets = other.to().equals(edge.from()) || other.from().equals(edge.to());
                out += corner && meets ? other.allowance().orElse(piece.allowance()) : 0;
            }
            return run.length() - out;
        }
        double sum = edge.on(line).length();
        for (Dart dart : piece.darts()) {
            if (dart.edge().filter(edge.name()::equals).isPresent()) {
                double onOneWay = run(line, dart.mouth1(), dart.mouth2());
                double otherWay = run(line, dart.mouth2(), dart.mouth1());
                sum -= Math.min(onOneWay, otherWay);
            }
        }
        return sum;
    }

    private static Point direction(Edge edge) {
        return edge.to().minus(edge.from()).unit();
    }

    private static double run(Outline line, Point from, Point to) {
        return line.run(line.nearest(from).place(), line.nearest(to).place()).length();
    }

    static double drift(Pattern pattern, Mate mate) {
        return sum(pattern, mate.first()) - sum(pattern, mate.second()) - mate.declaredEase();
    }

    private static double sum(Pattern pattern, List<EdgeRef> refs) {
        double sum = 0;
        for (EdgeRef ref : refs) {
            Piece piece = pattern.piece(ref.piece()).orElseThrow();
            sum += ref.times() * length(piece, piece.edge(ref.edge()).orElseThrow());
        }
        return sum;
    }

    static double girth(Pattern pattern, String name) {
        Level level = pattern.level(name).orElseThrow();
        double sum = 0;
        for (Piece piece : pattern.pieces()) {
            LevelMark mark = piece.level(name).orElse(null);
            if (mark != null && mark.counts()) {
                sum += piece.count(level) * width(piece, mark);
            }
        }
        return sum;
    }

    private static double width(Piece piece, LevelMark mark) {
        if (mark.along().isPresent()) {
            return length(piece, piece.edge(mark.along().get()).orElseThrow());
        }
        Point through = mark.through().orElseThrow();
        List<Crossing> met = piece.outline().crossings(through, new Point(1, 0));
        double left = Double.NaN;
        for (Crossing crossing : met) {
            if (crossing.along() <= 0) {
                left = crossing.along();
            } else {
                return crossing.along() - left;
            }
        }
        throw new AssertionError("Level " + mark.level() + " does not cross " + piece.id());
    }

    /** Whether the outline, followed in short straight steps, never crosses itself. */
    static boolean simple(Outline outline) {
        List<Point> steps = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            for (int i = 0; i < 12; i++) {
                steps.add(segment.at(i / 12.0));
            }
        }
        int n = steps.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < n; j++) {
                boolean neighbours = i == 0 && j == n - 1;
                if (!neighbours && cross(steps.get(i), steps.get(i + 1), steps.get(j), steps.get((j + 1) % n))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point from, Point to, Point p) {
        return Math.signum(to.minus(from).cross(p.minus(from)));
    }
}
