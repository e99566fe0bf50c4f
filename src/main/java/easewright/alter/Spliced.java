package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A closed line that lay on another, laid on that one's new course.
 *
 * @param was    the line that it lay on
 * @param is     the new course of that
 * @param close  it lay on it within this, mm
 * @param freely where it may lie anyhow
 */
record Spliced(Outline was, Outline is, double close, Predicate<Point> freely) {
    /** A drawn line lies on a computed one within this, mm. */
    static final double LIES_ON = 0.05;

    private static final int LOOKS = 4;

    /** A line joins another at a corner of its own that is no farther off than what it may lie off, and turns by more, radians. */
    private static final double CORNER = Math.toRadians(20);

    /**
     * The line with the stretches where {@code is} differs from {@code was} taken from {@code is}, the rest untouched;
     * empty where it does not lie on {@code was} there.
     */
    Optional<List<Segment>> along(List<Segment> line, List<Stretch> stretches) {
        Outline now = new Outline(line);
        for (Stretch stretch : stretches) {
            Place from = joint(now, stretch.from());
            Place to = joint(now, stretch.to());
            boolean lies = now.point(from).distance(stretch.from()) <= close
                    && now.point(to).distance(stretch.to()) <= close
                    && now.run(from, to).segments().stream().allMatch(this::liesOn);
            if (!lies) {
                return Optional.empty();
            }
            List<Segment> run = Redraw.run(is, stretch).segments();
            now = replaced(now, from, to, close > LIES_ON ? Fewer.of(run, LIES_ON / 5) : Fewer.of(run));
        }
        return Optional.of(now.segments());
    }

    /** The place of the line that a place on the other is joined to: a corner of its own where one is as near. */
    private Place joint(Outline line, Point p) {
        Place near = line.nearest(p).place();
        int count = line.segments().size();
        for (int i = 0; i < count; i++) {
            Segment segment = line.segments().get(i);
            Point in = line.segments().get((i + count - 1) % count).tangent(1);
            Point out = segment.tangent(0);
            boolean corner = Math.abs(Math.atan2(in.cross(out), in.dot(out))) > CORNER;
            if (corner && close > LIES_ON && segment.start().distance(p) <= close) {
                return new Place(i, 0);
            }
        }
        return near;
    }

    private boolean liesOn(Segment segment) {
        for (int k = 0; k <= LOOKS; k++) {
            Point p = segment.at(k / (double) LOOKS);
            if (was.nearest(p).distance() > close && !freely.test(p)) {
                return false;
            }
        }
        return true;
    }

    /** The outline with a run replaced, begun where it was begun if that place is left. */
    private static Outline replaced(Outline outline, Place from, Place to, List<Segment> run) {
        Point begin = outline.segments().get(0).start();
        List<Segment> rest = new ArrayList<>(outline.run(to, from).segments());
        Point start = rest.get(rest.size() - 1).end();
        Point end = rest.get(0).start();
        List<Segment> all = new ArrayList<>(run);
        all.set(0, ledFrom(all.get(0), start));
        all.set(all.size() - 1, ledTo(all.get(all.size() - 1), end));
        all.addAll(rest);
        int first = 0;
        for (int i = 1; i < all.size(); i++) {
            if (all.get(i).start().distance(begin) < all.get(first).start().distance(begin)) {
                first = i;
            }
        }
        List<Segment> begun = new ArrayList<>(all.subList(first, all.size()));
        begun.addAll(all.subList(0, first));
        return new Outline(begun);
    }

    /** With its start moved, setting out in the same direction. */
    private static Segment ledFrom(Segment segment, Point start) {
        return segment instanceof Cubic c
                ? new Cubic(start, c.control1().plus(start.minus(c.start())), c.control2(), c.end())
                : Ends.startingAt(segment, start);
    }

    private static Segment ledTo(Segment segment, Point end) {
        return segment instanceof Cubic c
                ? new Cubic(c.start(), c.control1(), c.control2().plus(end.minus(c.end())), end)
                : Ends.endingAt(segment, end);
    }
}
