package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lines drawn on one half of a pair as they would lie on the other half, of which it is the mirror image. What was
 * drawn anew on one half alone, such as its cutting line, is on the other still as it was.
 */
final class MirroredLines {
    /** Places that belong to each other lie equally far apart on both halves within this, mm. */
    private static final double ALIKE = 1e-3;

    private MirroredLines() {}

    /** The piece with the lines of its other half; empty where the two are no mirror images. */
    static Optional<Piece> on(Piece piece, Piece other) {
        if (piece.riders().size() != other.riders().size()) {
            return Optional.empty();
        }
        return mirror(places(other), places(piece)).map(map -> {
            List<Rider> lines = new ArrayList<>();
            for (int i = 0; i < piece.riders().size(); i++) {
                List<Segment> there = other.riders().get(i).segments();
                lines.add(piece.riders()
                        .get(i)
                        .withSegments(
                                there.stream().map(s -> s.transformed(map)).toList()));
            }
            return piece.toBuilder().riders(lines).build();
        });
    }

    private static List<Point> places(Piece piece) {
        List<Point> places = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            places.add(edge.from());
            places.add(edge.to());
        }
        return places;
    }

    /** The map that turns the plane over and brings places of one list onto those of another, by the two farthest apart. */
    private static Optional<Affine> mirror(List<Point> some, List<Point> others) {
        if (some.isEmpty() || some.size() != others.size()) {
            return Optional.empty();
        }
        Point from = some.get(0);
        Point there = others.get(0);
        int far = some.indexOf(
                some.stream().max(Comparator.comparingDouble(from::distance)).orElseThrow());
        Point was = some.get(far).minus(from);
        Point is = others.get(far).minus(there);
        if (was.norm() == 0 || Math.abs(was.norm() - is.norm()) > ALIKE) {
            return Optional.empty();
        }
        Point one = was.unit();
        Point two = is.unit();
        double cos = one.x() * two.x() - one.y() * two.y();
        double sin = one.x() * two.y() + one.y() * two.x();
        Affine map = new Affine(
                cos,
                sin,
                sin,
                -cos,
                there.x() - cos * from.x() - sin * from.y(),
                there.y() - sin * from.x() + cos * from.y());
        for (int i = 0; i < some.size(); i++) {
            if (map.apply(some.get(i)).distance(others.get(i)) > ALIKE) {
                return Optional.empty();
            }
        }
        return Optional.of(map);
    }
}
