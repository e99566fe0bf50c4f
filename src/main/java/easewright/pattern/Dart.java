package easewright.pattern;

import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A dart (or a pleat, with its point beyond the piece): two mouth places and the point; a dart closed at both ends
 * has a second point on the other side of its mouth. Its intake at a level is the width between the legs there.
 *
 * @param edge the edge of the piece on which the mouth lies; empty for a dart inside the piece
 */
public record Dart(
        String name, Point mouth1, Point mouth2, Point point, Optional<Point> otherPoint, Optional<String> edge) {
    /**
     * @throws IllegalArgumentException if the name is blank
     */
    public Dart {
        Names.require(name, "dart");
    }

    /** Corners of the folded-away cloth, in order. */
    public List<Point> corners() {
        return otherPoint
                .map(other -> List.of(mouth1, point, mouth2, other))
                .orElseGet(() -> List.of(mouth1, point, mouth2));
    }

    /** The same dart with all its places moved. */
    public Dart mapped(UnaryOperator<Point> move) {
        return new Dart(name, move.apply(mouth1), move.apply(mouth2), move.apply(point), otherPoint.map(move), edge);
    }

    /** Width of the mouth, mm. */
    public double intake() {
        return mouth1.distance(mouth2);
    }

    /** Spelt out for a short run, as in {@link Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Dart d
                && name.equals(d.name)
                && mouth1.equals(d.mouth1)
                && mouth2.equals(d.mouth2)
                && point.equals(d.point)
                && otherPoint.equals(d.otherPoint)
                && edge.equals(d.edge);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * name.hashCode() + mouth1.hashCode()) + point.hashCode();
    }
}
