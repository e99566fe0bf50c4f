package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * An edge made longer at the ends at which it meets a seam, such as an armhole at the underarm: the corner moves out
 * square to the grain, the edge follows up to its next notch or its middle, and the seam dies away to its own next notch
 * or end (docs/sources.md 4.2, C-228: a longer armhole is added at the underarm seams).
 */
final class EdgeEnds implements EdgeLength.Stretch {
    private final Piece piece;
    private final Edge edge;
    private final double amount;
    private final boolean acceptProtected;

    /**
     * @param amount by about how much it shall become longer in all, mm
     */
    EdgeEnds(Piece piece, Edge edge, double amount, boolean acceptProtected) throws Refusal {
        this.piece = piece;
        this.edge = edge;
        this.amount = amount;
        this.acceptProtected = acceptProtected;
        if (ends(piece).isEmpty()) {
            throw Refusal.of("edge-without-seam").with("piece", piece.name()).with("edge", edge.name());
        }
    }

    /** Whether each end at which the edge meets a seam is its end, else its start. */
    private List<Boolean> ends(Piece of) throws Refusal {
        EdgeRun run = new EdgeRun(of, of.edge(edge.name()).orElseThrow());
        List<Boolean> ends = new ArrayList<>();
        for (boolean atEnd : new boolean[] {false, true}) {
            for (Edge other : of.edges()) {
                EdgeRun beside = new EdgeRun(of, other);
                boolean meets =
                        atEnd ? beside.start().equals(run.end()) : beside.end().equals(run.start());
                if (meets && !other.name().equals(edge.name()) && other.role() == EdgeRole.SEAM) {
                    if (other.isProtected() && !acceptProtected) {
                        throw Refusal.of("edge-protected")
                                .with("piece", of.name())
                                .with("edge", other.name());
                    }
                    ends.add(atEnd);
                }
            }
        }
        return ends;
    }

    @Override
    public Piece by(double mm) throws Refusal {
        Piece now = piece;
        List<Boolean> ends = ends(piece);
        for (boolean atEnd : ends) {
            now = Carry.along(now, shift(now, atEnd), mm / ends.size());
        }
        return now;
    }

    private Shift shift(Piece now, boolean atEnd) throws Refusal {
        EdgeRun own = new EdgeRun(now, now.edge(edge.name()).orElseThrow());
        Point corner = atEnd ? own.end() : own.start();
        Edge seam = now.edges().stream()
                .filter(e -> !e.name().equals(edge.name()))
                .filter(e -> (atEnd ? new EdgeRun(now, e).start() : new EdgeRun(now, e).end()).equals(corner))
                .findFirst()
                .orElseThrow();
        Point across = now.grainDirection().quarterTurned();
        Point middle = now.outline().box().centre();
        Point outward = across.dot(corner.minus(middle)) >= 0 ? across : across.times(-1);
        ShiftBuilder builder = new ShiftBuilder(now.outline(), outward);
        Point from = builder.split(corner);
        Point ownStop = builder.split(stop(now, own.edge(), !atEnd, 0.5));
        Point seamStop = builder.split(stop(now, seam, atEnd, 1));
        // Judged where the corner lies the farther in, so that a change and its opposite go the same way.
        Point innermost =
                from.plus(outward.times(Math.min(0, amount / ends(piece).size())));
        lay(builder, ownStop, from, atEnd, isAcross(innermost, ownStop, outward));
        lay(builder, seamStop, from, !atEnd, isAcross(innermost, seamStop, outward));
        return builder.build();
    }

    private static boolean isAcross(Point corner, Point stop, Point outward) {
        Point way = corner.minus(stop);
        return Math.abs(way.dot(outward)) >= Math.abs(way.cross(outward));
    }

    /** The next notch or dart on an edge from one of its ends, or else the end of segments nearest to a share of it. */
    private static Point stop(Piece now, Edge on, boolean fromStart, double share) {
        Curve drawn = on.on(now.outline());
        Curve line = fromStart ? drawn : drawn.reversed();
        List<Point> marks =
                new ArrayList<>(now.notches().stream().map(Notch::at).toList());
        now.darts().forEach(d -> marks.addAll(List.of(d.mouth1(), d.mouth2())));
        double least = Double.POSITIVE_INFINITY;
        for (Point mark : marks) {
            Nearest near = line.nearest(mark);
            double along = near.distance() > Shift.ON_OUTLINE ? 0 : line.lengthTo(near.place());
            if (along > Shift.ON_OUTLINE) {
                least = Math.min(least, along);
            }
        }
        if (Double.isFinite(least)) {
            return line.pointAtLength(least);
        }
        double wanted = line.length() * share;
        Point best = line.end();
        double off = Double.POSITIVE_INFINITY;
        double along = 0;
        for (Segment s : line.segments()) {
            along += s.length();
            if (Math.abs(along - wanted) < off) {
                off = Math.abs(along - wanted);
                best = s.end();
            }
        }
        return best;
    }

    /** Nothing at the stop and all at the corner: in proportion across, or else by a smooth taper down. */
    private static void lay(ShiftBuilder builder, Point stop, Point corner, boolean forward, boolean across)
            throws Refusal {
        Point first = forward ? stop : corner;
        Point last = forward ? corner : stop;
        double start = forward ? 0 : 1;
        if (across) {
            builder.stretch(first, last, start, 1 - start);
        } else {
            builder.taper(first, last, start, 1 - start, Taper.SMOOTH);
        }
    }
}
