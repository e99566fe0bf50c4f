package easewright.alter;

import easewright.alter.LaidStroke.Lay;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rounds a corner that a change has left within an edge: the hinge of a slash, the end of a straight taper. The edge is
 * redrawn a stretch to either side in one smooth line and keeps its length, or, where a level crosses it, its place
 * there.
 */
final class BlendTruer implements Trued.Truer {
    /** Redrawn over this much to either side at most, mm. */
    private static final double LONGEST = 40;

    private static final double SHORTEST = 3;

    /** Shorter segments have no direction, mm. */
    private static final double CRUMB = 1e-6;

    /** Corners below this are none, above that are meant, radians. */
    private static final double SEEN = Math.toRadians(1);

    /** A turn whose tangent is below this is not seen, whatever the rounding: most joins of a smooth line. */
    private static final double CERTAINLY_UNSEEN = 0.99 * Math.tan(SEEN);

    private static final double MEANT = Math.toRadians(45);

    /** A corner of the first outline is known again by its angle and by how far along its edge it lies. */
    private static final double SAME_ANGLE = Math.toRadians(1);

    private static final double SAME_PLACE = 0.03;
    private static final double CLOSE = 1e-9;
    private static final double KEPT = 1e-4;

    /**
     * A corner within an edge.
     *
     * @param turn by how much the line turns there, radians, positive clockwise
     */
    record Corner(Piece piece, Edge edge, Point at, double turn, double share) {}

    /** The corners within edges that were not there before any change. */
    static List<Corner> corners(List<Piece> pieces) {
        List<Corner> all = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.original().isEmpty()) {
                continue;
            }
            for (Edge edge : piece.edges()) {
                Curve run = edge.on(piece.outline());
                if (untouched(piece, run)) {
                    continue;
                }
                List<Corner> found = corners(piece, edge, run);
                List<Corner> known = found.isEmpty() ? List.of() : corners(piece, edge, first(piece, edge));
                for (Corner corner : found) {
                    if (known.stream().noneMatch(k -> same(k, corner)) && !atMark(piece, corner.at())) {
                        all.add(corner);
                    }
                }
            }
        }
        return all;
    }

    private static boolean untouched(Piece piece, Curve run) {
        List<Segment> old = piece.original().orElseThrow().segments();
        int next = 0;
        for (Segment segment : run.segments()) {
            // What is kept mostly follows on what was kept.
            int at = old.get(next).equals(segment) ? next : old.indexOf(segment);
            if (at < 0) {
                return false;
            }
            next = (at + 1) % old.size();
        }
        return true;
    }

    /** The run of the first outline that was this edge, as far as its ends still tell. */
    private static Curve first(Piece piece, Edge edge) {
        Outline old = piece.original().orElseThrow();
        return old.run(old.nearest(edge.from()).place(), old.nearest(edge.to()).place());
    }

    private static boolean same(Corner one, Corner other) {
        return Math.abs(one.turn() - other.turn()) < SAME_ANGLE && Math.abs(one.share() - other.share()) < SAME_PLACE;
    }

    private static List<Corner> corners(Piece piece, Edge edge, Curve run) {
        List<Corner> corners = new ArrayList<>();
        for (int i = 1; i < run.segments().size(); i++) {
            Segment before = run.segments().get(i - 1);
            Segment after = run.segments().get(i);
            if (isCrumb(before) || isCrumb(after)) {
                continue;
            }
            Point in = before.tangent(1);
            Point out = after.tangent(0);
            if (Math.abs(in.cross(out)) < CERTAINLY_UNSEEN * in.dot(out)) {
                continue;
            }
            double turn = Math.atan2(in.cross(out), in.dot(out));
            if (Math.abs(turn) > SEEN && Math.abs(turn) < MEANT) {
                double share = run.lengthTo(new Place(i, 0)) / run.length();
                corners.add(new Corner(piece, edge, after.start(), turn, share));
            }
        }
        return corners;
    }

    private static boolean isCrumb(Segment segment) {
        return segment.start().distance(segment.end()) < CRUMB && segment.length() < CRUMB;
    }

    /** Darts and notches bend the line on purpose. */
    private static boolean atMark(Piece piece, Point p) {
        for (Dart dart : piece.darts()) {
            double reach = dart.intake() + 1;
            if (dart.mouth1().distance(p) <= reach && dart.mouth2().distance(p) <= reach) {
                return true;
            }
        }
        for (Notch notch : piece.notches()) {
            if (notch.at().distance(p) <= 1 && notch.at().distance(p) > 0.01) {
                return true;
            }
        }
        return false;
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        EdgeRef ref = SquareTruer.ref(what.target(Trued.EDGE));
        Point at = new StrokeText(what.target(Trued.AT)).point();
        Piece piece = Known.piece(pattern, ref.piece());
        Edge edge = Known.edge(piece, ref.edge());
        if (edge.isProtected() && !what.acceptProtected()) {
            throw Refusal.of("edge-protected").with("piece", piece.name()).with("edge", edge.name());
        }
        Corner corner = corners(piece, edge, edge.on(piece.outline())).stream()
                .filter(c -> c.at().distance(at) <= Shift.ON_OUTLINE)
                .findFirst()
                .orElseThrow(() ->
                        Refusal.of("corner-unknown").with("piece", piece.name()).with("edge", edge.name()));
        return List.of(new Blend(pattern, corner).stroke());
    }

    /** One corner being rounded. */
    private static final class Blend {
        private final Pattern pattern;
        private final Corner corner;
        private final Curve run;
        private final Point along;
        private final Point across;
        private final double slopeIn;
        private final double slopeOut;

        Blend(Pattern pattern, Corner corner) {
            this.pattern = pattern;
            this.corner = corner;
            this.run = corner.edge().on(corner.piece().outline());
            int i = 0;
            while (!run.segments().get(i).start().equals(corner.at())) {
                i++;
            }
            Point in = run.segments().get(i - 1).tangent(1);
            Point out = run.segments().get(i).tangent(0);
            along = in.plus(out).unit();
            across = along.quarterTurned();
            slopeIn = in.dot(across) / in.dot(along);
            slopeOut = out.dot(across) / out.dot(along);
        }

        Stroke stroke() throws Refusal {
            Optional<Double> level = level();
            double lead = room(false, level);
            double trail = room(true, level);
            if (Math.min(lead, trail) < SHORTEST) {
                throw Refusal.of("no-room-to-true")
                        .with("piece", corner.piece().name())
                        .with("edge", corner.edge().name());
            }
            Point from = point(-lead);
            Point to = point(trail);
            if (level.isPresent() && level.get() == 0) {
                return with(from, to, 0);
            }
            double length = sewn(corner.piece());
            // Cutting the corner shortens, and the first guess cuts off about what rounding it at its place adds.
            double guess = -Math.signum(corner.turn()) * Math.abs(slopeOut - slopeIn) * Math.min(lead, trail) / 8;
            double atZero = sewn(with(from, to, 0).on(corner.piece())) - length;
            double found = Root.of(
                    a -> sewn(with(from, to, a).on(corner.piece())) - length,
                    atZero,
                    guess == 0 ? 0.1 : -guess,
                    CLOSE,
                    KEPT,
                    Refusal.of("edge-length-not-met")
                            .with("piece", corner.piece().name())
                            .with("edge", corner.edge().name()));
            return with(from, to, found);
        }

        private double sewn(Piece piece) throws Refusal {
            return Measures.of(piece, List.of())
                    .edge(corner.edge().name())
                    .orElseThrow(() -> Refusal.of("truing-not-exact"))
                    .mm();
        }

        private LaidStroke with(Point from, Point to, double at) {
            double lead = along.dot(corner.at().minus(from));
            double trail = along.dot(to.minus(corner.at()));
            return new LaidStroke(
                    corner.piece().id(),
                    across,
                    List.of(
                            Lay.cubic(from, corner.at(), 0, 0, at, -slopeIn * lead),
                            Lay.cubic(corner.at(), to, at, -slopeOut * trail, 0, 0)));
        }

        private double here() {
            double sum = 0;
            for (Segment segment : run.segments()) {
                if (segment.start().equals(corner.at())) {
                    return sum;
                }
                sum += segment.length();
            }
            return sum;
        }

        private Point point(double by) {
            return run.pointAtLength(here() + by);
        }

        /** How far along the edge from the corner the nearest level crosses it; 0 where it crosses just there. */
        private Optional<Double> level() {
            SewnPiece sewn = new SewnPiece(corner.piece(), pattern.levels());
            Optional<Double> best = Optional.empty();
            for (Level level : pattern.levels()) {
                boolean counts = corner.piece().countsAt(level.name());
                Optional<LevelReach> reach = counts ? LevelReach.of(sewn, corner.edge(), level) : Optional.empty();
                if (reach.isPresent()) {
                    double by = run.lengthTo(run.nearest(reach.get().drawn()).place()) - here();
                    double near = Math.abs(by) < 1 ? 0 : by;
                    if (best.isEmpty() || Math.abs(near) < Math.abs(best.get())) {
                        best = Optional.of(near);
                    }
                }
            }
            return best;
        }

        /** Up to the next mark, corner or level; half the way there and no farther than is needed. */
        private double room(boolean ahead, Optional<Double> level) {
            double length = run.length();
            double room = ahead ? length - here() : here();
            for (Corner other : corners(corner.piece(), corner.edge(), run)) {
                double by = other.share() * length - here();
                if (ahead ? by > 1e-6 : by < -1e-6) {
                    room = Math.min(room, Math.abs(by));
                }
            }
            for (Dart dart : corner.piece().darts()) {
                for (Point mouth : new Point[] {dart.mouth1(), dart.mouth2()}) {
                    var near = run.nearest(mouth);
                    double by = run.lengthTo(near.place()) - here();
                    if (near.distance() <= Shift.ON_OUTLINE && (ahead ? by > 0 : by < 0)) {
                        room = Math.min(room, Math.abs(by));
                    }
                }
            }
            double most = Math.min(LONGEST, room / 2);
            boolean there = level.isPresent() && level.get() != 0 && (ahead == level.get() > 0);
            return there ? Math.min(most, Math.abs(level.get()) - 1) : most;
        }
    }
}
