package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.measure.PieceMeasures;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece made ready for paper.
 *
 * @param cut     where it is cut out
 * @param upright the turn that sets its grain upright
 * @param pair    where it is a left or right piece made of one for both sides
 * @param label   what is written on it
 */
record PaperPiece(
        Piece piece,
        PieceMeasures measures,
        CutLine cut,
        Affine upright,
        Optional<SidePair> pair,
        List<PieceLabel.Line> label) {
    /** A grain this near to upright, or to level, is taken as exactly so, and coordinates keep their digits, radians. */
    private static final double STRAIGHT = 1e-12;

    static Affine upright(Piece piece) {
        Point grain = piece.grainDirection();
        if (Math.abs(grain.x()) < STRAIGHT) {
            return Affine.IDENTITY;
        }
        if (Math.abs(grain.y()) < STRAIGHT) {
            return new Affine(0, 1, -1, 0, 0, 0);
        }
        // A grainline has no up or down, so it never takes more than a quarter turn.
        Point down = grain.y() < 0 ? grain.times(-1) : grain;
        return Affine.rotation(Math.atan2(down.x(), down.y()), Point.ORIGIN);
    }

    /** Its label where it lies upside down: whoever reads that stands it on its head otherwise. */
    List<PieceLabel.Line> label(boolean upsideDown, Words words) {
        List<PieceLabel.Line> lines = new ArrayList<>(label);
        if (upsideDown) {
            lines.add(Math.min(2, lines.size()), PieceLabel.Line.plain(words.of("print.label.turned")));
        }
        return lines;
    }

    /** @param turning whether it may be turned upside down */
    Cutout cutout(boolean turning) {
        List<Point> corners =
                cut.outline().corners(Cutout.STRAY).stream().map(upright::apply).toList();
        return new Cutout(
                corners, turning ? List.of(Cutout.AS_DRAWN, Cutout.UPSIDE_DOWN) : List.of(Cutout.AS_DRAWN), false);
    }
}
