package easewright.svg;

import easewright.geom.Affine;

/** What the lines of a drawing are called where one element draws several. */
public final class Strokes {
    private Strokes() {}

    /**
     * The id of the one line that is the outline of a piece: where an element draws others as well, with its number, so that
     * it can go along with another piece by itself.
     *
     * @param piece id of a piece
     * @return the same where the element draws nothing else, or there is no such element
     */
    public static String outlineOf(Drawing drawing, String piece) {
        return new DrawnGeometry(drawing, Affine.IDENTITY)
                .piece(piece)
                .map(part -> {
                    DrawnShape shape = drawing.all().get(part.shape());
                    return shape.subPaths().size() == 1
                            ? shape.id()
                            : shape.id() + "#" + part.subPaths().get(0);
                })
                .orElse(piece);
    }
}
