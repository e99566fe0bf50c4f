package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Rectangles 200 mm wide for the tests of truing: waist above, side at the right, hem below, fold at the left. */
final class Panels {
    /** In the middle of the waist, 20 mm wide, its legs equal. */
    static final Dart DART = dart(new Point(90, 0), new Point(110, 0), new Point(100, 90));

    private Panels() {}

    /** One in the waist. */
    static Dart dart(Point mouth1, Point mouth2, Point point) {
        return new Dart("d", mouth1, mouth2, point, Optional.empty(), Optional.of("waist"));
    }

    static Piece panel(String id, double length) {
        return slanted(id, length, 90, 90);
    }

    /** A panel whose waist meets the fold, and whose hem meets the fold, at these angles through the cloth, degrees. */
    static Piece slanted(String id, double length, double waist, double hem) {
        double up = 200 * Math.tan(Math.toRadians(90 - waist));
        double down = 200 * Math.tan(Math.toRadians(90 - hem));
        return Cloths.polygon(
                id,
                List.of(new Point(0, 0), new Point(200, up), new Point(200, length - down), new Point(0, length)),
                "waist WAIST, side SEAM, hem HEM, fold FOLD");
    }

    static Piece edited(Piece piece, String edge, UnaryOperator<Edge> how) {
        return piece.withEdges(piece.edges().stream()
                .map(e -> e.name().equals(edge) ? how.apply(e) : e)
                .toList());
    }

    static Piece kept(Piece piece, String edge) {
        return edited(piece, edge, e -> e.withProtected(true));
    }

    static Piece notched(Piece piece, String notch, double y) {
        return piece.toBuilder()
                .notches(List.of(new Notch(notch, new Point(200, y))))
                .build();
    }

    static Pattern sewn(Piece front, Piece back) {
        return sewn(front, back, 0);
    }

    static Pattern sewn(Piece front, Piece back, double ease) {
        return Cloths.pattern(List.of(), front, back)
                .withMates(List.of(new Mate(
                        "seam",
                        List.of(EdgeRef.of(front.id(), "side")),
                        List.of(EdgeRef.of(back.id(), "side")),
                        ease)));
    }

    static List<Proposal> proposals(Pattern pattern, String code) {
        return Truing.proposals(pattern).stream()
                .filter(p -> p.finding().code().equals(code))
                .toList();
    }

    static Proposal only(Pattern pattern, String code) {
        List<Proposal> found = proposals(pattern, code);
        if (found.size() != 1) {
            throw new AssertionError("One " + code + " expected, but there are " + Truing.proposals(pattern));
        }
        return found.get(0);
    }
}
