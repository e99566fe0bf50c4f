package easewright.editor.mark;

import easewright.pattern.Pattern;
import easewright.pattern.Scale;

/** How far the marking of a pattern has come. */
public final class MarkProgress {
    private MarkProgress() {}

    /** Whether enough is marked in one part to go on. */
    public static boolean isDone(MarkState.Step step, Pattern pattern) {
        return switch (step) {
            case SCALE -> pattern.scale().proof() != Scale.Proof.UNPROVED;
            case SUGGESTED -> false;
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

    /** Whether suggestions are looked at of which some are ticked and not made yet. */
    public static boolean isOpen(MarkState state) {
        return state.step() == MarkState.Step.SUGGESTED
                && state.thoughts().last().stream()
                        .flatMap(t -> t.suggestions().all().stream())
                        .anyMatch(s -> !state.leftOut().contains(s.key()));
    }
}
