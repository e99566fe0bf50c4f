package easewright.editor.mark;

import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.List;

/** Closed lines that belong to no piece, for whoever knows that one of them is a piece after all. */
public final class LoosePieces {
    /** Smallest area of a piece, mm², as where a drawing is read. */
    private static final double LEAST_AREA = 400;

    private LoosePieces() {}

    /** Those on the sheet, in the order in which they are drawn. */
    public static List<Piece> on(Sheet sheet) {
        List<Piece> found = new ArrayList<>();
        for (Rider rider : sheet.loose()) {
            if (isClosed(rider.segments())) {
                Outline outline = new Outline(rider.segments());
                if (Math.abs(outline.signedArea()) >= LEAST_AREA) {
                    found.add(Piece.bare(rider.id(), outline));
                }
            }
        }
        return found;
    }

    private static boolean isClosed(List<Segment> segments) {
        for (int i = 1; i < segments.size(); i++) {
            if (!segments.get(i - 1).end().equals(segments.get(i).start())) {
                return false;
            }
        }
        return segments.size() > 1
                && segments.get(segments.size() - 1)
                        .end()
                        .equals(segments.get(0).start());
    }

    /** The pattern with one more piece. */
    public static Pattern with(Pattern pattern, Piece piece) {
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        pieces.add(piece);
        return pattern.withPieces(pieces);
    }
}
