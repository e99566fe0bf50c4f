package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import java.util.List;

/**
 * A piece slashed from edge to edge along a straight line, and the part beyond the line shifted.
 *
 * @param piece the changed piece
 */
record Slashed(Piece piece, List<Finding> findings) {
    /**
     * @param one    a place of the line where it meets the outline
     * @param other  the place where it leaves it
     * @param away   unit direction in which the part beyond shifts; it also tells which part that is
     * @param amount mm; below 0 folds a strip away
     */
    static Slashed of(Piece piece, Point one, Point other, Point away, double amount, boolean acceptProtected)
            throws Refusal {
        Outline outline = piece.outline();
        Point line = other.minus(one);
        if (line.norm() < 1 || Math.abs(line.unit().cross(away)) < 0.1) {
            throw Refusal.of("slash-without-length").with("piece", piece.name());
        }
        Place first = SlashPlaces.meeting(piece, one, line, one);
        Place second = SlashPlaces.meeting(piece, one, line, other);
        if (first.equals(second)) {
            throw Refusal.of("slash-without-length").with("piece", piece.name());
        }
        SlashPlaces.requireMayOpen(piece, first, away, acceptProtected);
        SlashPlaces.requireMayOpen(piece, second, away, acceptProtected);
        Parting parting = beyond(outline, first, second, away);
        Parting cut = amount > 0 ? parting : folded(piece, parting, one, line, away.times(-amount));
        Affine map = Affine.translation(away.times(amount));
        PartMove move = new PartMove(piece, parting, map);
        Outline joined = cut.joined(map, outline.segments().get(0));
        if (!Simple.stays(outline, joined)) {
            throw Refusal.of("outline-crosses-itself").with("piece", piece.name());
        }
        return new Slashed(move.done(joined), move.findings());
    }

    /** The unit direction square to the grain that leads from a line to a place beside it. */
    static Point away(Piece piece, Point one, Point other, Point beyond) {
        Point across = piece.grainDirection().quarterTurned();
        Point line = other.minus(one);
        boolean sameSide = Math.signum(line.cross(beyond.minus(one))) == Math.signum(line.cross(across));
        return sameSide ? across : across.times(-1);
    }

    /** Of the two parts, the one that lies away from the line. */
    private static Parting beyond(Outline outline, Place first, Place second, Point away) {
        Parting parting = Parting.of(outline, first, second);
        Point from = outline.point(first);
        Point to = outline.point(second);
        // Walking from the first to the second place along a clockwise run, its cloth lies right of the way back.
        Point backInside = to.minus(from).quarterTurned().times(outline.signedArea() > 0 ? -1 : 1);
        return backInside.dot(away) > 0 ? parting : Parting.of(outline, second, first);
    }

    private static Parting folded(Piece piece, Parting parting, Point one, Point line, Point strip) throws Refusal {
        Point second = one.plus(strip);
        SlashPlaces.Trimmed start = SlashPlaces.trimStart(parting.moves(), second, line);
        SlashPlaces.Trimmed both = SlashPlaces.trimEnd(start.left(), second, line);
        PartMove.requireNothingTaken(piece, start.taken());
        PartMove.requireNothingTaken(piece, both.taken());
        return new Parting(parting.stays(), both.left());
    }
}
