package easewright.suggest;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.List;

/**
 * An edge that may be sewn to another.
 *
 * @param mm its sewn length
 */
record SeamSide(Piece piece, Edge edge, double mm) {
    /** However often it counts. */
    EdgeRef ref() {
        return EdgeRef.of(piece.id(), edge.name());
    }

    /** As often as its piece is there, both halves of a fold counted. */
    EdgeRef all() {
        return new EdgeRef(piece.id(), edge.name(), times());
    }

    int times() {
        return piece.times() * (piece.onFold() ? 2 : 1);
    }

    double wholeLength() {
        return mm * times();
    }

    static double wholeLength(List<SeamSide> sides) {
        return sides.stream().mapToDouble(SeamSide::wholeLength).sum();
    }

    double apart(SeamSide other) {
        return Math.abs(mm - other.mm);
    }

    boolean onBack() {
        return Vocabulary.has(piece.name(), "back");
    }

    boolean onBodice() {
        return pieceHas(EdgeRole.SHOULDER) || pieceHas(EdgeRole.ARMHOLE);
    }

    boolean pieceHas(EdgeRole role) {
        return piece.edges().stream().anyMatch(e -> e.role() == role);
    }
}
