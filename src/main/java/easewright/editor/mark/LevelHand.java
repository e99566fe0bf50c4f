package easewright.editor.mark;

import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** A level taken hold of on the table: from where it lies to where it is let go. */
public final class LevelHand {
    private final Session session;
    private final Supplier<MarkState> state;
    private final Consumer<UnaryOperator<MarkState>> change;
    private final Supplier<Snaps> snaps;

    /**
     * @param state  of marking
     * @param change changes it
     * @param snaps  the places to which a hand is drawn
     */
    LevelHand(
            Session session,
            Supplier<MarkState> state,
            Consumer<UnaryOperator<MarkState>> change,
            Supplier<Snaps> snaps) {
        this.session = session;
        this.state = state;
        this.change = change;
        this.snaps = snaps;
    }

    /** Takes hold of a level's line; says whether there was one. */
    public boolean grab(Point at, double reach) {
        Optional<MarkState> held = held(at, reach);
        held.ifPresent(h -> change.accept(s -> h));
        return held.isPresent();
    }

    /** Whether a level lies there that can be taken hold of. */
    public boolean canGrab(Point at, double reach) {
        return held(at, reach).isPresent();
    }

    /** The state with the level in the hand whose line lies there, if there is one. */
    private Optional<MarkState> held(Point at, double reach) {
        MarkState now = state.get();
        if (now.step() != MarkState.Step.LEVELS || now.tool() != Tool.NONE) {
            return Optional.empty();
        }
        return LevelPull.at(session.desk(), at, reach)
                .map(p -> now.withLevel(Optional.of(p.level()))
                        .withMoving(Optional.of(new MarkState.Moving(
                                p.piece(), p.level(), session.desk().pattern()))));
    }

    /**
     * Moves the level in the hand.
     *
     * @param free without being drawn to corners and notches
     */
    public void drag(Point at, double reach, boolean free) {
        state.get().moving().ifPresent(moving -> {
            LevelPull pull = new LevelPull(moving.piece(), moving.level());
            Pattern moved = pull.to(session.desk().pattern(), snaps.get(), at, free ? 0 : reach);
            change.accept(s -> s.withMoving(Optional.of(new MarkState.Moving(moving.piece(), moving.level(), moved))));
        });
    }

    /** Lets go of the level. */
    public void drop() {
        Optional<MarkState.Moving> moving = state.get().moving();
        if (moving.isPresent()) {
            change.accept(s -> s.withMoving(Optional.empty()));
            session.edit(moving.get().shown());
        }
    }
}
