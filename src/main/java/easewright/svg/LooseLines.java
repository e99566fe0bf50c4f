package easewright.svg;

import easewright.geom.Outline;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The drawn lines that belong to no piece of a pattern: test squares, rulers, ticks that stick out of a piece. */
final class LooseLines {
    private LooseLines() {}

    /** Closed strokes that hold the area of a piece, whether a piece has them or not, as {@link #of} names them. */
    static List<Rider> closed(Drawing drawing) {
        List<Rider> closed = new ArrayList<>();
        for (DrawnShape shape : drawing.all()) {
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                boolean large = shape.subPaths().get(k).chain() instanceof Outline outline
                        && Math.abs(outline.signedArea()) >= BarePattern.LEAST_AREA;
                if (large) {
                    closed.add(rider(shape, k));
                }
            }
        }
        return closed;
    }

    /** Those of {@link #closed} lines that no piece has. */
    static List<Rider> without(DrawnGeometry drawn, Pattern pattern, List<Rider> closed) {
        Set<Long> taken = taken(drawn, pattern);
        return closed.stream()
                .filter(line -> drawn.rider(line.id())
                        .map(part -> part.subPaths().stream().noneMatch(k -> taken.contains(stroke(part.shape(), k))))
                        .orElse(true))
                .toList();
    }

    private static Rider rider(DrawnShape shape, int subPath) {
        String id = shape.subPaths().size() == 1 ? shape.id() : shape.id() + "#" + subPath;
        return new Rider(id, Rider.Kind.ATTACHED, shape.subPaths().get(subPath).segments());
    }

    /** Each stroke as it would go along with a piece if it were given to one, at the drawing's own scale. */
    static List<Rider> of(Drawing drawing, DrawnGeometry drawn, Pattern pattern) {
        Set<Long> taken = taken(drawn, pattern);
        List<Rider> loose = new ArrayList<>();
        for (int i = 0; i < drawing.all().size(); i++) {
            DrawnShape shape = drawing.all().get(i);
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                if (!taken.contains(stroke(i, k))) {
                    loose.add(rider(shape, k));
                }
            }
        }
        return loose;
    }

    /** The strokes that belong to pieces. */
    private static Set<Long> taken(DrawnGeometry drawn, Pattern pattern) {
        Set<Long> taken = new HashSet<>();
        for (Piece piece : pattern.pieces()) {
            take(drawn.piece(piece.id()).or(() -> drawn.open(piece.id())), taken);
            drawn.joined(piece.id())
                    .ifPresent(joined ->
                            joined.parts().forEach(part -> taken.add(stroke(part.shape(), part.subPath()))));
            piece.riders().forEach(rider -> take(drawn.rider(rider.id()), taken));
        }
        return taken;
    }

    /** One number for a sub-path of a shape: what Java makes to compare records takes long in a short run. */
    private static long stroke(int shape, int subPath) {
        return (long) shape << Integer.SIZE | subPath;
    }

    private static void take(Optional<DrawnGeometry.Part> part, Set<Long> taken) {
        part.ifPresent(p -> p.subPaths().forEach(k -> taken.add(stroke(p.shape(), k))));
    }
}
