package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.editor.paint.MarkScene;
import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the picture that lies over the pieces while marks are made. */
public final class MarkScenes {
    private MarkScenes() {}

    public static MarkScene of(Desk desk, Sheet sheet, MarkState state) {
        if (!state.on() && state.tool() == Tool.NONE) {
            return MarkScene.EMPTY;
        }
        List<Segment> loose = new ArrayList<>();
        sheet.loose().forEach(rider -> loose.addAll(rider.segments()));
        List<MarkScene.Dot> dots = new ArrayList<>();
        state.picks().forEach(p -> dots.add(new MarkScene.Dot(p.at(), MarkScene.Sign.PICKED)));
        state.over().ifPresent(o -> dots.add(new MarkScene.Dot(o.at(), sign(o))));
        return new MarkScene(
                state.on() ? loose : List.of(),
                state.on() ? sheet.captions() : List.of(),
                List.of(),
                dots,
                tape(desk, state));
    }

    private static MarkScene.Sign sign(Snap over) {
        if (over.isPoint()) {
            return MarkScene.Sign.CAUGHT;
        }
        return over.kind() == Snap.Kind.FREE ? MarkScene.Sign.FREE : MarkScene.Sign.ON_LINE;
    }

    /** The line measured, or while the second place is not clicked yet, from the first to the hand. */
    private static Optional<MarkScene.Tape> tape(Desk desk, MarkState state) {
        boolean measures = state.tool() == Tool.KNOWN_LINE || state.tool() == Tool.TAPE;
        Optional<Line> line = state.line();
        if (line.isEmpty() && measures && !state.picks().isEmpty()) {
            line = state.over().map(o -> new Line(state.picks().get(0).at(), o.at()));
        }
        return line.map(l -> new MarkScene.Tape(l.start(), l.end(), desk.words().length(l.length())));
    }
}
