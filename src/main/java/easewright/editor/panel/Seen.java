package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.Thoughts;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import java.util.Optional;
import java.util.Set;

/**
 * What the lists of marks depend on. The hand on the table changes much more often than this, and while it only moves,
 * no list has to be made again.
 */
record Seen(
        Desk desk,
        boolean on,
        MarkState.Step step,
        Tool tool,
        Optional<String> piece,
        Optional<String> outline,
        Optional<String> level,
        Set<String> leftOut,
        Thoughts thoughts) {
    static Seen of(Desk desk, MarkState state) {
        return new Seen(
                desk,
                state.on(),
                state.step(),
                state.tool(),
                state.piece(),
                state.outline(),
                state.level(),
                state.leftOut(),
                state.thoughts());
    }
}
