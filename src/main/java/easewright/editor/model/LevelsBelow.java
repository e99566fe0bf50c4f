package easewright.editor.model;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.Optional;

/**
 * Whether a change at a level is best carried down to the hem: below the waist, as on a skirt, where nothing is measured
 * between the level and the hem that would become wider with it (common practice).
 */
final class LevelsBelow {
    /** A level this near the hem is that of the hem, mm. */
    private static final double AT_HEM = 5;

    private LevelsBelow() {}

    /** Whether a change at the level goes down to the hem unless something else is chosen. */
    static boolean isCarried(Pattern pattern, Level level) {
        return belowTheWaist(level.kind())
                && pattern.pieces().stream()
                        .noneMatch(piece -> piece.level(level.name())
                                .map(mark -> hasBelow(piece, mark))
                                .orElse(false));
    }

    /** Whether the level is one from which a skirt is changed down to its hem. */
    static boolean belowTheWaist(LevelKind kind) {
        return kind == LevelKind.HIP || kind == LevelKind.HIGH_HIP || kind == LevelKind.THIGH;
    }

    private static boolean hasBelow(Piece piece, LevelMark mark) {
        Point down = piece.downGrain();
        double at = down(piece, mark, down);
        double hem = hem(piece, down);
        return piece.levels().stream()
                .filter(other -> !other.level().equals(mark.level()))
                .mapToDouble(other -> down(piece, other, down))
                .anyMatch(below -> below > at && below < hem);
    }

    /** Where levels begin to be those of the hem; a leg has its own measurement there. */
    private static double hem(Piece piece, Point down) {
        boolean leg = piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.CROTCH);
        return leg
                ? Double.POSITIVE_INFINITY
                : piece.edges().stream()
                        .filter(e -> e.role() == EdgeRole.HEM)
                        .mapToDouble(e -> middle(e).dot(down) - AT_HEM)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
    }

    private static double down(Piece piece, LevelMark mark, Point down) {
        Optional<Point> place =
                mark.through().or(() -> mark.along().flatMap(piece::edge).map(LevelsBelow::middle));
        return place.map(p -> p.dot(down)).orElse(Double.NEGATIVE_INFINITY);
    }

    private static Point middle(Edge edge) {
        return edge.from().towards(edge.to(), 0.5);
    }
}
