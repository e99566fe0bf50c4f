package easewright.alter;

import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.measure.StitchLines;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The seam lines that are sewn to each other, and what a change does to either of a pair. Lengths are in mm.
 *
 * @param before the pattern before the change
 * @param was    its measures
 * @param lines  its stitching lines
 */
record SeamPairs(Pattern before, GarmentMeasures was, StitchLines lines) {
    static SeamPairs of(Pattern before) {
        GarmentMeasures was = Measures.of(before);
        return new SeamPairs(before, was, new StitchLines(was));
    }

    /** One of two seam lines of a pair: its changed edge, and the end of it that the change moved. */
    record Side(EdgeRef edge, double change, Optional<Boolean> movedAtEnd) {}

    record Pair(MateWalk walk, Side first, Side second) {
        /** By how much more the change makes the first longer than the second, mm. */
        double drift() {
            return first.change() - second.change();
        }

        /** Whether all ends of both are fixed. */
        boolean fixed() {
            return first.movedAtEnd().isEmpty() && second.movedAtEnd().isEmpty();
        }
    }

    /** Every pair of which a change moved both, with what it did to their lengths. */
    List<Pair> moved(Altered trial) {
        GarmentMeasures is = Measures.again(trial.pattern(), before, was, lines);
        List<Pair> pairs = new ArrayList<>();
        for (MateWalk walk : was.mates()) {
            Mate mate = walk.mate();
            Optional<Side> first = side(mate.first(), trial, is);
            Optional<Side> second = side(mate.second(), trial, is);
            if (first.isPresent() && second.isPresent()) {
                pairs.add(new Pair(walk, first.get(), second.get()));
            }
        }
        return pairs;
    }

    /** Why there is no pair to make even: one side of a seam alone is changed, or nothing that is sewn together. */
    Refusal unpaired(Altered trial) {
        GarmentMeasures is = Measures.again(trial.pattern(), before, was, lines);
        for (MateWalk walk : was.mates()) {
            Optional<Side> first = side(walk.mate().first(), trial, is);
            Optional<Side> second = side(walk.mate().second(), trial, is);
            if (first.isPresent() != second.isPresent()) {
                EdgeRef changed = first.or(() -> second).orElseThrow().edge();
                EdgeRef other =
                        (first.isPresent() ? walk.mate().second() : walk.mate().first()).get(0);
                return Refusal.of("even-one-side")
                        .with("mate", walk.mate().name())
                        .with("piece", name(changed))
                        .with("edge", changed.edge())
                        .with("other", name(other))
                        .with("other-edge", other.edge());
            }
        }
        return Refusal.of("even-without-mate");
    }

    private String name(EdgeRef ref) {
        return before.piece(ref.piece()).map(Piece::name).orElse(ref.piece());
    }

    /** A seam line of which the change moved some; empty where it did not. */
    private Optional<Side> side(List<EdgeRef> refs, Altered trial, GarmentMeasures is) {
        double change = 0;
        EdgeRef changed = null;
        for (EdgeRef ref : refs) {
            change += ref.times() * (length(is, trial.pattern(), ref) - length(was, before, ref));
            if (changed == null && run(ref, trial).isPresent()) {
                changed = ref;
            }
        }
        return changed == null
                ? Optional.empty()
                : Optional.of(new Side(changed, change, movedEnd(changed, trial.pattern())));
    }

    /** The run that a change moved on an edge; empty where it moved none. */
    Optional<Moved> run(EdgeRef ref, Altered trial) {
        Piece piece = before.piece(ref.piece()).orElseThrow();
        EdgeRun run = new EdgeRun(piece, piece.edge(ref.edge()).orElseThrow());
        return trial.moved().stream()
                .filter(m -> m.pieceId().equals(piece.id()))
                .filter(m -> m.before().segments().stream().anyMatch(s -> run.holds(s.at(0.5))))
                .findFirst();
    }

    private static double length(GarmentMeasures measures, Pattern pattern, EdgeRef ref) {
        String id = pattern.piece(ref.piece()).orElseThrow().id();
        return measures.piece(id).flatMap(p -> p.edge(ref.edge())).orElseThrow().mm();
    }

    /** Whether its end or else its start moved; of both, the lower one. */
    private Optional<Boolean> movedEnd(EdgeRef ref, Pattern after) {
        Edge old = before.edge(ref).orElseThrow();
        Edge now = after.edge(ref).orElseThrow();
        boolean end = !now.to().equals(old.to());
        boolean start = !now.from().equals(old.from());
        if (end && start) {
            var down = after.piece(ref.piece()).orElseThrow().downGrain();
            return Optional.of(down.dot(now.to()) > down.dot(now.from()));
        }
        return end || start ? Optional.of(end) : Optional.empty();
    }
}
