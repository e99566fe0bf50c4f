package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Builds the shift of one edge of one piece: the edge itself, and what has to give way beside it. */
final class EdgeShift {
    private final Piece piece;
    private final EdgeRun run;
    private final Point outward;
    private final boolean acceptProtected;
    private final ShiftBuilder builder;
    private final List<Point> keep;
    private final List<Step> steps = new ArrayList<>();
    private double shortestTaper = Double.POSITIVE_INFINITY;

    /**
     * @param keep points at which the change must have died away, besides the ends; empty: notches and dart mouths
     */
    EdgeShift(Piece piece, Edge edge, Point outward, List<Point> keep, boolean acceptProtected) {
        this.piece = piece;
        this.run = new EdgeRun(piece, edge);
        this.outward = outward;
        this.keep = keep;
        this.acceptProtected = acceptProtected;
        this.builder = new ShiftBuilder(piece.outline(), outward);
    }

    /** Laying weights waits until every node is made, since making one renumbers the segments. */
    private interface Step {
        void lay() throws Refusal;
    }

    /** Most at the point, nothing at the next stop on either side. */
    EdgeShift most(LevelReach reach, Taper taper) throws Refusal {
        touch(run.edge());
        Point at = builder.split(reach.at());
        for (boolean forward : new boolean[] {true, false}) {
            if (isEnd(at, forward)) {
                giveWay(at, forward, taper);
            } else {
                die(at, forward, taper);
            }
        }
        return this;
    }

    /** Most from the point on to the lower end, where the edge there gives way; nothing at the stop above. */
    EdgeShift carried(LevelReach reach, Taper taper) throws Refusal {
        touch(run.edge());
        Point at = builder.split(reach.at());
        boolean down = hemIsAhead();
        if (!isEnd(at, down)) {
            Point end = builder.split(down ? run.end() : run.start());
            steps.add(() -> builder.rigid(down ? at : end, down ? end : at));
        }
        giveWay(down ? run.end() : run.start(), down, taper);
        if (isEnd(at, !down)) {
            giveWay(at, !down, taper);
        } else {
            die(at, !down, taper);
        }
        return this;
    }

    /** The whole edge moves as one. */
    EdgeShift parallel() throws Refusal {
        Point start = builder.split(run.start());
        Point end = builder.split(run.end());
        steps.add(() -> builder.rigid(start, end));
        giveWay(end, true, Taper.STRAIGHT);
        giveWay(start, false, Taper.STRAIGHT);
        return this;
    }

    /** The edge swings about one of its ends; weight 1 at the other. */
    EdgeShift wedge(boolean fixedAtStart) throws Refusal {
        Point start = builder.split(run.start());
        Point end = builder.split(run.end());
        steps.add(() -> builder.taper(start, end, fixedAtStart ? 0 : 1, fixedAtStart ? 1 : 0, Taper.STRAIGHT));
        giveWay(fixedAtStart ? end : start, fixedAtStart, Taper.STRAIGHT);
        return this;
    }

    Shift build() throws Refusal {
        try {
            for (Step step : steps) {
                step.lay();
            }
        } catch (Refusal r) {
            throw r.with("piece", piece.name()).with("edge", run.edge().name());
        }
        return builder.build();
    }

    /** The length square to the level over which the change dies away, the shorter of the two sides, mm. */
    double shortestTaper() {
        return shortestTaper;
    }

    private boolean isEnd(Point at, boolean forward) {
        return at.equals(forward ? run.end() : run.start());
    }

    private void die(Point at, boolean forward, Taper taper) throws Refusal {
        Point stop = builder.split(stop(run, at, forward));
        refuseDart(run, at, stop);
        steps.add(() -> {
            shortestTaper = Math.min(shortestTaper, forward ? builder.extent(at, stop) : builder.extent(stop, at));
            if (forward) {
                builder.taper(at, stop, 1, 0, taper);
            } else {
                builder.taper(stop, at, 0, 1, taper);
            }
        });
    }

    /**
     * The edge beside the corner follows it: stretched along the level up to its next stop, or, where it runs on more
     * down than across, tapered like the edge itself.
     */
    private void giveWay(Point corner, boolean forward, Taper taper) throws Refusal {
        Edge beside = beside(corner, forward);
        touch(beside);
        EdgeRun next = new EdgeRun(piece, beside);
        Point from = builder.split(corner);
        Point stop = builder.split(stop(next, from, forward));
        refuseDart(next, from, stop);
        Point way = stop.minus(from);
        boolean across = Math.abs(way.dot(outward)) >= Math.abs(way.cross(outward));
        steps.add(() -> {
            if (!across) {
                shortestTaper =
                        Math.min(shortestTaper, forward ? builder.extent(from, stop) : builder.extent(stop, from));
            }
            Point first = forward ? from : stop;
            Point last = forward ? stop : from;
            double weight = forward ? 1 : 0;
            if (across) {
                builder.stretch(first, last, weight, 1 - weight);
            } else {
                builder.taper(first, last, weight, 1 - weight, taper);
            }
        });
    }

    private Edge beside(Point corner, boolean forward) throws Refusal {
        for (Edge edge : piece.edges()) {
            EdgeRun other = new EdgeRun(piece, edge);
            boolean meets = (forward ? other.start() : other.end()).equals(corner);
            if (meets && !edge.name().equals(run.edge().name())) {
                return edge;
            }
        }
        throw Refusal.of("no-edge-beside")
                .with("piece", piece.name())
                .with("edge", run.edge().name());
    }

    /** Where the change ends: at a place the user named on this side, else a notch or dart mouth, else the end. */
    private Point stop(EdgeRun on, Point from, boolean forward) {
        return on.stop(from, forward, keep)
                .or(() -> on.stop(from, forward, on.marks()))
                .orElse(forward ? on.end() : on.start());
    }

    private void refuseDart(EdgeRun on, Point from, Point to) throws Refusal {
        Optional<Dart> dart = on.dartBetween(from, to);
        if (dart.isPresent()) {
            throw Refusal.of("change-crosses-dart")
                    .with("piece", piece.name())
                    .with("edge", on.edge().name())
                    .with("dart", dart.get().name());
        }
    }

    private void touch(Edge edge) throws Refusal {
        if (edge.isProtected() && !acceptProtected) {
            throw Refusal.of("edge-protected").with("piece", piece.name()).with("edge", edge.name());
        }
    }

    /** Which way the hem lies: the end with a hem beside it, or else the one lower down the grain. */
    private boolean hemIsAhead() {
        boolean ahead = isHem(run.end(), true);
        if (ahead != isHem(run.start(), false)) {
            return ahead;
        }
        Point down = Downwards.of(piece);
        return down.dot(run.end()) > down.dot(run.start());
    }

    private boolean isHem(Point corner, boolean forward) {
        try {
            return beside(corner, forward).role() == EdgeRole.HEM;
        } catch (Refusal noneBeside) {
            return false;
        }
    }
}
