package easewright.svg;

import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A line that a pattern has and the drawing has not, since it was made as the copy of a drawn one for the other side. It
 * becomes an element of its own behind that one, of the same look.
 *
 * @param shape   number of the shape that it is a copy of
 * @param strokes its geometry, mm; what ends where it starts is closed
 */
record DrawnCopy(String id, int shape, List<List<Segment>> strokes, String piece) {
    /** Attributes that make up the form, which a copy says in its own way. */
    private static final Set<String> OWN = Set.of(
            "id", "d", "points", "x", "y", "width", "height", "rx", "ry", "cx", "cy", "r", "x1", "y1", "x2", "y2");

    DrawnCopy {
        strokes = List.copyOf(strokes);
    }

    /** The copies among the lines of a pattern, by their ids. */
    static Map<String, DrawnCopy> in(DrawnGeometry drawn, Pattern pattern) {
        Map<String, Integer> bases = bases(drawn, pattern);
        Map<String, DrawnCopy> copies = new LinkedHashMap<>();
        if (bases.isEmpty()) {
            return copies;
        }
        for (Piece piece : pattern.pieces()) {
            if (drawn.outline(piece.id()).isEmpty() && bases.containsKey(piece.id())) {
                List<List<Segment>> outline = List.of(piece.outline().segments());
                copies.put(piece.id(), new DrawnCopy(piece.id(), bases.get(piece.id()), outline, piece.name()));
            }
            for (Rider rider : piece.riders()) {
                if (drawn.rider(rider.id()).isEmpty() && bases.containsKey(rider.id())) {
                    List<List<Segment>> strokes = Targets.joined(rider.segments());
                    copies.put(rider.id(), new DrawnCopy(rider.id(), bases.get(rider.id()), strokes, piece.name()));
                }
            }
        }
        return copies;
    }

    /** The shapes that copies would be copies of, by the ids of the copies; none where no piece is for one side. */
    private static Map<String, Integer> bases(DrawnGeometry drawn, Pattern pattern) {
        Map<String, Integer> bases = new LinkedHashMap<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.side() == Side.BOTH) {
                continue;
            }
            String ending = PieceCopy.ending(piece.side().other());
            shape(drawn, piece.id()).ifPresent(shape -> bases.put(PieceCopy.id(piece.id(), ending), shape));
            for (Rider rider : piece.riders()) {
                shape(drawn, rider.id()).ifPresent(shape -> bases.put(PieceCopy.id(rider.id(), ending), shape));
            }
        }
        return bases;
    }

    private static Optional<Integer> shape(DrawnGeometry drawn, String id) {
        return drawn.rider(id)
                .map(DrawnGeometry.Part::shape)
                .or(() -> drawn.joined(id).map(j -> j.parts().get(0).shape()));
    }

    static boolean closed(List<Segment> stroke) {
        return stroke.size() > 1
                && stroke.get(stroke.size() - 1).end().equals(stroke.get(0).start());
    }

    /**
     * The element as text.
     *
     * @throws ArithmeticException if the transform of the shape cannot be undone
     */
    String element(SourceText source, DrawnShape base) {
        Tag tag = source.tag(base.element());
        StringBuilder out = new StringBuilder("<" + tag.prefix() + "path id=\"" + XmlText.escape(id) + "\"");
        for (Tag.Attribute attribute : tag.attributes()) {
            String name = attribute.name().toLowerCase(Locale.ROOT);
            if (!OWN.contains(name) && !name.startsWith("sodipodi:") && !LiveForm.isOf(name)) {
                // Between its own quotes, whichever they are.
                out.append(' ').append(attribute.text(), attribute.from(), attribute.to());
            }
        }
        Landing landing = new Landing(base.toMm());
        out.append(" d=\"");
        for (int i = 0; i < strokes.size(); i++) {
            List<Segment> stroke = strokes.get(i);
            out.append(i == 0 ? "M" : " M").append(landing.pair(stroke.get(0).start()));
            for (Segment segment : stroke) {
                out.append(' ').append(landing.command(segment));
            }
            out.append(closed(stroke) ? " Z" : "");
        }
        return out.append("\"/>").toString();
    }
}
