package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws a run in fewer segments: a parallel is found in many small curves, and nobody wants all their nodes. Crumbs go,
 * lines that go straight on become one, and curves that go smoothly on become one where that stays close to them.
 */
final class Fewer {
    /** One curve in the stead of several lies this near to them, mm. */
    private static final double CLOSE = 0.001;

    /** A segment no longer than this is none, mm. */
    static final double CRUMB = 1e-6;

    /** Two segments that turn by less go smoothly on, radians. */
    private static final double SMOOTH = 1e-4;

    private static final double STRAIGHT = 1e-9;
    private static final int LOOKS = 12;
    private static final int STEPS = 6;

    private Fewer() {}

    static List<Segment> of(List<Segment> segments) {
        return of(segments, CLOSE);
    }

    /** The same where the curves may lie so far from them, mm. */
    static List<Segment> of(List<Segment> segments, double close) {
        List<Segment> kept = joined(withoutCrumbs(segments));
        List<Segment> all = new ArrayList<>();
        int i = 0;
        while (i < kept.size()) {
            int smooth = i;
            while (smooth + 1 < kept.size() && goesOn(kept.get(smooth), kept.get(smooth + 1))) {
                smooth++;
            }
            // As many as go into one curve, found by halving how many are tried.
            Segment one = kept.get(i);
            int last = i;
            for (int most = smooth; most > i && last == i; most = i + (most - i) / 2) {
                Cubic fitted = fit(kept.subList(i, most + 1), close);
                if (fitted != null) {
                    one = fitted;
                    last = most;
                }
            }
            all.add(one);
            i = last + 1;
        }
        return all;
    }

    static List<Segment> withoutCrumbs(List<Segment> segments) {
        List<Segment> all = new ArrayList<>();
        for (Segment segment : segments) {
            if (segment.length() > CRUMB) {
                all.add(
                        all.isEmpty()
                                ? segment
                                : Ends.startingAt(
                                        segment, all.get(all.size() - 1).end()));
            }
        }
        return all;
    }

    /** With lines that go straight on made one. */
    private static List<Segment> joined(List<Segment> segments) {
        List<Segment> all = new ArrayList<>();
        for (Segment segment : segments) {
            Segment before = all.isEmpty() ? null : all.get(all.size() - 1);
            if (before instanceof Line
                    && segment instanceof Line
                    && Math.abs(before.tangent(1).cross(segment.tangent(0))) < STRAIGHT
                    && before.tangent(1).dot(segment.tangent(0)) > 0) {
                all.set(all.size() - 1, new Line(before.start(), segment.end()));
            } else {
                all.add(segment);
            }
        }
        return all;
    }

    private static boolean goesOn(Segment one, Segment two) {
        return one instanceof Cubic
                && two instanceof Cubic
                && Math.abs(one.tangent(1).cross(two.tangent(0))) < SMOOTH
                && one.tangent(1).dot(two.tangent(0)) > 0;
    }

    /** The curve with the ends and end directions of several that lies closest to them; null if not close enough. */
    private static Cubic fit(List<Segment> parts, double close) {
        Curve curve = new Curve(parts);
        double length = curve.length();
        Point first = parts.get(0).tangent(0);
        Point last = parts.get(parts.size() - 1).tangent(1);
        return fit(curve.start(), first, curve.end(), last, places(curve, length), close);
    }

    private static List<Point> places(Curve curve, double length) {
        List<Point> places = new ArrayList<>();
        for (int k = 1; k < LOOKS; k++) {
            places.add(curve.pointAtLength(length * k / LOOKS));
        }
        return places;
    }

    /** The curve that follows another up to its end and then goes on to a place beyond; null if not close enough. */
    static Cubic ledOn(Segment curve, Point beyond, double close) {
        List<Point> places = places(new Curve(List.of(curve)), curve.length());
        places.add(curve.end());
        return fit(
                curve.start(),
                curve.tangent(0),
                beyond,
                beyond.minus(curve.end()).unit(),
                places,
                close);
    }

    private static Cubic fit(Point start, Point first, Point end, Point last, List<Point> places, double close) {
        double length = start.distance(end);
        double arm0 = length / 3;
        double arm1 = length / 3;
        Cubic fitted = cubic(start, first, arm0, last, arm1, end);
        for (int step = 0; step < STEPS; step++) {
            // Gauss and Newton: how far each place lies beside the curve, and how that changes with both arms.
            double a = 0;
            double b = 0;
            double d = 0;
            double p = 0;
            double q = 0;
            for (Point place : places) {
                double t = fitted.nearest(place);
                Point across = fitted.tangent(t).quarterTurned();
                double off = place.minus(fitted.at(t)).dot(across);
                double by0 = 3 * t * (1 - t) * (1 - t) * first.dot(across);
                double by1 = -3 * t * t * (1 - t) * last.dot(across);
                a += by0 * by0;
                b += by0 * by1;
                d += by1 * by1;
                p += by0 * off;
                q += by1 * off;
            }
            double det = a * d - b * b;
            if (!(det > 1e-12 * a * d)) {
                break;
            }
            arm0 += (p * d - q * b) / det;
            arm1 += (q * a - p * b) / det;
            if (!(arm0 > 0 && arm1 > 0 && arm0 < 2 * length && arm1 < 2 * length)) {
                return null;
            }
            fitted = cubic(start, first, arm0, last, arm1, end);
        }
        for (Point place : places) {
            if (fitted.at(fitted.nearest(place)).distance(place) > close) {
                return null;
            }
        }
        return fitted;
    }

    private static Cubic cubic(Point start, Point first, double arm0, Point last, double arm1, Point end) {
        return new Cubic(start, start.plus(first.times(arm0)), end.minus(last.times(arm1)), end);
    }
}
