package easewright.editor.mark;

import easewright.geom.Line;
import java.util.List;
import java.util.Optional;

/** What a click does while a line is to be measured: it means a whole line, or one end of it and then the other. */
final class LineMeasured {
    private LineMeasured() {}

    static MarkState after(MarkState state, Snap snap) {
        Optional<Snap> first = state.picks().stream().findFirst();
        if (first.isEmpty()) {
            return !snap.isPoint() && snap.line().isPresent()
                    ? state.withLine(snap.line()).withPicks(List.of())
                    : state.withPicks(List.of(snap)).withLine(Optional.empty());
        }
        Line line = new Line(first.get().at(), snap.at());
        return line.length() > 0 ? state.withPicks(List.of()).withLine(Optional.of(line)) : state;
    }
}
