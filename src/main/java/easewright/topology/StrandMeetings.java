package easewright.topology;

import easewright.geom.Point;

/** Finds where two strands meet: halves both until they are nearly straight, then closes in by Newton's method. */
final class StrandMeetings {
    /** Receives the strands' own parameters of a meeting. */
    interface Sink {
        void meet(double first, double second);
    }

    /** Points this close are the same, mm. */
    static final double SAME = 1e-9;

    /** Parts shorter than this are tried as they are, mm. */
    private static final double TINY = 1e-6;

    private static final int DEEPEST = 44;
    private static final int MOST_STEPS = 4000;

    private final Strand first;
    private final Strand second;
    private final Sink sink;
    private int steps;

    private StrandMeetings(Strand first, Strand second, Sink sink) {
        this.first = first;
        this.second = second;
        this.sink = sink;
    }

    static void find(Strand first, Strand second, Sink sink) {
        if (first.straight() && second.straight()) {
            straight(first, second, sink);
        } else {
            new StrandMeetings(first, second, sink)
                    .search(0, 1, first.start(), first.end(), 0, 1, second.start(), second.end(), 0);
        }
    }

    private static void straight(Strand a, Strand b, Sink sink) {
        Point p = a.end().minus(a.start());
        Point q = b.end().minus(b.start());
        Point gap = b.start().minus(a.start());
        double cross = p.cross(q);
        double lengths = p.norm() * q.norm();
        if (Math.abs(cross) > 1e-12 * lengths) {
            double t = gap.cross(q) / cross;
            double u = gap.cross(p) / cross;
            double slackT = SAME / p.norm();
            double slackU = SAME / q.norm();
            if (t >= -slackT && t <= 1 + slackT && u >= -slackU && u <= 1 + slackU) {
                sink.meet(clamp(t), clamp(u));
            }
            return;
        }
        if (Math.abs(gap.cross(p)) > SAME * p.norm()) {
            return;
        }
        // On one line: they meet where they overlap, told by both ends of the overlap.
        double from = gap.dot(p) / p.dot(p);
        double to = from + q.dot(p) / p.dot(p);
        double low = Math.max(0, Math.min(from, to));
        double high = Math.min(1, Math.max(from, to));
        if (low <= high) {
            sink.meet(low, clamp((low - from) / (to - from)));
        }
        if ((high - low) * p.norm() > SAME) {
            sink.meet(high, clamp((high - from) / (to - from)));
        }
    }

    private void search(double t0, double t1, Point a0, Point a1, double u0, double u1, Point b0, Point b1, int depth) {
        if (apart(a0, a1, b0, b1) || ++steps > MOST_STEPS) {
            return;
        }
        Point p = a1.minus(a0);
        Point q = b1.minus(b0);
        double tm = (t0 + t1) / 2;
        double um = (u0 + u1) / 2;
        double bendA = bend(first, t0, tm, t1, p);
        double bendB = bend(second, u0, um, u1, q);
        if (beside(p, bendA, q, bendB, b0.minus(a0))) {
            return;
        }
        boolean tiny = p.norm() < TINY && q.norm() < TINY;
        if (tiny || depth >= DEEPEST || Math.abs(p.cross(q)) > 1.2 * (bendA + bendB) * p.norm() * q.norm()) {
            // No two directions on these parts are the same, so they meet once at most.
            closeIn(t0, t1, u0, u1, a0, a1, b0, b1);
            return;
        }
        if (!first.straight() && (second.straight() || p.norm() >= q.norm())) {
            Point am = first.at(tm);
            search(t0, tm, a0, am, u0, u1, b0, b1, depth + 1);
            search(tm, t1, am, a1, u0, u1, b0, b1, depth + 1);
        } else {
            Point bm = second.at(um);
            search(t0, t1, a0, a1, u0, um, b0, bm, depth + 1);
            search(t0, t1, a0, a1, um, u1, bm, b1, depth + 1);
        }
    }

    /** Whether the second part lies wholly to one side of the first: boxes say little of two parts side by side. */
    private static boolean beside(Point p, double bendA, Point q, double bendB, Point gap) {
        double length = p.norm();
        if (length == 0) {
            return false;
        }
        double first = p.cross(gap) / length;
        double last = first + p.cross(q) / length;
        double nearest = first * last <= 0 ? 0 : Math.min(Math.abs(first), Math.abs(last));
        return nearest > 1.2 * (bendA * length + bendB * q.norm()) + SAME;
    }

    /** How far, as a sine, the directions on a part stray from its chord. */
    private static double bend(Strand strand, double from, double middle, double to, Point chord) {
        if (strand.straight()) {
            return 0;
        }
        return Math.max(
                sine(chord, strand.derivative(from)),
                Math.max(sine(chord, strand.derivative(middle)), sine(chord, strand.derivative(to))));
    }

    private static double sine(Point chord, Point slope) {
        double size = chord.norm() * slope.norm();
        return size == 0 ? 0 : Math.abs(chord.cross(slope)) / size;
    }

    private static boolean apart(Point a0, Point a1, Point b0, Point b1) {
        return Math.max(a0.x(), a1.x()) + SAME < Math.min(b0.x(), b1.x())
                || Math.max(b0.x(), b1.x()) + SAME < Math.min(a0.x(), a1.x())
                || Math.max(a0.y(), a1.y()) + SAME < Math.min(b0.y(), b1.y())
                || Math.max(b0.y(), b1.y()) + SAME < Math.min(a0.y(), a1.y());
    }

    private void closeIn(double t0, double t1, double u0, double u1, Point a0, Point a1, Point b0, Point b1) {
        Point p = a1.minus(a0);
        Point q = b1.minus(b0);
        double cross = p.cross(q);
        double t = (t0 + t1) / 2;
        double u = (u0 + u1) / 2;
        if (Math.abs(cross) > 1e-9 * p.norm() * q.norm()) {
            Point gap = b0.minus(a0);
            t = t0 + (t1 - t0) * Math.min(1.1, Math.max(-0.1, gap.cross(q) / cross));
            u = u0 + (u1 - u0) * Math.min(1.1, Math.max(-0.1, gap.cross(p) / cross));
        }
        for (int i = 0; i < 12; i++) {
            t = clamp(t);
            u = clamp(u);
            Point gap = second.at(u).minus(first.at(t));
            Point da = first.derivative(t);
            Point db = second.derivative(u);
            double det = da.cross(db);
            // A curve with a control place on its end has no slope there.
            if (gap.norm() < 1e-13 || det == 0 || Math.abs(det) < 1e-14 * da.norm() * db.norm()) {
                break;
            }
            t += gap.cross(db) / det;
            u += gap.cross(da) / det;
        }
        t = clamp(t);
        u = clamp(u);
        double slackT = 0.25 * (t1 - t0);
        double slackU = 0.25 * (u1 - u0);
        boolean here = t >= t0 - slackT && t <= t1 + slackT && u >= u0 - slackU && u <= u1 + slackU;
        if (here && first.at(t).distance(second.at(u)) <= SAME) {
            sink.meet(t, u);
        }
    }

    private static double clamp(double t) {
        return Math.min(1, Math.max(0, t));
    }
}
