package easewright.check;

import easewright.measure.PieceMeasures;
import easewright.measure.StitchOutline;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.topology.Overlap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A piece that grew must not come to lie over its neighbour: whoever cuts straight from the drawing would cut into it.
 * Pieces that lay over each other before are left in peace, and so are pieces of different sizes, which are drawn over
 * each other on purpose. What is compared is the drawn line.
 */
final class PiecesApart implements ChangeRule {
    /** Less than this is drawn lines touching, mm². */
    private static final double TOUCHING = 1;

    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Piece piece : after.pieces()) {
            for (Piece other : after.pattern().pieces()) {
                boolean near = other != piece
                        && !told.contains(other.id())
                        && mayBeCutTogether(piece, other)
                        && piece.outline().box().overlaps(other.outline().box());
                // First what is known after the first time: it mostly is the answer.
                if (near && wereApart(before, after, piece, other) && shared(piece, other) > TOUCHING) {
                    findings.add(Finding.of("piece-over-piece", Severity.NOTE, piece.name())
                            .with("other", other.name()));
                }
            }
            told.add(piece.id());
        }
        return findings;
    }

    /** Whether one garment has both; a piece without a size belongs to all of them. */
    private static boolean mayBeCutTogether(Piece one, Piece other) {
        return one.size().isEmpty() || other.size().isEmpty() || one.size().equals(other.size());
    }

    /** Whether both were in the pattern and did not lie over each other: found once, however often a change is tried. */
    private static boolean wereApart(Sight before, Sight after, Piece one, Piece other) {
        Optional<Piece> then = before.before(one, after);
        Optional<Piece> otherThen = before.before(other, after);
        if (then.isEmpty() || otherThen.isEmpty()) {
            return false;
        }
        Optional<StitchOutline> measured = stitch(before, then.get());
        Optional<StitchOutline> otherMeasured = stitch(before, otherThen.get());
        double shared = measured.isPresent() && otherMeasured.isPresent()
                ? measured.get().shared(otherMeasured.get())
                : shared(then.get(), otherThen.get());
        return shared <= TOUCHING;
    }

    private static Optional<StitchOutline> stitch(Sight sight, Piece piece) {
        return sight.measures().piece(piece.id()).map(PieceMeasures::stitch).filter(s -> s.piece() == piece);
    }

    private static double shared(Piece one, Piece other) {
        return Overlap.area(one.outline(), other.outline());
    }
}
