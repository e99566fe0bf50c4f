package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.MateWalk;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds what is to be seen of a change that is being tried, besides the moved line itself. */
final class TrialSights {
    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    /** So near to its mark a cut-out dart begins, has its point and ends, mm. */
    private static final double AT_MOUTH = 0.5;

    private final Map<String, List<List<Segment>>> kept = new HashMap<>();

    /** Edges that no longer fit the seam they are sewn to. */
    private final List<Drift> drifted = new ArrayList<>();

    /** By id: the pieces of which an edge lies elsewhere. */
    private final Set<String> moved = new HashSet<>();

    TrialSights(Desk desk) {
        desk.shownTrial().ifPresent(trial -> {
            for (EdgeFate fate : trial.fates()) {
                if (fate.fate() != EdgeFate.Fate.STAYED) {
                    moved.add(fate.piece().id());
                }
                if (isKept(fate)) {
                    kept.computeIfAbsent(fate.piece().id(), id -> new ArrayList<>())
                            .add(fate.run());
                }
            }
            for (MateWalk walk : SeamsTried.drifted(desk).toList()) {
                Stream.concat(walk.mate().first().stream(), walk.mate().second().stream())
                        .forEach(ref -> drifted.add(new Drift(ref, walk.size())));
            }
        });
    }

    /**
     * An edge that no longer fits.
     *
     * @param size in which it does not, where there are several: the edge may be called alike in all of them
     */
    record Drift(EdgeRef ref, Optional<String> size) {
        /** Its line on a piece, in parts beside darts that are cut into it; empty where it is not of that piece. */
        List<List<Segment>> on(Piece piece) {
            return isOf(piece)
                    ? piece.edge(ref.edge()).stream()
                            .flatMap(e -> besideDarts(e.on(piece.outline()).segments(), piece.darts()).stream())
                            .toList()
                    : List.of();
        }

        private boolean isOf(Piece piece) {
            return (size.isEmpty() || piece.size().isEmpty() || size.equals(piece.size()))
                    && List.of(piece.id(), piece.name(), piece.plainName()).contains(ref.piece());
        }
    }

    /** Whether some edge of the piece lies elsewhere by it. */
    boolean moves(Piece piece) {
        return moved.contains(piece.id());
    }

    /** Whether an edge is protected and came through unharmed. */
    static boolean isKept(EdgeFate fate) {
        return fate.edge().isProtected() && fate.fate() != EdgeFate.Fate.RESHAPED;
    }

    /**
     * What is to be seen of it on one piece.
     *
     * @param before the piece as it was
     */
    TableScene.TrialSight of(Piece piece, Piece before) {
        List<List<Segment>> here = kept.getOrDefault(piece.id(), List.of());
        List<List<Segment>> drifts =
                drifted.stream().flatMap(d -> d.on(piece).stream()).toList();
        List<Dart> darts = before.darts();
        List<Segment> now = legs(piece.darts(), darts);
        List<Segment> then = legs(darts, piece.darts());
        return here.isEmpty() && drifts.isEmpty() && now.isEmpty() && then.isEmpty()
                ? TableScene.TrialSight.NONE
                : new TableScene.TrialSight(here, drifts, now, then);
    }

    /** The parts of a run that are sewn to something else: a dart that is cut out of it is sewn to itself. */
    private static List<List<Segment>> besideDarts(List<Segment> run, List<Dart> darts) {
        List<List<Segment>> parts = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < run.size(); i++) {
            int past = pastDart(run, i, darts);
            if (past > i) {
                parts.add(run.subList(from, i));
                from = past;
                i = past - 1;
            }
        }
        parts.add(run.subList(from, run.size()));
        return parts.stream().filter(p -> !p.isEmpty()).toList();
    }

    /** Where a run that goes in along a leg at that number has come out of the dart; the same number where it does not. */
    private static int pastDart(List<Segment> run, int at, List<Dart> darts) {
        for (Dart dart : darts) {
            boolean one = run.get(at).start().distance(dart.mouth1()) < AT_MOUTH;
            if (one || run.get(at).start().distance(dart.mouth2()) < AT_MOUTH) {
                Point out = one ? dart.mouth2() : dart.mouth1();
                boolean through = false;
                for (int i = at; i < run.size(); i++) {
                    through |= run.get(i).end().distance(dart.point()) < AT_MOUTH;
                    if (through && run.get(i).end().distance(out) < AT_MOUTH) {
                        return i + 1;
                    }
                }
            }
        }
        return at;
    }

    /** Both legs of those darts that the other list has not just so. */
    private static List<Segment> legs(List<Dart> darts, List<Dart> others) {
        List<Segment> legs = new ArrayList<>();
        for (Dart dart : darts) {
            if (others.stream().noneMatch(o -> lieAlike(o, dart))) {
                for (Point mouth : List.of(dart.mouth1(), dart.mouth2())) {
                    legs.add(new Line(mouth, dart.point()));
                    dart.otherPoint().ifPresent(other -> legs.add(new Line(mouth, other)));
                }
            }
        }
        return legs;
    }

    private static boolean lieAlike(Dart one, Dart other) {
        return one.name().equals(other.name())
                && one.mouth1().distance(other.mouth1()) < SEEN
                && one.mouth2().distance(other.mouth2()) < SEEN
                && one.point().distance(other.point()) < SEEN;
    }
}
