package easewright.svg;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Says which outlines are not simply closed lines, and where loose lines could not be put together. */
final class OutlineNotes {
    private final Drawing drawing;
    private final List<PieceOutline> pieces;
    private final Function<PieceOutline, String> names;
    private final List<Finding> findings = new ArrayList<>();

    private OutlineNotes(Drawing drawing, List<PieceOutline> pieces, Function<PieceOutline, String> names) {
        this.drawing = drawing;
        this.pieces = pieces;
        this.names = names;
    }

    static List<Finding> on(Drawing drawing, List<PieceOutline> pieces, Function<PieceOutline, String> names) {
        OutlineNotes notes = new OutlineNotes(drawing, pieces, names);
        pieces.forEach(notes::piece);
        if (drawing.joined().givenUp()) {
            notes.findings.add(Finding.of("loose-lines-many", Severity.CAUTION, ""));
        }
        drawing.joined().tangles().forEach(notes::tangle);
        return notes.findings;
    }

    private void piece(PieceOutline piece) {
        String name = names.apply(piece);
        if (piece.joined().isPresent()) {
            joined(name, piece.joined().get());
        } else {
            PenStroke.width(drawing.all().get(piece.order()), piece.area())
                    .ifPresent(width -> findings.add(Finding.of("outline-of-a-pen", Severity.CAUTION, name)
                            .with("pen", width)
                            .with("outside", width / 2)));
        }
    }

    private void joined(String name, JoinedOutline joined) {
        Severity severity = joined.gap() > Closing.MEET ? Severity.CAUTION : Severity.NOTE;
        String code = joined.gap() < Closing.TOLD ? "outline-joined" : "outline-joined-over-gaps";
        findings.add(Finding.of(code, severity, name)
                .with("count", joined.parts().size())
                .with("gap", joined.gap()));
        if (joined.doubled() > 0) {
            findings.add(Finding.of("line-doubled", Severity.NOTE, name).with("count", joined.doubled()));
        }
    }

    private void tangle(JoinedLines.Tangle tangle) {
        DrawnShape shape = drawing.all().get(tangle.shape());
        SubPath line = shape.subPaths().get(tangle.subPath());
        if (pieces.stream().noneMatch(piece -> piece.area().holds(line))) {
            String code = tangle.branches() ? "outline-branches" : "outline-many-parts";
            findings.add(
                    Finding.of(code, Severity.CAUTION, PieceNames.called(shape)).with("count", tangle.count()));
        }
    }
}
