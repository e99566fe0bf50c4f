package easewright.editor.mark;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the clicks with a tool do to the pattern when they are complete. */
final class Clicks {
    private Clicks() {}

    /**
     * @param picks as many as the tool takes, each on a piece
     * @param level the level that is being put on pieces
     * @throws MarkRefused if that cannot be marked
     */
    static Pattern done(Tool tool, List<Snap> picks, Optional<String> level, Pattern pattern) throws MarkRefused {
        Snap first = picks.get(0);
        String piece = first.piece().orElseThrow();
        return switch (tool) {
            case SPLIT -> EdgeEdits.split(pattern, piece, first.at());
            case NOTCH -> PieceEdits.notch(pattern, piece, first.at());
            case DART -> {
                onePiece(picks);
                yield PieceEdits.dart(
                        pattern,
                        piece,
                        first.at(),
                        picks.get(1).at(),
                        picks.get(2).at());
            }
            case GRAIN -> {
                onePiece(picks);
                yield PieceEdits.grain(pattern, piece, first.at(), picks.get(1).at());
            }
            case LEVEL -> LevelEdits.place(pattern, piece, level.orElseThrow(), first.at());
            case SEW -> MateEdits.sew(pattern, edge(pattern, first), edge(pattern, picks.get(1)));
            case NONE, KNOWN_LINE, TAPE -> pattern;
        };
    }

    private static void onePiece(List<Snap> picks) throws MarkRefused {
        if (picks.stream().map(Snap::piece).distinct().count() > 1) {
            throw new MarkRefused("not-one-piece", Map.of());
        }
    }

    private static EdgeRef edge(Pattern pattern, Snap snap) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, snap.piece().orElseThrow());
        Edge edge = EdgeEdits.at(piece, snap.at())
                .orElseThrow(() -> new MarkRefused("no-edge-there", Map.of("piece", piece.name())));
        return EdgeRef.of(piece.id(), edge.name());
    }
}
