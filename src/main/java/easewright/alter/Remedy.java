package easewright.alter;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** What is done to seam lines so that a pair of them changes alike. */
sealed interface Remedy {
    Altered on(Altered now) throws Refusal;

    /** One end of a seam line, to be made longer or shorter, mm. */
    record End(EdgeRef edge, boolean atEnd, double by) {}

    /** Seam lines drawn out or taken in at their ends, each of which the change has moved already with what lies beside. */
    record DrawnOut(List<End> ends) implements Remedy {
        @Override
        public Altered on(Altered now) throws Refusal {
            Altered done = now;
            for (End each : ends) {
                Piece piece = done.pattern().piece(each.edge().piece()).orElseThrow();
                Edge edge = piece.edge(each.edge().edge()).orElseThrow();
                SeamEnd end = new SeamEnd(piece, edge, each.atEnd());
                Finding note = Finding.of("seam-evened", Severity.NOTE, piece.name())
                        .with("edge", edge.name())
                        .with("beside", end.beside().name())
                        .with("longer.signed", each.by());
                done = with(done, piece, end.longer(each.by()), end.moved(each.by()), note);
            }
            return done;
        }
    }

    /**
     * A seam line bowed between a fixed point and the level.
     *
     * @param moved   the run that the change moves
     * @param shorter on the shorter of the two stretches, else on the longer
     * @param changed whether the change has been made already
     */
    record Bowed(EdgeRef edge, Moved moved, boolean shorter, boolean changed, double by) implements Remedy {
        @Override
        public Altered on(Altered now) throws Refusal {
            Piece piece = now.pattern().piece(edge.piece()).orElseThrow();
            SeamBow bow = SeamBow.on(piece, moved, shorter, changed).orElseThrow(() -> Refusal.of("even-not-met"));
            Finding note = Finding.of("seam-bowed", Severity.NOTE, piece.name())
                    .with("edge", edge.edge())
                    .with("by.signed", by);
            return with(now, piece, bow.by(by), bow.moved(by), note);
        }
    }

    private static Altered with(Altered now, Piece was, Piece is, List<Moved> more, Finding note) throws Refusal {
        Simple.require(was.outline(), is);
        List<Moved> moved = new ArrayList<>(now.moved());
        moved.addAll(more);
        return new Altered(now.pattern().withPiece(is), moved, both(now.findings(), List.of(note)));
    }

    static List<Finding> both(List<Finding> first, List<Finding> second) {
        List<Finding> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }
}
