package easewright.pattern;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * A copy of a piece elsewhere, with all its marks and lines: drawn as elements of its own, under other ids.
 *
 * @param place    where each place comes to lie
 * @param line     where each segment comes to lie
 * @param mirrored whether it comes to lie the other way round
 */
public record PieceCopy(UnaryOperator<Point> place, UnaryOperator<Segment> line, boolean mirrored) {
    /**
     * The copy.
     *
     * @param ending what is put behind the id of the piece and of each of its lines
     */
    public Piece of(Piece piece, String ending) {
        Piece copy = of(piece);
        List<Rider> riders = copy.riders().stream()
                .map(r -> new Rider(id(r.id(), ending), r.kind(), r.segments(), r.original()))
                .toList();
        return copy.toBuilder().id(id(piece.id(), ending)).riders(riders).build();
    }

    /** The piece itself, lying elsewhere. */
    public Piece of(Piece piece) {
        PieceBuilder copy = piece.toBuilder()
                .outline(outline(piece.outline()))
                .edges(piece.edges().stream()
                        .map(e -> e.withEnds(place.apply(e.from()), place.apply(e.to())))
                        .toList())
                .levels(piece.levels().stream().map(this::level).toList())
                .darts(piece.darts().stream().map(d -> d.mapped(place)).toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(n.name(), place.apply(n.at())))
                        .toList())
                .grain(piece.grain().map(g -> new Grain(place.apply(g.from()), place.apply(g.to()))))
                .riders(piece.riders().stream().map(r -> r.mapped(this::lines)).toList())
                .original(piece.original().map(this::outline));
        return copy.build();
    }

    /** What is put behind the ids of a copy for a side. */
    public static String ending(Side side) {
        return "-" + side.name().toLowerCase(Locale.ROOT);
    }

    /** An id for a copy: letters, digits and hyphens, whatever the first one is made of. */
    public static String id(String of, String ending) {
        return of.replaceAll("[\\s#]+", "-") + ending;
    }

    private List<Segment> lines(List<Segment> segments) {
        return segments.stream().map(line).toList();
    }

    private Outline outline(Outline outline) {
        return new Outline(lines(outline.segments()));
    }

    private LevelMark level(LevelMark mark) {
        return mark.placed(
                mark.through().map(place),
                mark.along(),
                mirrored ? 0 - mark.turn() : mark.turn(),
                mark.reference().map(place));
    }
}
