package easewright.alter;

import easewright.geom.Point;
import easewright.measure.Hold;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where a change ends along an edge: at a place the user named on that side; else at the nearest notch, dart mouth or
 * other level, where one lies far enough off; else at the end of the edge. A level is too near where the change could
 * only die away before it more steeply than is practice; then the change runs on past it (docs/decisions/0011).
 */
final class Stops {
    private static final double ROUNDING = 1e-6;

    /** What is left to taper over, at least, mm. */
    private static final double CLEAR = 1;

    private final List<SewnPiece.Mark> named;
    private final Optional<Level> changed;
    private final double amount;
    private final Set<String> passed = new TreeSet<>();

    private Stops(List<SewnPiece.Mark> named, Optional<Level> changed, double amount) {
        this.named = named;
        this.changed = changed;
        this.amount = Math.abs(amount);
    }

    /**
     * @param named   places that the user named
     * @param changed the level at which the change is asked for
     * @param amount  by how much the edge is to move there, mm
     */
    static Stops around(List<SewnPiece.Mark> named, Level changed, double amount) {
        return new Stops(named, Optional.of(changed), amount);
    }

    /** Notches, dart mouths and ends of edges only. */
    static Stops marksOnly() {
        return new Stops(List.of(), Optional.empty(), 0);
    }

    /**
     * Where a change ends.
     *
     * @param sideways whether the way there runs more along the level than across it: it is stretched, not tapered
     * @param room     how far off, along or across, mm
     * @param clear    whether there is room between what of the drawn line holds both places
     */
    record Stop(Hold hold, boolean sideways, double room, boolean clear) {}

    /** The levels that the change runs past, since they lie too near. */
    Set<String> passed() {
        return passed;
    }

    /**
     * The stop next to a place.
     *
     * @param outward the direction in which the change moves things
     * @param beside  whether the edge lies beside the one that changes, so that it may be stretched
     */
    Stop next(SewnPiece sewn, Edge on, Hold from, boolean forward, Point outward, boolean beside) {
        EdgeRun run = sewn.run(on);
        Optional<Hold> wanted = run.stop(from, forward, named);
        Hold fixed = wanted.or(() -> run.stop(from, forward, sewn.mouthEnds())).orElse(sewn.corner(on, forward));
        Stop stop = stop(fixed, from, forward, outward, beside);
        if (wanted.isPresent()) {
            return stop;
        }
        List<SewnPiece.Mark> nearer = new ArrayList<>();
        for (SewnPiece.Mark notch : sewn.notches()) {
            // From where it is drawn: that keeps its distance from the level when the seam is changed.
            Point way = notch.drawn().minus(from.sewn());
            double room = Math.abs(stop.sideways() ? way.dot(outward) : way.cross(outward));
            if (room >= leastRoom(from, notch.hold()) && (stop.sideways() || room >= Practice.STEEP_RATIO * amount)) {
                nearer.add(notch);
            }
        }
        Map<String, Hold> levels = stop.sideways() ? Map.of() : levels(sewn, on, from, forward);
        for (Hold level : levels.values()) {
            double room = stop(level, from, forward, outward, false).room();
            if (room >= Math.max(leastRoom(from, level), Practice.LEAST_RATIO * amount - ROUNDING)) {
                nearer.add(SewnPiece.Mark.of(level));
            }
        }
        Stop best = run.stop(from, forward, nearer)
                .map(hold -> stop(hold, from, forward, outward, stop.sideways()))
                .filter(there -> there.room() < stop.room() - Shift.ON_OUTLINE)
                .orElse(stop);
        levels.forEach((name, level) -> {
            if (stop(level, from, forward, outward, false).room() < best.room() - Shift.ON_OUTLINE) {
                passed.add(name);
            }
        });
        return best;
    }

    /** The other levels that the edge meets on that side. */
    private Map<String, Hold> levels(SewnPiece sewn, Edge on, Hold from, boolean forward) {
        Map<String, Hold> found = new TreeMap<>();
        for (Level level : sewn.levels()) {
            if (changed.isEmpty()
                    || level.equals(changed.get())
                    || !sewn.piece().countsAt(level.name())) {
                continue;
            }
            LevelReach.of(sewn, on, level)
                    .map(LevelReach::hold)
                    .filter(there -> sewn.run(on)
                            .stop(from, forward, List.of(SewnPiece.Mark.of(there)))
                            .isPresent())
                    .ifPresent(there -> found.put(level.name(), there));
        }
        return found;
    }

    private static Stop stop(Hold hold, Hold from, boolean forward, Point outward, boolean mayStretch) {
        Point way = hold.sewn().minus(from.sewn());
        double along = Math.abs(way.dot(outward));
        double across = Math.abs(way.cross(outward));
        boolean sideways = mayStretch && along >= across;
        double room = sideways ? along : across;
        double kept = from.across(forward).distance(from.end(forward))
                + hold.across(!forward).distance(hold.end(!forward));
        return new Stop(hold, sideways, room, room >= kept + CLEAR);
    }

    /** What of the drawn line holds two places must not meet: as much between it as it takes itself, about. */
    private static double leastRoom(Hold one, Hold other) {
        return one.before().distance(one.sewn()) / 2 + other.before().distance(other.sewn()) / 2;
    }
}
