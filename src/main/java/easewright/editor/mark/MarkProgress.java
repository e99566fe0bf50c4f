package easewright.editor.mark;

import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import java.util.stream.Stream;

/** How far the marking of a pattern has come. */
public final class MarkProgress {
    private MarkProgress() {}

    /** Whether enough is marked in one part to go on. */
    public static boolean isDone(MarkState.Step step, MarkState state, Pattern pattern) {
        return switch (step) {
            case SCALE -> pattern.scale().proof() != Scale.Proof.UNPROVED;
            case SUGGESTED -> isSeenThrough(state, pattern);
            case PIECES ->
                !pattern.pieces().isEmpty()
                        && pattern.pieces().stream().noneMatch(p -> p.edges().isEmpty());
            case SEAMS -> !pattern.mates().isEmpty();
            case LEVELS ->
                pattern.levels().stream()
                        .anyMatch(l -> pattern.pieces().stream()
                                .anyMatch(p -> p.level(l.name()).isPresent()));
        };
    }

    /** Suggestions were looked at of which none is left that is ticked, or all that they help with is marked. */
    private static boolean isSeenThrough(MarkState state, Pattern pattern) {
        if (state.thoughts().ready().isPresent()) {
            return !hasTicked(state);
        }
        return Stream.of(MarkState.Step.PIECES, MarkState.Step.SEAMS, MarkState.Step.LEVELS)
                .allMatch(step -> isDone(step, state, pattern));
    }

    /** Whether suggestions are looked at of which some are ticked and not made yet. */
    public static boolean isOpen(MarkState state) {
        return state.step() == MarkState.Step.SUGGESTED && hasTicked(state);
    }

    private static boolean hasTicked(MarkState state) {
        return state.thoughts().last().stream()
                .flatMap(t -> t.suggestions().all().stream())
                .anyMatch(s -> !state.leftOut().contains(s.key()));
    }
}
