package easewright.suggest;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Grain;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A pattern whose pieces lie askew, far apart, and are drawn the other way round. */
final class Turned {
    private final Affine map;

    private Turned(Affine map) {
        this.map = map;
    }

    /** Each piece turned by up to {@code most} degrees. */
    static Pattern of(Pattern pattern, double most, Random random) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Point centre = piece.outline().box().centre();
            double turn = Math.toRadians((2 * random.nextDouble() - 1) * most);
            Point home = new Point(600 + 1200 * pieces.size(), 800);
            Affine map = Affine.translation(home.minus(centre)).after(Affine.rotation(turn, centre));
            pieces.add(new Turned(map).of(piece));
        }
        return pattern.withPieces(pieces);
    }

    private Piece of(Piece piece) {
        Outline outline = piece.outline().transformed(map).reversed();
        var turned = piece.toBuilder()
                .outline(outline)
                .edges(piece.edges().stream().map(this::edge).toList())
                .levels(piece.levels().stream().map(m -> m.mapped(map::apply)).toList())
                .darts(piece.darts().stream().map(d -> d.mapped(map::apply)).toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(n.name(), map.apply(n.at())))
                        .toList())
                .riders(piece.riders().stream().map(this::rider).toList());
        piece.grain().ifPresent(g -> turned.grain(new Grain(map.apply(g.from()), map.apply(g.to()))));
        return turned.build();
    }

    private Rider rider(Rider rider) {
        return rider.withSegments(
                rider.segments().stream().map(s -> s.transformed(map)).toList());
    }

    private Edge edge(Edge edge) {
        return edge.withEnds(map.apply(edge.to()), map.apply(edge.from()));
    }
}
