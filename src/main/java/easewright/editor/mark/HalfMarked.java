package easewright.editor.mark;

import easewright.editor.model.Begun;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is half done in marking, to be written down, and set up again from there. */
public final class HalfMarked {
    private HalfMarked() {}

    public static Begun.Marking in(MarkState state) {
        // What a tape has shown was read; a line that is to prove the scale waits for its length.
        boolean proving = state.on() && state.step() == MarkState.Step.SCALE && state.tool() != Tool.TAPE;
        return new Begun.Marking(
                state.on(),
                state.step().name(),
                state.tool().name(),
                state.piece(),
                state.level(),
                state.picks().stream()
                        .map(p -> new Begun.Place(p.kind().name(), p.at(), p.piece(), p.line()))
                        .toList(),
                proving ? state.line() : Optional.empty(),
                MarkProgress.isOpen(state) ? state.leftOut() : Set.of());
    }

    /**
     * @param now     what marking is now
     * @param pattern what lies on the table
     * @return empty where that cannot be gone on with
     */
    static Optional<MarkState> again(Begun.Marking before, MarkState now, Pattern pattern) {
        try {
            Tool tool = Tool.valueOf(before.tool());
            MarkState.Step step = MarkState.Step.valueOf(before.step());
            List<Snap> picks = before.places().stream()
                    .map(p -> new Snap(Snap.Kind.valueOf(p.kind()), p.at(), p.piece(), p.line()))
                    .toList();
            boolean known = picks.stream()
                    .flatMap(p -> p.piece().stream())
                    .allMatch(id -> pattern.piece(id).isPresent());
            boolean placeable =
                    tool != Tool.LEVEL || before.level().flatMap(pattern::level).isPresent();
            boolean begun = picks.isEmpty() || picks.size() < tool.clicks();
            if (!known || !placeable || !begun) {
                return Optional.empty();
            }
            return Optional.of(now.withOn(before.open())
                    .withStep(step)
                    .withPiece(before.piece().filter(id -> pattern.piece(id).isPresent()))
                    .withLevel(before.level())
                    .withLeftOut(before.leftOut())
                    .withTool(tool)
                    .withPicks(picks)
                    .withLine(before.line()));
        } catch (IllegalArgumentException ofAnotherVersion) {
            return Optional.empty();
        }
    }
}
