package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Box;
import java.util.ArrayList;
import java.util.List;

/** Lays drafted pieces side by side on the sheet. */
final class Layout {
    static final double MARGIN = 40;
    static final double HEAD = 80;
    private static final double GAP = 45;

    private final List<PieceDraft.Face> faces = new ArrayList<>();
    private double x = MARGIN;
    private double bottom;

    /**
     * Adds a piece to the right of those before it.
     *
     * @param mirrored whether its centre line comes to lie on the right
     * @param top      y on the sheet of the piece's own y = 0
     */
    Layout add(PieceDraft piece, boolean mirrored, double top) {
        Box box = piece.box();
        double left = mirrored ? -box.maxX() : box.minX();
        Affine map = new Affine(mirrored ? -1 : 1, 0, 0, 1, x - left, top);
        faces.add(piece.laid(map));
        x += box.width() + GAP;
        bottom = Math.max(bottom, top + box.maxY());
        return this;
    }

    /** Adds a piece below everything laid so far, at the left margin. */
    Layout addBelow(PieceDraft piece) {
        Box box = piece.box();
        Affine map = Affine.translation(MARGIN - box.minX(), bottom + GAP - box.minY());
        faces.add(piece.laid(map));
        bottom += GAP + box.height();
        return this;
    }

    List<PieceDraft.Face> faces() {
        return List.copyOf(faces);
    }
}
