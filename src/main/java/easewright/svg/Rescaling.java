package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Grain;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceBuilder;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;

/**
 * A pattern brought to another scale of the same drawing. Lines that are as drawn become what the drawing gives at the
 * new scale, to the last bit, so that they still count as untouched; all other places are multiplied.
 */
final class Rescaling {
    private final DrawnGeometry before;
    private final DrawnGeometry after;
    private final Affine map;

    Rescaling(DrawnGeometry before, DrawnGeometry after) {
        this.before = before;
        this.after = after;
        Scale old = before.scale();
        Scale now = after.scale();
        map = Affine.scaling(now.mmPerUnitX() / old.mmPerUnitX(), now.mmPerUnitY() / old.mmPerUnitY());
    }

    Pattern of(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream().map(this::piece).toList())
                .withScale(after.scale());
    }

    private Piece piece(Piece piece) {
        PieceBuilder scaled = piece.toBuilder()
                .outline(outline(piece))
                .edges(piece.edges().stream().map(this::edge).toList())
                .levels(piece.levels().stream().map(m -> m.mapped(map::apply)).toList())
                .darts(piece.darts().stream().map(d -> d.mapped(map::apply)).toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(n.name(), map.apply(n.at())))
                        .toList())
                .riders(piece.riders().stream().map(this::rider).toList())
                .original(piece.original().map(o -> o.transformed(map)));
        piece.grain().ifPresent(g -> scaled.grain(new Grain(map.apply(g.from()), map.apply(g.to()))));
        return scaled.build();
    }

    private Outline outline(Piece piece) {
        boolean asDrawn = drawn(before, piece).equals(Optional.of(piece.outline()));
        // Ends that were just near enough to join may not be at the new scale.
        return drawn(after, piece)
                .filter(now -> asDrawn)
                .orElseGet(() -> piece.outline().transformed(map));
    }

    private static Optional<Outline> drawn(DrawnGeometry by, Piece piece) {
        return by.outline(piece.id()).or(() -> by.closing(piece.id()));
    }

    private Rider rider(Rider rider) {
        Optional<List<Segment>> drawn = before.segments(rider.id());
        boolean asDrawn = drawn.equals(Optional.of(rider.segments()));
        Rider scaled =
                rider.mapped(all -> all.stream().map(s -> s.transformed(map)).toList());
        return asDrawn ? scaled.withSegments(after.segments(rider.id()).orElseThrow()) : scaled;
    }

    private Edge edge(Edge edge) {
        return edge.withEnds(map.apply(edge.from()), map.apply(edge.to()));
    }
}
