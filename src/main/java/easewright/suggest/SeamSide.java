package easewright.suggest;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

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

    /** As often as its piece is there, layers on each other as one, both halves of a fold counted. */
    EdgeRef all() {
        return new EdgeRef(piece.id(), edge.name(), times());
    }

    int times() {
        return piece.timesBeside();
    }

    double wholeLength() {
        return mm * times();
    }

    static double wholeLength(List<SeamSide> sides) {
        return sides.stream().mapToDouble(SeamSide::wholeLength).sum();
    }

    /** One of two layers, where each is faced by another that is cut alike. */
    Optional<SeamSide> oneLayer() {
        return piece.shapes() == 2
                ? Optional.of(
                        new SeamSide(piece.toBuilder().cut(1, piece.onFold()).build(), edge, mm))
                : Optional.empty();
    }

    double apart(SeamSide other) {
        return Math.abs(mm - other.mm);
    }

    boolean onBack() {
        return Vocabulary.has(piece.name(), "back");
    }

    boolean onFront() {
        return Vocabulary.has(piece.name(), "front");
    }

    boolean onYoke() {
        return pieceHas(EdgeRole.ARMHOLE) && Vocabulary.has(piece.name(), "yoke") && !pieceHas(EdgeRole.HEM);
    }

    boolean onBodice() {
        return pieceHas(EdgeRole.SHOULDER) || pieceHas(EdgeRole.ARMHOLE);
    }

    boolean pieceHas(EdgeRole role) {
        return piece.edges().stream().anyMatch(e -> e.role() == role);
    }
}
