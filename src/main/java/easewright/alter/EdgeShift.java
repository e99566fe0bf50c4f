package easewright.alter;

import easewright.geom.Point;
import easewright.measure.Hold;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Builds the shift of one edge of one piece: the edge itself, and what has to give way beside it. All places are sewn
 * ones; where the drawn line is the cutting line, the stretch of it that holds a place moves, or stays, as a whole, so
 * that the stitching line there moves by exactly the amount, or by nothing.
 */
final class EdgeShift {
    private final SewnPiece sewn;
    private final Piece piece;
    private final Edge edge;
    private final Point outward;
    private final Stops stops;
    private final boolean acceptProtected;
    private final ShiftBuilder builder;
    private final List<Step> steps = new ArrayList<>();
    private double shortestTaper = Double.POSITIVE_INFINITY;
    private Edge tapersOn;

    EdgeShift(SewnPiece sewn, Edge edge, Point outward, Stops stops, boolean acceptProtected) {
        this.sewn = sewn;
        this.piece = sewn.piece();
        this.edge = edge;
        this.tapersOn = edge;
        this.outward = outward;
        this.stops = stops;
        this.acceptProtected = acceptProtected;
        this.builder = new ShiftBuilder(piece.outline(), outward);
    }

    /** Laying weights waits until every node is made, since making one renumbers the segments. */
    private interface Step {
        void lay() throws Refusal;
    }

    /** Most at the point, nothing at the next stop on either side. */
    EdgeShift most(LevelReach reach, Taper taper) throws Refusal {
        Hold at = reach.hold();
        rigid(leave(at, false, taper), leave(at, true, taper));
        return this;
    }

    /** Most from the point on to the lower end, where the edge there gives way; nothing at the stop above. */
    EdgeShift carried(LevelReach reach, Taper taper) throws Refusal {
        touch(edge);
        boolean down = hemIsAhead();
        Point low = leave(sewn.corner(edge, down), down, taper);
        Point high = leave(reach.hold(), !down, taper);
        rigid(down ? high : low, down ? low : high);
        return this;
    }

    /** The whole edge moves as one. */
    EdgeShift parallel() throws Refusal {
        rigid(
                leave(sewn.corner(edge, false), false, Taper.STRAIGHT),
                leave(sewn.corner(edge, true), true, Taper.STRAIGHT));
        return this;
    }

    /** The edge swings about one of its ends; weight 1 at the other. */
    EdgeShift wedge(boolean fixedAtStart) throws Refusal {
        Hold still = sewn.corner(edge, !fixedAtStart);
        Hold swings = sewn.corner(edge, fixedAtStart);
        Point pivot = builder.split(fixedAtStart ? still.last() : still.first());
        Point near = builder.split(fixedAtStart ? swings.first() : swings.last());
        steps.add(() -> builder.taper(
                fixedAtStart ? pivot : near,
                fixedAtStart ? near : pivot,
                fixedAtStart ? 0 : 1,
                fixedAtStart ? 1 : 0,
                Taper.STRAIGHT));
        Point far = leave(swings, fixedAtStart, Taper.STRAIGHT);
        rigid(fixedAtStart ? near : far, fixedAtStart ? far : near);
        return this;
    }

    Shift build() throws Refusal {
        try {
            for (Step step : steps) {
                step.lay();
            }
        } catch (Refusal r) {
            throw r.with("piece", piece.name()).with("edge", edge.name());
        }
        return builder.build();
    }

    /** The length square to the level over which the change dies away, the shorter of the two sides, mm. */
    double shortestTaper() {
        return shortestTaper;
    }

    /** The edge on which that is: at the end of its own it may be the one beside. */
    Edge tapersOn() {
        return tapersOn;
    }

    private void rigid(Point from, Point to) {
        steps.add(() -> builder.rigid(from, to));
    }

    /**
     * Lets the change die away from a place on, along the edge itself or, at its end, along the edge beside it.
     *
     * @return the node from which it dies away
     */
    private Point leave(Hold at, boolean forward, Taper taper) throws Refusal {
        boolean end = at.sewn().equals(sewn.corner(edge, forward).sewn());
        Edge on = end ? beside(forward) : edge;
        touch(on);
        Stops.Stop stop = stops.next(sewn, on, at, forward, outward, end);
        refuseDart(on, at, stop.hold(), forward);
        Point from = builder.split(stop.clear() ? at.end(forward) : at.across(forward));
        Point to = builder.split(
                stop.clear() ? stop.hold().end(!forward) : stop.hold().across(!forward));
        Point first = forward ? from : to;
        Point last = forward ? to : from;
        double weight = forward ? 1 : 0;
        steps.add(() -> {
            if (stop.sideways()) {
                builder.stretch(first, last, weight, 1 - weight);
            } else {
                double extent = builder.extent(first, last);
                if (extent < shortestTaper) {
                    shortestTaper = extent;
                    tapersOn = on;
                }
                builder.taper(first, last, weight, 1 - weight, taper);
            }
        });
        return from;
    }

    private Edge beside(boolean forward) throws Refusal {
        return besideIfAny(forward)
                .orElseThrow(() ->
                        Refusal.of("no-edge-beside").with("piece", piece.name()).with("edge", edge.name()));
    }

    private Optional<Edge> besideIfAny(boolean forward) {
        Point corner = forward ? sewn.run(edge).end() : sewn.run(edge).start();
        for (Edge other : piece.edges()) {
            Point meets = forward ? sewn.run(other).start() : sewn.run(other).end();
            if (meets.equals(corner) && !other.name().equals(edge.name())) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    private void refuseDart(Edge on, Hold from, Hold to, boolean forward) throws Refusal {
        Optional<Dart> dart = sewn.run(on).dartBetween(from.across(forward), to.across(!forward), sewn.mouths());
        if (dart.isPresent()) {
            throw Refusal.of("change-crosses-dart")
                    .with("piece", piece.name())
                    .with("edge", on.name())
                    .with("dart", dart.get().name());
        }
    }

    private void touch(Edge touched) throws Refusal {
        if (touched.isProtected() && !acceptProtected) {
            throw Refusal.of("edge-protected").with("piece", piece.name()).with("edge", touched.name());
        }
    }

    /** Which way the hem lies: the end with a hem beside it, or else the one lower down the grain. */
    private boolean hemIsAhead() {
        boolean ahead = isHem(true);
        if (ahead != isHem(false)) {
            return ahead;
        }
        Point down = piece.downGrain();
        return down.dot(sewn.run(edge).end()) > down.dot(sewn.run(edge).start());
    }

    private boolean isHem(boolean forward) {
        return besideIfAny(forward).filter(e -> e.role() == EdgeRole.HEM).isPresent();
    }
}
