package easewright.svg;

import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The lines that ride along with each piece of a drawing without marks: other lines of its own shape wherever they lie,
 * and lines inside it.
 */
final class RidersAlong {
    private final Drawing drawing;
    private final List<PieceOutline> pieces;
    private final Map<Integer, List<PieceOutline>> byShape = new HashMap<>();

    /** Lines of which some outline is joined, as {@code List.of(shape, subPath)}. */
    private final Set<List<Integer>> joined = new HashSet<>();

    private final LineOwner owner;

    private RidersAlong(Drawing drawing, List<PieceOutline> pieces) {
        this.drawing = drawing;
        this.pieces = pieces;
        for (PieceOutline piece : pieces) {
            if (piece.joined().isEmpty()) {
                byShape.computeIfAbsent(piece.order(), o -> new ArrayList<>()).add(piece);
            }
            piece.joined()
                    .ifPresent(outline ->
                            outline.parts().forEach(part -> joined.add(List.of(part.shape(), part.subPath()))));
        }
        owner = new LineOwner(drawing, pieces, this::isFree);
    }

    /**
     * @param pieces the largest first
     */
    static Map<PieceOutline, List<Rider>> of(Drawing drawing, List<PieceOutline> pieces) {
        return new RidersAlong(drawing, pieces).riders();
    }

    private Map<PieceOutline, List<Rider>> riders() {
        Map<PieceOutline, List<Rider>> riders = new IdentityHashMap<>();
        pieces.forEach(piece -> riders.put(piece, new ArrayList<>()));
        for (int i = 0; i < drawing.all().size(); i++) {
            DrawnShape shape = drawing.all().get(i);
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                Rider rider = rider(shape, k);
                owner(i, k).ifPresent(piece -> riders.get(piece).add(rider));
            }
        }
        return riders;
    }

    private Optional<PieceOutline> owner(int shape, int subPath) {
        List<PieceOutline> own = byShape.getOrDefault(shape, List.of());
        if (own.isEmpty()) {
            return isFree(shape, subPath) ? owner.of(shape, subPath) : Optional.empty();
        }
        if (own.stream().anyMatch(piece -> piece.subPath() == subPath)) {
            return Optional.empty();
        }
        SubPath line = drawing.all().get(shape).subPaths().get(subPath);
        return own.stream()
                .filter(piece -> piece.area().holds(line))
                .findFirst()
                .or(() -> Optional.of(own.get(0)));
    }

    /** Whether a line is neither the outline of a piece, nor part of one, nor of a shape that holds one. */
    private boolean isFree(int shape, int subPath) {
        return !byShape.containsKey(shape) && !joined.contains(List.of(shape, subPath));
    }

    private static Rider rider(DrawnShape shape, int subPath) {
        String id = shape.subPaths().size() == 1 ? shape.id() : shape.id() + "#" + subPath;
        return new Rider(id, Rider.Kind.INNER, shape.subPaths().get(subPath).segments());
    }
}
