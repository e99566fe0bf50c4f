package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cutting line drawn anew along one stretch of a trued stitching line, with its corners made as they were. */
final class CutCorner {
    /**
     * A corner of the allowance is made in one of our ways, lines going on or else a hem turned up, if it lies this near to
     * where we should have drawn it, mm.
     */
    private static final double SAME_CORNER = 2.5;

    /** Where a stretch ends, the line drawn anew goes on in the old one within this, mm. */
    private static final double JOINS = 1e-3;

    /** Where the line turns by more it has a corner, radians. */
    private static final double CORNER = Math.toRadians(20);

    private final Piece drawn;
    private final Piece was;
    private final Piece is;
    private final Outline closedIs;
    private final Point from;
    private final Point to;
    private final Curve before;
    private final Curve old;
    private final Curve now;

    /**
     * @param drawn as it is drawn, by its cutting line
     * @param was   the same drawn by its stitching line
     * @param is    that one trued
     * @param closedWas the stitching line as it was, with the seams led on over cut-out darts
     * @param closedIs  the same trued
     * @param stretch   where they differ
     */
    CutCorner(Piece drawn, Piece was, Piece is, Outline closedWas, Outline closedIs, Stretch stretch) throws Refusal {
        this.drawn = drawn;
        this.was = was;
        this.is = is;
        this.closedIs = closedIs;
        from = across(stretch.from());
        to = across(stretch.to());
        Outline outline = drawn.outline();
        if (outline.nearest(from).distance() > JOINS || outline.nearest(to).distance() > JOINS) {
            throw refused("allowance-drawn-otherwise");
        }
        before = between(outline);
        Curve oldFound = null;
        Curve nowFound = null;
        for (boolean turnedUp : new boolean[] {false, true}) {
            Optional<Outline> was1 = Around.of(was.withOutline(closedWas), turnedUp);
            Optional<Outline> is1 = Around.of(is.withOutline(closedIs), turnedUp);
            if (oldFound == null && was1.isPresent() && is1.isPresent()) {
                Curve candidate = between(was1.get());
                if (off(candidate) < SAME_CORNER) {
                    oldFound = candidate;
                    nowFound = between(is1.get());
                }
            }
        }
        if (oldFound == null) {
            throw refused("allowance-drawn-otherwise");
        }
        old = oldFound;
        now = new Curve(CurvedCorner.drawn(Fewer.of(nowFound.segments()), CORNER));
    }

    private Refusal refused(String code) {
        return Refusal.of(code).with("piece", drawn.name());
    }

    /** The place of the cutting line square across from one of the stitching line. */
    private Point across(Point sewn) {
        Place place = closedIs.nearest(sewn).place();
        double width = drawn.allowance();
        Piece whole = is.withOutline(closedIs);
        for (Edge edge : is.edges()) {
            if (new EdgeRun(whole, edge).holds(place)) {
                width = drawn.allowanceInside(edge);
            }
        }
        double side = closedIs.signedArea() >= 0 ? 1 : -1;
        Point along = closedIs.segments().get(place.segment()).tangent(place.t());
        return sewn.minus(along.quarterTurned().times(side * width));
    }

    private Curve between(Outline line) {
        return line.run(line.nearest(from).place(), line.nearest(to).place());
    }

    /** By how much the corners of a line miss the drawn one. */
    private double off(Curve line) {
        double most = 0;
        for (Point corner : corners(line)) {
            most = Math.max(most, before.nearest(corner).distance());
        }
        return most;
    }

    Stroke stroke() throws Refusal {
        List<RunStroke.Mark> marks = new ArrayList<>();
        List<Point> cornersWas = corners(old);
        List<Point> cornersIs = corners(now);
        for (int i = 0; i < was.edges().size(); i++) {
            Edge edge = drawn.edges().get(i);
            addEnd(marks, edge.from(), cornersWas, cornersIs);
            addEnd(marks, edge.to(), cornersWas, cornersIs);
        }
        for (int i = 0; i < was.notches().size(); i++) {
            Notch sewn = is.notches().get(i);
            if (!sewn.at().equals(was.notches().get(i).at())) {
                Redraw.add(
                        marks,
                        before,
                        drawn.notches().get(i).at(),
                        now.nearest(sewn.at()).point());
            }
        }
        List<Segment> after = new ArrayList<>(now.segments());
        for (int i = 0; i < was.darts().size(); i++) {
            Dart dart = drawn.darts().get(i);
            if (before.nearest(dart.mouth1()).distance() <= Shift.ON_OUTLINE
                    && before.nearest(dart.mouth2()).distance() <= Shift.ON_OUTLINE) {
                Dart sewn = is.darts().get(i);
                Point mouth1 = onLeg(sewn.mouth1(), sewn.point());
                Point mouth2 = onLeg(sewn.mouth2(), sewn.point());
                Redraw.add(marks, before, dart.mouth1(), mouth1);
                Redraw.add(marks, before, dart.mouth2(), mouth2);
                if (SewnCopy.isCutOut(drawn, dart)) {
                    after = withLegs(new Curve(after), dart, mouth1, mouth2);
                }
            }
        }
        return new RunStroke(drawn.id(), before.segments(), ended(after), marks);
    }

    private void addEnd(List<RunStroke.Mark> marks, Point end, List<Point> cornersWas, List<Point> cornersIs)
            throws Refusal {
        if (before.nearest(end).distance() > Shift.ON_OUTLINE
                || Math.min(end.distance(before.start()), end.distance(before.end())) <= JOINS) {
            return;
        }
        if (cornersWas.size() != cornersIs.size()) {
            throw refused("allowance-drawn-otherwise");
        }
        Point best = null;
        double least = SAME_CORNER;
        for (int i = 0; i < cornersWas.size(); i++) {
            if (cornersWas.get(i).distance(end) < least) {
                least = cornersWas.get(i).distance(end);
                best = cornersIs.get(i);
            }
        }
        Redraw.add(marks, before, end, best == null ? now.nearest(end).point() : best);
    }

    /** Where the line of a leg meets the new cutting line. */
    private Point onLeg(Point sewn, Point point) throws Refusal {
        Point leg = point.minus(sewn).unit();
        Point best = null;
        for (Segment segment : now.segments()) {
            for (double t : segment.crossings(sewn, leg)) {
                Point p = segment.at(t);
                if (best == null || p.distance(sewn) < best.distance(sewn)) {
                    best = p;
                }
            }
        }
        if (best == null) {
            throw refused("allowance-drawn-otherwise");
        }
        return best;
    }

    /** The run with the dart's own legs, shaped or straight, in the stead of what lies between its mouths. */
    private List<Segment> withLegs(Curve run, Dart dart, Point mouth1, Point mouth2) throws Refusal {
        Place place1 = run.nearest(mouth1).place();
        Place place2 = run.nearest(mouth2).place();
        boolean inOrder = place1.compareTo(place2) <= 0;
        Point first = inOrder ? mouth1 : mouth2;
        Point second = inOrder ? mouth2 : mouth1;
        List<Segment> legs = new ArrayList<>(DartMouth.of(drawn, dart).inner());
        legs.set(0, Ends.startingAt(legs.get(0), first));
        legs.set(legs.size() - 1, Ends.endingAt(legs.get(legs.size() - 1), second));
        List<Segment> all = new ArrayList<>(part(run, new Place(0, 0), inOrder ? place1 : place2));
        int joint = all.size() - 1;
        all.set(joint, Ends.endingAt(all.get(joint), first));
        all.addAll(legs);
        List<Segment> rest =
                part(run, inOrder ? place2 : place1, new Place(run.segments().size() - 1, 1));
        rest.set(0, Ends.startingAt(rest.get(0), second));
        all.addAll(rest);
        return all;
    }

    private List<Segment> ended(List<Segment> after) {
        List<Segment> all = new ArrayList<>(Fewer.of(after));
        all.set(0, Ends.startingAt(all.get(0), before.start()));
        all.set(all.size() - 1, Ends.endingAt(all.get(all.size() - 1), before.end()));
        return all;
    }

    private static List<Segment> part(Curve run, Place from, Place to) {
        List<Segment> all = new ArrayList<>();
        for (int i = from.segment(); i <= to.segment(); i++) {
            double start = i == from.segment() ? from.t() : 0;
            double end = i == to.segment() ? to.t() : 1;
            if (end > start) {
                all.add(run.segments().get(i).between(start, end));
            }
        }
        return all;
    }

    /** The sharp corners within a run, but for those of folded caps. */
    private List<Point> corners(Curve run) {
        List<Point> corners = new ArrayList<>();
        List<Segment> segments =
                run.segments().stream().filter(s -> s.length() > JOINS).toList();
        for (int i = 1; i < segments.size(); i++) {
            Point in = segments.get(i - 1).tangent(1);
            Point out = segments.get(i).tangent(0);
            Point corner = segments.get(i).start();
            if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) > CORNER && !Redraw.inMouth(drawn, corner)) {
                corners.add(corner);
            }
        }
        return corners;
    }
}
