package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a one-piece sleeve in four runs: the cap, the underarm seam at its end, the hem, and the underarm seam
 * at its start.
 *
 * @param outline   with ends of segments where the runs meet
 * @param start     where the cap starts
 * @param end       where it ends
 * @param seamEnd   where the seam that leaves the cap's end meets the hem
 * @param seamStart where the seam that comes to the cap's start leaves the hem
 */
record SleeveParts(Piece piece, Outline outline, Point start, Point end, Point seamEnd, Point seamStart) {
    /** A run of the outline. */
    enum Part {
        CAP,
        END_SEAM,
        HEM,
        START_SEAM
    }

    static SleeveParts of(Piece piece, boolean acceptProtected) throws Refusal {
        List<EdgeRun> caps = piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.CAP)
                .map(e -> new EdgeRun(piece, e))
                .toList();
        List<Point> starts = caps.stream().map(EdgeRun::start).toList();
        List<Point> ends = caps.stream().map(EdgeRun::end).toList();
        List<Point> start = starts.stream().filter(p -> !ends.contains(p)).toList();
        List<Point> end = ends.stream().filter(p -> !starts.contains(p)).toList();
        if (start.size() != 1 || end.size() != 1 || piece.onFold()) {
            throw Refusal.of("sleeve-not-whole").with("piece", piece.name());
        }
        EdgeRun after = seam(piece, end.get(0), true, acceptProtected);
        EdgeRun before = seam(piece, start.get(0), false, acceptProtected);
        Outline outline = piece.outline();
        for (Point p : List.of(start.get(0), end.get(0), after.end(), before.start())) {
            outline = outline.splitAt(outline.nearest(p).place());
        }
        return new SleeveParts(piece, outline, start.get(0), end.get(0), after.end(), before.start());
    }

    private static EdgeRun seam(Piece piece, Point corner, boolean forward, boolean acceptProtected) throws Refusal {
        for (Edge edge : piece.edges()) {
            EdgeRun run = new EdgeRun(piece, edge);
            if (edge.role() != EdgeRole.CAP && (forward ? run.start() : run.end()).equals(corner)) {
                if (edge.isProtected() && !acceptProtected) {
                    throw Refusal.of("edge-protected")
                            .with("piece", piece.name())
                            .with("edge", edge.name());
                }
                return run;
            }
        }
        throw Refusal.of("sleeve-not-whole").with("piece", piece.name());
    }

    Part part(int segment) {
        if (lies(segment, start, end)) {
            return Part.CAP;
        }
        if (lies(segment, end, seamEnd)) {
            return Part.END_SEAM;
        }
        return lies(segment, seamStart, start) ? Part.START_SEAM : Part.HEM;
    }

    private boolean lies(int segment, Point from, Point to) {
        int n = outline.segments().size();
        int first = outline.nearest(from).place().segment();
        int length = Math.floorMod(outline.nearest(to).place().segment() - first, n);
        return Math.floorMod(segment - first, n) < length;
    }

    /** The run of a place; where two runs meet, the cap and then the hem have the say. */
    private Part partAt(Place place) {
        Part leaving = part(place.segment());
        int n = outline.segments().size();
        Part coming = place.t() == 0 ? part((place.segment() + n - 1) % n) : leaving;
        boolean hasTheSay = coming == Part.CAP || (coming == Part.HEM && leaving != Part.CAP);
        return hasTheSay ? coming : leaving;
    }

    /** The outline with each run mapped. */
    Outline mapped(SleeveShape shape) {
        List<Segment> all = outline.segments();
        int n = all.size();
        List<Point> nodes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            nodes.add(shape.map(partAt(new Place(i, 0))).apply(all.get(i).start()));
        }
        List<Segment> mapped = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Segment s = all.get(i);
            Point from = nodes.get(i);
            Point to = nodes.get((i + 1) % n);
            if (shape.stays(part(i))) {
                mapped.add(s);
            } else if (s instanceof Cubic c) {
                mapped.add(new Cubic(
                        from,
                        shape.map(part(i)).apply(c.control1()),
                        shape.map(part(i)).apply(c.control2()),
                        to));
            } else {
                mapped.add(new Line(from, to));
            }
        }
        return new Outline(mapped);
    }

    /** Where a place on or beside the outline goes: by as much as the nearest place of the outline. */
    Point carried(SleeveShape shape, Point p) {
        Place place = outline.nearest(p).place();
        Part part = partAt(place);
        if (shape.stays(part)) {
            return p;
        }
        Point on = outline.point(place);
        return p.plus(shape.map(part).apply(on).minus(on));
    }
}
