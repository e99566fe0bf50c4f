package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.MateWalk;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds what is to be seen of a change that is being tried, besides the moved line itself. */
final class TrialSights {
    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    private TrialSights() {}

    static TableScene.TrialSight of(Desk desk, Piece piece) {
        if (desk.shownTrial().isEmpty()) {
            return TableScene.TrialSight.NONE;
        }
        List<List<Segment>> kept = desk.shownTrial().get().fates().stream()
                .filter(f -> f.piece().id().equals(piece.id()))
                .filter(f -> f.edge().isProtected() && f.fate() != EdgeFate.Fate.RESHAPED)
                .map(EdgeFate::run)
                .toList();
        List<List<Segment>> drifts = new ArrayList<>();
        for (MateWalk walk : Effect.driftedMates(desk).toList()) {
            Stream.concat(walk.mate().first().stream(), walk.mate().second().stream())
                    .filter(ref -> belongs(ref, piece))
                    .flatMap(ref -> piece.edge(ref.edge()).stream())
                    .map((Edge edge) -> edge.on(piece.outline()).segments())
                    .forEach(drifts::add);
        }
        List<Dart> before = desk.pattern().piece(piece.id()).map(Piece::darts).orElse(List.of());
        return new TableScene.TrialSight(kept, drifts, legs(piece.darts(), before), legs(before, piece.darts()));
    }

    private static boolean belongs(EdgeRef ref, Piece piece) {
        return ref.piece().equals(piece.id()) || ref.piece().equals(piece.name());
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
