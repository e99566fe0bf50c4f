package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Segment;
import easewright.measure.MateWalk;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds what is to be seen of a change that is being tried, besides the moved line itself. */
final class TrialSights {
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
        return new TableScene.TrialSight(kept, drifts);
    }

    private static boolean belongs(EdgeRef ref, Piece piece) {
        return ref.piece().equals(piece.id()) || ref.piece().equals(piece.name());
    }
}
