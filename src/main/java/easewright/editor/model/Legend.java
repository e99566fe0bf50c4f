package easewright.editor.model;

import easewright.editor.paint.EdgeSigns;
import easewright.editor.paint.TableScene;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which of the lines that only a change brings onto the table are to be seen there, in the order in which they are
 * explained.
 */
public record Legend(List<Sign> signs) {
    /** A kind of line. */
    public enum Sign {
        /** Lies elsewhere than it did, by what is tried. */
        MOVED,
        /** Lies elsewhere than in the untouched pattern: that is done. */
        DONE,
        /** Where it was. */
        BEFORE,
        /** Protected, and still as it was. */
        KEPT,
        /** Protected. */
        GUARDED,
        /** No longer fits the seam it is sewn to. */
        DRIFTED,
        /** Does not fit it, whatever is tried. */
        UNFIT,
        /** As it would be drawn to be true. */
        REDRAWN,
        /** A place at which something is to be seen. */
        PLACE,
        /** Along which it is sewn, where that is another line than the one to cut along. */
        STITCHED
    }

    /** Of a table with nothing on it. */
    public static final Legend NONE = new Legend(List.of());

    public Legend {
        signs = List.copyOf(signs);
    }

    /**
     * Of what is drawn, and of nothing else.
     *
     * @param pointed what a list beside the table points at
     */
    public static Legend of(TableScene scene, Optional<Pointed> pointed) {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        for (TableScene.PieceSight piece : scene.pieces()) {
            TableScene.TrialSight trial = piece.trial();
            if (!piece.moved().isEmpty() || !trial.darts().isEmpty()) {
                signs.add(scene.trying() ? Sign.MOVED : Sign.DONE);
            }
            boolean ghost = piece.ghost().isPresent() || !piece.former().isEmpty();
            if (ghost || !trial.former().isEmpty()) {
                signs.add(Sign.BEFORE);
            }
            if (!trial.kept().isEmpty()) {
                signs.add(Sign.KEPT);
            } else if (piece.piece().edges().stream().anyMatch(EdgeSigns::hasPins)) {
                signs.add(Sign.GUARDED);
            }
            if (!trial.drifts().isEmpty()) {
                signs.add(Sign.DRIFTED);
            }
        }
        if (!scene.misfits().isEmpty()) {
            signs.add(Sign.UNFIT);
        }
        if (signs.contains(Sign.KEPT)) {
            signs.remove(Sign.GUARDED);
        }
        pointed.filter(Pointed::redrawn).ifPresent(p -> {
            signs.add(Sign.REDRAWN);
            signs.add(Sign.PLACE);
            if (scene.pieces().stream().anyMatch(piece -> piece.piece().hasAllowance())) {
                signs.add(Sign.STITCHED);
            }
        });
        return new Legend(List.copyOf(signs));
    }
}
