package easewright.topology;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Parallels of the drawn segments, joined at the drawn corners: where they meet they are cut off, where they part both
 * go straight on until they meet. What cannot be joined so is bridged by a straight line, which leaves a loop for
 * {@link Loops} to cut away.
 */
final class Corners {
    /** A corner is drawn out to at most this many times the distance; beyond, it is cut off straight. */
    private static final double LONGEST = 10;

    private static final double JOINED = 1e-7;

    /**
     * Sides part by no more where one goes on in the direction of the other but for rounding, mm: they nearly lie on one
     * another then, and where they would meet could be looked for at thousands of places.
     */
    private static final double SMOOTH = 1e-5;

    private final Outline drawn;
    private final double[] distances;
    private final double side;
    private final Parallels parallels;
    private final int count;
    private final List<List<Segment>> chains = new ArrayList<>();
    private final Place[] starts;
    private final Place[] ends;
    private final Point[] corners;

    /**
     * @param side +1 where the inside lies clockwise of the direction of travel, −1 otherwise
     */
    Corners(Outline drawn, double[] distances, double side, Parallels parallels) {
        this.parallels = parallels;
        this.drawn = drawn;
        this.distances = distances;
        this.side = side;
        count = distances.length;
        starts = new Place[count];
        ends = new Place[count];
        corners = new Point[count];
        for (int i = 0; i < count; i++) {
            chains.add(extended(i));
            starts[i] = new Place(1, 0);
            ends[i] = new Place(chains.get(i).size() - 2, 1);
        }
        parallels.close();
        for (int i = 0; i < count; i++) {
            join(i, (i + 1) % count);
        }
        for (int i = 0; i < count; i++) {
            if (starts[i].compareTo(ends[i]) >= 0) {
                loosen((i + count - 1) % count, i);
                loosen(i, (i + 1) % count);
            }
        }
    }

    /** The parallel of a drawn segment with a straight lead-in and lead-out. */
    private List<Segment> extended(int i) {
        List<Segment> parallel = parallels.of(drawn.segments().get(i), side * distances[i]);
        Point start = parallel.get(0).start();
        Point end = parallel.get(parallel.size() - 1).end();
        Segment source = drawn.segments().get(i);
        double before = reach(i, (i + count - 1) % count);
        double after = reach(i, (i + 1) % count);
        List<Segment> chain = new ArrayList<>();
        chain.add(new Line(start.minus(source.tangent(0).times(before)), start));
        chain.addAll(parallel);
        chain.add(new Line(end, end.plus(source.tangent(1).times(after))));
        return chain;
    }

    private double reach(int i, int neighbour) {
        return LONGEST * Math.max(Math.abs(distances[i]), Math.abs(distances[neighbour]));
    }

    private void join(int i, int next) {
        List<Segment> one = chains.get(i);
        List<Segment> two = chains.get(next);
        Point end = one.get(one.size() - 2).end();
        Point start = two.get(1).start();
        corners[next] = start;
        if (end.distance(start) <= SMOOTH) {
            return;
        }
        if (!drawnOut(i, next, end, start)) {
            cutOff(i, next);
        }
    }

    /** The sides part: both go straight on until they meet, if that is not too far out. */
    private boolean drawnOut(int i, int next, Point end, Point start) {
        Point on = drawn.segments().get(i).tangent(1);
        Point off = drawn.segments().get(next).tangent(0);
        double cross = on.cross(off);
        if (cross == 0) {
            return false;
        }
        Point gap = start.minus(end);
        double ahead = gap.cross(off) / cross;
        double behind = -gap.cross(on) / cross;
        double reach = reach(i, next);
        if (ahead < -JOINED || behind < -JOINED || ahead >= reach || behind >= reach) {
            return false;
        }
        ends[i] = new Place(chains.get(i).size() - 1, Math.max(0, ahead / reach(i, next)));
        starts[next] = new Place(0, 1 - Math.max(0, behind / reach(next, i)));
        corners[next] = end.plus(on.times(ahead));
        return true;
    }

    /** The sides overlap: each is cut off where it meets the other nearest to the drawn corner. */
    private void cutOff(int i, int next) {
        Point corner = drawn.segments().get(next).start();
        List<Segment> one = chains.get(i);
        List<Segment> two = chains.get(next);
        double[] nearest = {Double.POSITIVE_INFINITY};
        for (Strand a : Strand.of(one)) {
            for (Strand b : Strand.of(two)) {
                if (a.segment() == 0 || b.segment() == two.size() - 1 || a.apart(b, StrandMeetings.SAME)) {
                    continue;
                }
                StrandMeetings.find(a, b, (t, u) -> {
                    Point p = a.at(t);
                    if (p.distance(corner) < nearest[0]) {
                        nearest[0] = p.distance(corner);
                        ends[i] = a.place(t);
                        starts[next] = b.place(u);
                        corners[next] = p;
                    }
                });
            }
        }
    }

    /** Leaves the overlap of a corner that cannot be cut off, since a side is too short for both its corners. */
    private void loosen(int i, int next) {
        if (ends[i].segment() == chains.get(i).size() - 1) {
            return;
        }
        List<Segment> one = chains.get(i);
        ends[i] = new Place(one.size() - 2, 1);
        starts[next] = new Place(1, 0);
        corners[next] = chains.get(next).get(1).start();
    }

    /** The joined parallel, which may still have loops. */
    List<Part> joined() {
        List<Part> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Part> own = trimmed(i);
            if (own.isEmpty()) {
                continue;
            }
            bridge(all, own.get(0).segment().start(), i);
            Part first = own.get(0);
            if (!all.isEmpty()) {
                own.set(
                        0,
                        first.withEnds(
                                all.get(all.size() - 1).segment().end(),
                                first.segment().end()));
            }
            all.addAll(own);
        }
        bridge(all, all.get(0).segment().start(), count - 1);
        int last = all.size() - 1;
        Part closing = all.get(last);
        all.set(
                last,
                closing.withEnds(closing.segment().start(), all.get(0).segment().start()));
        return all;
    }

    private static void bridge(List<Part> all, Point to, int source) {
        if (!all.isEmpty()) {
            Point from = all.get(all.size() - 1).segment().end();
            if (from.distance(to) > SMOOTH) {
                all.add(new Part(new Line(from, to), source));
            }
        }
    }

    private List<Part> trimmed(int i) {
        List<Part> own = new ArrayList<>();
        List<Segment> chain = chains.get(i);
        for (int k = starts[i].segment(); k <= ends[i].segment(); k++) {
            double from = k == starts[i].segment() ? starts[i].t() : 0;
            double to = k == ends[i].segment() ? ends[i].t() : 1;
            if (to > from) {
                Segment piece = chain.get(k).between(from, to);
                if (piece.start().distance(piece.end()) > StrandMeetings.SAME || chain.size() == 3) {
                    Part part = new Part(piece, i);
                    own.add(
                            own.isEmpty()
                                    ? part
                                    : part.withEnds(
                                            own.get(own.size() - 1).segment().end(), piece.end()));
                }
            }
        }
        return own;
    }

    /** Where the corner at the start of a drawn segment has gone. */
    Point corner(int segment) {
        return corners[segment];
    }
}
