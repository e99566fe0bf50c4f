package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
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
                pattern.levels().stream().anyMatch(l -> isLaid(l, pattern))
                        && pattern.pieces().stream().noneMatch(p -> lacksHip(p, pattern));
        };
    }

    /** Whether nothing is missing in one part, nor off: then it has its tick. */
    public static boolean isRight(MarkState.Step step, MarkState state, Desk desk) {
        return isDone(step, state, desk.pattern()) && (step != MarkState.Step.SEAMS || SeamsView.allFit(desk));
    }

    /** The part that wants to be looked at first once suggestions were taken: where something is missing, else the first. */
    public static MarkState.Step afterSuggestions(MarkState state, Pattern pattern) {
        return Stream.of(MarkState.Step.PIECES, MarkState.Step.SEAMS, MarkState.Step.LEVELS)
                .filter(step -> !isDone(step, state, pattern))
                .findFirst()
                .orElse(MarkState.Step.PIECES);
    }

    private static boolean isLaid(Level level, Pattern pattern) {
        return pattern.pieces().stream().anyMatch(p -> p.level(level.name()).isPresent());
    }

    /** Below its waist a skirt or a pair of trousers is judged by some level more than the waist. */
    private static boolean lacksHip(Piece piece, Pattern pattern) {
        boolean waist = piece.levels().stream().anyMatch(l -> isWaist(l.level(), pattern));
        boolean other = pattern.levels().stream().anyMatch(l -> l.kind() != LevelKind.WAIST && isLaid(l, pattern));
        boolean above =
                piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.SHOULDER || e.role() == EdgeRole.ARMHOLE);
        boolean hem = piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.HEM);
        return waist && !other && !above && hem;
    }

    private static boolean isWaist(String name, Pattern pattern) {
        return pattern.level(name).filter(l -> l.kind() == LevelKind.WAIST).isPresent();
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
