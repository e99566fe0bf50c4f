package easewright.alter;

import easewright.geom.Outline;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.topology.Validity;

/** Whether a changed outline still bounds one piece of cloth. */
final class Simple {
    private Simple() {}

    /**
     * Refuses a change of a piece's outline after which it no longer bounds one piece of cloth, or a dart that ended
     * inside the cloth would end outside (never past the dart's point: docs/sources.md 4.3, common practice).
     */
    static void require(Outline before, Piece after) throws Refusal {
        require(before, after, !stays(before, after.outline()));
    }

    /** The same where the stitching line of the changed piece is known. */
    static void require(Outline before, StitchOutline after) throws Refusal {
        Outline now = after.piece().outline();
        // What is kept of a sound outline without its notches holds of the outline, if it has none.
        boolean sound = after.withoutNotches() == now && after.meetings().isEmpty();
        boolean stays = sound ? isSameWayRound(before, now) : stays(before, now);
        require(before, after.piece(), !stays);
    }

    private static void require(Outline before, Piece after, boolean crosses) throws Refusal {
        if (crosses) {
            throw Refusal.of("outline-crosses-itself").with("piece", after.name());
        }
        for (Dart dart : after.darts()) {
            if (before.contains(dart.point()) && !after.outline().contains(dart.point())) {
                throw Refusal.of("dart-point-left-out")
                        .with("piece", after.name())
                        .with("dart", dart.name());
            }
        }
    }

    /**
     * Not turned inside out, and not meeting itself; an outline that met itself before the change is not held against
     * it, since many drawings come so.
     */
    static boolean stays(Outline before, Outline after) {
        return isSameWayRound(before, after) && (Validity.isSimple(after) || !Validity.isSimple(before));
    }

    private static boolean isSameWayRound(Outline before, Outline after) {
        return before.signedArea() * after.signedArea() > 0;
    }
}
