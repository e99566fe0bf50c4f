package easewright.editor.mark;

import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import java.util.Optional;

/** A level taken hold of on the table: from where it lies to where it is let go. */
final class LevelHand {
    private final Session session;

    LevelHand(Session session) {
        this.session = session;
    }

    /** The state with the level in the hand whose line lies there, if there is one. */
    Optional<MarkState> grab(MarkState state, Point at, double reach) {
        if (state.step() != MarkState.Step.LEVELS || state.tool() != Tool.NONE) {
            return Optional.empty();
        }
        return LevelPull.at(session.desk(), at, reach)
                .map(p -> state.withLevel(Optional.of(p.level()))
                        .withMoving(Optional.of(new MarkState.Moving(
                                p.piece(), p.level(), session.desk().pattern()))));
    }

    /** The state with the level, if one is in the hand, moved to the hand. */
    MarkState drag(MarkState state, Snaps snaps, Point at, double reach) {
        if (state.moving().isEmpty()) {
            return state;
        }
        MarkState.Moving moving = state.moving().get();
        LevelPull pull = new LevelPull(moving.piece(), moving.level());
        Pattern moved = pull.to(session.desk().pattern(), snaps, at, reach);
        return state.withMoving(Optional.of(new MarkState.Moving(moving.piece(), moving.level(), moved)));
    }
}
