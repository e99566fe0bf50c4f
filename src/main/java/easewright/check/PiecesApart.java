package easewright.check;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.topology.Overlap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece that grew must not come to lie over its neighbour: whoever cuts straight from the drawing would cut into it.
 * Pieces that lay over each other before, as on a sheet of many sizes, are left in peace. What is compared is the drawn line.
 */
final class PiecesApart implements ChangeRule {
    /** Less than this is drawn lines touching, mm². */
    private static final double TOUCHING = 1;

    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        List<Piece> all = after.pattern().pieces();
        List<String> told = new ArrayList<>();
        for (Piece piece : after.pieces()) {
            for (Piece other : all) {
                boolean near = other != piece
                        && !told.contains(other.id())
                        && piece.outline().box().overlaps(other.outline().box());
                if (near && shared(piece, other) > TOUCHING && !shared(before.pattern(), piece, other)) {
                    findings.add(Finding.of("piece-over-piece", Severity.NOTE, piece.name())
                            .with("other", other.name()));
                }
            }
            told.add(piece.id());
        }
        return findings;
    }

    /** Whether the two lay over each other in the pattern, or one of them was not in it yet. */
    private static boolean shared(Pattern before, Piece one, Piece other) {
        Optional<Piece> then = before.piece(one.id());
        Optional<Piece> otherThen = before.piece(other.id());
        return then.isEmpty() || otherThen.isEmpty() || shared(then.get(), otherThen.get()) > TOUCHING;
    }

    private static double shared(Piece one, Piece other) {
        return Overlap.area(one.outline(), other.outline());
    }
}
