package easewright.svg;

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

    /** Each stroke as it would go along with a piece if it were given to one, at the drawing's own scale. */
    static List<Rider> of(Drawing drawing, DrawnGeometry drawn, Pattern pattern) {
        Set<Stroke> taken = new HashSet<>();
        for (Piece piece : pattern.pieces()) {
            take(drawn.piece(piece.id()).or(() -> drawn.open(piece.id())), taken);
            drawn.joined(piece.id())
                    .ifPresent(joined ->
                            joined.parts().forEach(part -> taken.add(new Stroke(part.shape(), part.subPath()))));
            piece.riders().forEach(rider -> take(drawn.rider(rider.id()), taken));
        }
        List<Rider> loose = new ArrayList<>();
        for (int i = 0; i < drawing.all().size(); i++) {
            DrawnShape shape = drawing.all().get(i);
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                if (!taken.contains(new Stroke(i, k))) {
                    String id = shape.subPaths().size() == 1 ? shape.id() : shape.id() + "#" + k;
                    loose.add(new Rider(
                            id, Rider.Kind.ATTACHED, shape.subPaths().get(k).segments()));
                }
            }
        }
        return loose;
    }

    private record Stroke(int shape, int subPath) {}

    private static void take(Optional<DrawnGeometry.Part> part, Set<Stroke> taken) {
        part.ifPresent(p -> p.subPaths().forEach(k -> taken.add(new Stroke(p.shape(), k))));
    }
}
