package easewright.check;

import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.List;

/** A cutting line of which nobody said how far inside it the piece is sewn: taken for 0, it makes every girth too wide. */
final class AllowanceStated implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        return sight.pieces().stream()
                .filter(piece -> piece.drawn() == LineKind.CUTTING && !isStated(piece))
                .map(piece -> Finding.of("allowance-not-stated", Severity.CAUTION, piece.name()))
                .toList();
    }

    private static boolean isStated(Piece piece) {
        return piece.allowance() > 0
                || piece.edges().stream().anyMatch(edge -> edge.allowance().isPresent());
    }
}
