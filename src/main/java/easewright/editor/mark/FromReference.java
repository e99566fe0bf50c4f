package easewright.editor.mark;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import easewright.suggest.Reference;
import easewright.text.Words;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** From where the distance of a level on a piece is measured, in words. */
final class FromReference {
    /** Nearer places are one, mm. */
    private static final double NEAR = 1;

    private static final Set<EdgeRole> AT_CENTRE = Set.of(EdgeRole.FOLD, EdgeRole.CENTRE, EdgeRole.CROTCH);

    private FromReference() {}

    /**
     * The level it is measured from, the edge at whose end the reference lies, or the top of the piece; of a shaped edge,
     * from which of its ends, since the other gives another figure.
     *
     * @param above whether it lies above its reference
     */
    static String words(Piece piece, LevelMark mark, boolean above, Words words) {
        Point at = mark.reference().orElseGet(() -> Reference.of(piece));
        Optional<LevelMark> level = piece.levels().stream()
                .filter(m -> !m.level().equals(mark.level()) && passes(piece, m, at))
                .findFirst();
        Optional<Edge> edge = piece.edges().stream()
                .filter(e -> isEnd(e, at))
                .filter(e -> e.role() == EdgeRole.WAIST || e.role() == EdgeRole.NECK || e.role() == EdgeRole.CAP)
                .findFirst();
        boolean top = at.distance(Reference.of(piece)) < NEAR;
        String place = level.map(LevelMark::level)
                .or(() -> edge.map(Edge::name))
                .orElseGet(() -> words.of(top ? "editor.level.ring" : "editor.level.elsewhere"));
        Optional<Edge> shaped =
                level.isPresent() ? level.flatMap(LevelMark::along).flatMap(piece::edge) : edge;
        String end = shaped.map(e -> end(piece, e, at)).orElse("");
        return words.of((above ? "editor.level.from-below" : "editor.level.from") + end, Map.of("place", place));
    }

    /** Which end of an edge it is, where the ends lie at different heights. */
    private static String end(Piece piece, Edge edge, Point at) {
        Point other = edge.from().distance(at) < NEAR ? edge.to() : edge.from();
        if (Math.abs(other.minus(at).dot(piece.downGrain())) < NEAR) {
            return "";
        }
        return isAtCentre(piece, at) ? ".centre" : isAtCentre(piece, other) ? ".side" : "";
    }

    private static boolean isAtCentre(Piece piece, Point at) {
        return piece.edges().stream().anyMatch(e -> AT_CENTRE.contains(e.role()) && isEnd(e, at));
    }

    /** Whether a level goes through a place, or runs along an edge that ends there. */
    private static boolean passes(Piece piece, LevelMark level, Point at) {
        boolean straight = level.through()
                .map(p -> Math.abs(p.minus(at).dot(piece.downGrain())) < NEAR)
                .orElse(false);
        return straight
                || level.along().flatMap(piece::edge).map(e -> isEnd(e, at)).orElse(false);
    }

    private static boolean isEnd(Edge edge, Point at) {
        return edge.from().distance(at) < NEAR || edge.to().distance(at) < NEAR;
    }
}
