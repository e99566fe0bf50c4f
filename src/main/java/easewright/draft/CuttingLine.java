package easewright.draft;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * The cutting line: each stretch of the stitching line moved outwards by its own allowance, corners drawn out to
 * where the two cutting lines meet. Curves are followed to a few thousandths of a millimetre.
 */
final class CuttingLine {
    /** A cubic is followed in this many parts. */
    private static final int PARTS = 6;

    /** Directions closer than this (radians) go on without a corner. */
    private static final double SMOOTH = 1e-3;

    private CuttingLine() {}

    /** A cutting line, and for each stitched segment the place on it that answers to the segment's start. */
    record Cut(Outline outline, List<Point> starts) {
        Cut {
            starts = List.copyOf(starts);
        }
    }

    /**
     * Draws the line.
     *
     * @param allowances of each stitched segment, mm
     * @param hems       whether the segment is a hem, whose allowance is turned up and so must be as wide as the piece
     *                   it is turned against: mirrored about the hem line (blog.fabrics-store.com/?p=32999, read)
     */
    static Cut around(List<Segment> stitching, List<Double> allowances, List<Boolean> hems) {
        double outwards = new Outline(stitching).signedArea() > 0 ? -1 : 1;
        int n = stitching.size();
        List<List<Segment>> moved = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            moved.add(new ArrayList<>(moved(stitching.get(i), outwards * allowances.get(i))));
        }
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            if (hems.get(next) && !hems.get(i)) {
                turnUp(moved.get(i), moved.get(next), stitching.get(next));
            } else if (hems.get(i) && !hems.get(next)) {
                List<Segment> side = reversed(moved.get(next));
                List<Segment> hem = reversed(moved.get(i));
                turnUp(side, hem, stitching.get(i));
                replace(moved.get(next), reversed(side));
                replace(moved.get(i), reversed(hem));
            } else {
                join(moved.get(i), moved.get(next));
            }
        }
        List<Segment> all = new ArrayList<>();
        moved.forEach(all::addAll);
        List<Point> starts = moved.stream().map(run -> run.get(0).start()).toList();
        for (int i = 0; i < all.size(); i++) {
            all.set(i, Places.endingAt(all.get(i), all.get((i + 1) % all.size()).start()));
        }
        return new Cut(new Outline(all), starts);
    }

    private static List<Segment> moved(Segment segment, double by) {
        if (segment instanceof Cubic cubic) {
            List<Segment> parts = new ArrayList<>();
            for (int i = 0; i < PARTS; i++) {
                Cubic part = (Cubic) cubic.between(i / (double) PARTS, (i + 1) / (double) PARTS);
                parts.add(Cubic.hermite(
                        beside(part, 0, by), speed(part, 0, by), beside(part, 1, by), speed(part, 1, by)));
            }
            return Places.joined(parts);
        }
        return List.of(new Line(beside(segment, 0, by), beside(segment, 1, by)));
    }

    private static Point beside(Segment segment, double t, double by) {
        return segment.at(t).plus(segment.tangent(t).quarterTurned().times(by));
    }

    /** How fast the moved place travels: the curve's own speed, less or more by how it bends. */
    private static Point speed(Cubic curve, double t, double by) {
        Point first = curve.derivative(t);
        double size = first.norm();
        if (size < 1e-9) {
            return curve.tangent(t).times(0);
        }
        double bend = first.cross(curve.secondDerivative(t)) / (size * size * size);
        return first.times(1 - by * bend);
    }

    private static void join(List<Segment> before, List<Segment> after) {
        Segment last = before.get(before.size() - 1);
        Segment first = after.get(0);
        Point end = last.end();
        Point start = first.start();
        Point out = last.tangent(1);
        Point in = first.tangent(0);
        if (end.distance(start) < 1e-6) {
            return;
        }
        double turn = out.cross(in);
        if (Math.abs(turn) < SMOOTH) {
            before.add(new Line(end, start));
            return;
        }
        double ahead = start.minus(end).cross(in) / turn;
        double back = start.minus(end).cross(out) / turn;
        Point corner = end.plus(out.times(ahead));
        extend(before, ahead, corner);
        extendStart(after, -back, corner);
    }

    /** Leads a side's cutting line to the hem line and from there, mirrored in it, to the hem's cutting line. */
    private static void turnUp(List<Segment> side, List<Segment> hem, Segment hemLine) {
        Segment last = side.get(side.size() - 1);
        Point down = last.tangent(1);
        Point along = hemLine.end().minus(hemLine.start()).unit();
        double ahead = hemLine.start().minus(last.end()).cross(along) / down.cross(along);
        Point turn = last.end().plus(down.times(ahead));
        Point mirrored = down.minus(along.times(2 * down.dot(along)));
        Point first = hem.get(0).start();
        double below = first.minus(turn).cross(along) / mirrored.cross(along);
        extend(side, ahead, turn);
        Point corner = turn.plus(mirrored.times(below));
        side.add(new Line(turn, corner));
        hem.set(0, Places.startingAt(hem.get(0), corner));
    }

    private static List<Segment> reversed(List<Segment> run) {
        return new ArrayList<>(new Curve(run).reversed().segments());
    }

    private static void replace(List<Segment> run, List<Segment> with) {
        run.clear();
        run.addAll(with);
    }

    private static void extend(List<Segment> run, double ahead, Point corner) {
        int i = run.size() - 1;
        Segment last = run.get(i);
        if (last instanceof Line) {
            run.set(i, new Line(last.start(), corner));
        } else if (ahead >= 0) {
            run.add(new Line(last.end(), corner));
        } else {
            Curve kept = cutShort(new Curve(run), -ahead);
            run.clear();
            run.addAll(kept.segments());
            run.add(new Line(kept.end(), corner));
        }
    }

    private static void extendStart(List<Segment> run, double before, Point corner) {
        Segment first = run.get(0);
        if (first instanceof Line) {
            run.set(0, new Line(corner, first.end()));
        } else if (before >= 0) {
            run.add(0, new Line(corner, first.start()));
        } else {
            Curve kept = cutShort(new Curve(run).reversed(), -before).reversed();
            run.clear();
            run.add(new Line(corner, kept.start()));
            run.addAll(kept.segments());
        }
    }

    /** The curve without its last stretch of the given length; a little of it always remains. */
    static Curve cutShort(Curve curve, double by) {
        double left = Math.max(curve.length() - by, curve.length() * 0.05);
        List<Segment> kept = new ArrayList<>();
        for (Segment segment : curve.segments()) {
            double own = segment.length();
            if (own < left) {
                kept.add(segment);
                left -= own;
            } else {
                kept.add(segment.between(0, segment.parameterAtLength(left)));
                break;
            }
        }
        return new Curve(kept);
    }
}
