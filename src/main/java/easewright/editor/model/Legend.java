package easewright.editor.model;

import easewright.editor.paint.TableScene;
import java.util.EnumSet;
import java.util.List;
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
        /** No longer fits the seam it is sewn to. */
        DRIFTED
    }

    /** Of a table with nothing on it. */
    public static final Legend NONE = new Legend(List.of());

    public Legend {
        signs = List.copyOf(signs);
    }

    /** Of what is drawn, and of nothing else. */
    public static Legend of(TableScene scene) {
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
            }
            if (!trial.drifts().isEmpty()) {
                signs.add(Sign.DRIFTED);
            }
        }
        return new Legend(List.copyOf(signs));
    }
}
