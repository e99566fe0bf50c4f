package easewright.svg;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Elements that were drawn as {@link DrawnCopy copies} for the other side of a piece and are not wanted any more, since
 * that is one piece again. They are taken out as they were put in, so that the file is what it was before. What somebody
 * has put something into, or refers to, is left.
 *
 * @param pieces name of the piece again whole, by number of the shape that is taken out
 */
record SpareCopies(TreeMap<Integer, String> pieces) {
    /**
     * @param read    the pattern that the drawing has
     * @param changed the pattern that it shall have
     */
    static SpareCopies in(SourceText source, Drawing drawing, DrawnGeometry drawn, Pattern read, Pattern changed) {
        SpareCopies spare = new SpareCopies(new TreeMap<>());
        for (Piece copy : read.pieces()) {
            Optional<Piece> whole = whole(copy, read, changed);
            if (whole.isPresent() && changed.piece(copy.id()).isEmpty()) {
                List<String> ids = new ArrayList<>(List.of(copy.id()));
                copy.riders().stream()
                        .map(Rider::id)
                        .filter(id -> id.endsWith(PieceCopy.ending(copy.side())))
                        .forEach(ids::add);
                ids.forEach(id -> drawn.rider(id)
                        .filter(part -> isCopy(source, drawing, part, id))
                        .ifPresent(part ->
                                spare.pieces().put(part.shape(), whole.get().name())));
            }
        }
        return spare;
    }

    /** The piece of both sides that the copy and its other half have become. */
    private static Optional<Piece> whole(Piece copy, Pattern read, Pattern changed) {
        if (copy.side() == Side.BOTH) {
            return Optional.empty();
        }
        return read.pieces().stream()
                .filter(p -> p.side() == copy.side().other())
                .filter(p -> PieceCopy.id(p.id(), PieceCopy.ending(copy.side())).equals(copy.id()))
                .flatMap(p -> changed.piece(p.id()).stream())
                .filter(p -> p.side() == Side.BOTH)
                .findFirst();
    }

    private static boolean isCopy(SourceText source, Drawing drawing, DrawnGeometry.Part part, String id) {
        DrawnShape shape = drawing.all().get(part.shape());
        boolean whole = part.subPaths().size() == shape.subPaths().size();
        boolean once = drawing.all().stream()
                        .filter(s -> s.element() == shape.element())
                        .count()
                == 1;
        return whole
                && once
                && shape.editable()
                && shape.id().equals(id)
                && source.tag(shape.element()).selfClosed()
                && !source.text().contains("#" + id);
    }

    Set<Integer> shapes() {
        return new TreeSet<>(pieces.keySet());
    }

    Set<String> ids(Drawing drawing) {
        return pieces.keySet().stream().map(i -> drawing.all().get(i).id()).collect(Collectors.toSet());
    }

    boolean has(int shape) {
        return pieces.containsKey(shape);
    }

    /** Each element with the white space before it, back to the end of the line before where it has a line of its own. */
    List<Edit> edits(SourceText source, Drawing drawing) {
        List<Edit> edits = new ArrayList<>();
        for (int shape : pieces.keySet()) {
            Tag tag = source.tag(drawing.all().get(shape).element());
            int from = tag.from();
            while (from > 0 && " \t".indexOf(source.text().charAt(from - 1)) >= 0) {
                from--;
            }
            String end = source.lineEnd();
            boolean ownLine = source.text().startsWith(end, from - end.length());
            edits.add(new Edit(ownLine ? from - end.length() : tag.from(), tag.to(), ""));
        }
        return edits;
    }
}
