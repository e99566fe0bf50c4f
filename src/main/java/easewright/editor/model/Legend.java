package easewright.editor.model;

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
        /** Lies elsewhere than it did. */
        MOVED,
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

    public static Legend of(Desk desk) {
        if (!desk.isOpen()) {
            return NONE;
        }
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        if (desk.shownTrial().isPresent() || isChanged(desk)) {
            signs.add(Sign.MOVED);
            signs.add(Sign.BEFORE);
        }
        desk.shownTrial().ifPresent(trial -> {
            if (trial.fates().stream().anyMatch(TrialSights::isKept)) {
                signs.add(Sign.KEPT);
            }
        });
        if (Effect.driftedMates(desk).findAny().isPresent()) {
            signs.add(Sign.DRIFTED);
        }
        return new Legend(List.copyOf(signs));
    }

    private static boolean isChanged(Desk desk) {
        return desk.shown().pieces().stream()
                .anyMatch(p -> p.original().filter(o -> !o.equals(p.outline())).isPresent());
    }
}
