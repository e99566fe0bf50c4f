package easewright.suggest;

import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A line inside a piece that is that piece in a smaller size: it lies in it as sizes lie in each other ({@link Grading}).
 *
 * @param line the smaller outline
 */
public record OwnSize(String piece, String name, Rider line, Reason reason) implements Suggestion.OfPiece {
    /** A size has at least this part of the area of the next larger one. */
    private static final double LEAST_OF_AREA = 0.7;

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            boolean open =
                    piece.edges().isEmpty() && piece.riders().stream().noneMatch(r -> r.kind() == Rider.Kind.PARALLEL);
            if (open) {
                for (SewnInside inner : SewnInside.in(piece, Rider.Kind.INNER)) {
                    if (!inner.open() && inner.riders().size() == 1) {
                        of(piece, inner).ifPresent(found::add);
                    }
                }
            }
        }
        return found;
    }

    private static Optional<OwnSize> of(Piece piece, SewnInside inner) {
        double area = Math.abs(piece.outline().signedArea());
        return inner.area() < LEAST_OF_AREA * area || inner.area() >= area
                ? Optional.empty()
                : Grading.between(inner.outline(), piece.outline())
                        .map(grading -> new OwnSize(
                                piece.id(),
                                piece.name(),
                                inner.riders().get(0),
                                new Reason("grows-like-a-size", Map.of("most", Rounding.meant(grading.most())), 0.45)));
    }

    @Override
    public Kind kind() {
        return Kind.OWN_SIZE;
    }

    @Override
    public String key() {
        return "own-size " + line.id();
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("name", name);
    }

    @Override
    public List<Segment> shown() {
        return line.segments();
    }

    @Override
    public Pattern apply(Pattern pattern) {
        Optional<Piece> around = pattern.piece(piece);
        if (around.isEmpty() || pattern.piece(line.id()).isPresent()) {
            return pattern;
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece p : pattern.pieces()) {
            if (p != around.get()) {
                pieces.add(p);
                continue;
            }
            pieces.add(p.toBuilder()
                    .riders(p.riders().stream()
                            .filter(r -> !r.id().equals(line.id()))
                            .toList())
                    .build());
            pieces.add(Piece.bare(line.id(), new Outline(line.segments())));
        }
        return pattern.withPieces(pieces);
    }
}
