package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Where on the table seams do not fit: as long as a waistband is too short its edge says so, whichever page is open. Seams
 * that a trial puts out have a sign of their own, and what many sewers accept is not marked.
 */
final class Misfits {
    private Misfits() {}

    static List<TableScene.Misfit> of(Desk desk) {
        List<MateWalk> tried = SeamsTried.drifted(desk).toList();
        List<TableScene.Misfit> misfits = new ArrayList<>();
        for (MateWalk walk : SeamsTried.shown(desk)) {
            boolean told = Cutting.works(walk.drift())
                    || SidePair.isFold(desk.shown(), walk.mate())
                    || tried.stream().anyMatch(walk::sameAs);
            if (!told) {
                misfits.addAll(of(walk, desk));
            }
        }
        return misfits;
    }

    private static List<TableScene.Misfit> of(MateWalk walk, Desk desk) {
        boolean first = isToldOfFirst(walk);
        List<EdgeRef> named = first ? walk.mate().first() : walk.mate().second();
        List<EdgeRef> other = first ? walk.mate().second() : walk.mate().first();
        List<TableScene.Misfit> misfits = new ArrayList<>(on(named, walk, desk, words(walk, first, desk.words())));
        misfits.addAll(on(other, walk, desk, ""));
        return misfits;
    }

    /** The side that is one edge where the other is several is told of, as it would give way; of two alike the shorter. */
    private static boolean isToldOfFirst(MateWalk walk) {
        int first = walk.mate().first().size();
        int second = walk.mate().second().size();
        return first == second ? walk.drift() < 0 : first < second;
    }

    private static List<TableScene.Misfit> on(List<EdgeRef> side, MateWalk walk, Desk desk, String words) {
        List<TableScene.Misfit> misfits = new ArrayList<>();
        for (EdgeRef ref : side) {
            for (Piece piece : desk.shown().pieces()) {
                List<List<Segment>> runs = new TrialSights.Drift(ref, walk.size()).on(piece);
                if (!runs.isEmpty()) {
                    misfits.add(new TableScene.Misfit(
                            runs, piece.outline().signedArea() > 0, misfits.isEmpty() ? words : ""));
                }
            }
        }
        return misfits;
    }

    private static String words(MateWalk walk, boolean first, Words words) {
        boolean isLong = first == walk.drift() > 0;
        return words.of(
                isLong ? "editor.table.misfit.long" : "editor.table.misfit.short",
                Map.of(
                        "first", walk.first(),
                        "second", walk.second(),
                        "ease.signed", walk.mate().declaredEase(),
                        "apart", Math.abs(walk.drift())));
    }
}
