package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;

/**
 * By how much a line beside a changed piece misses its allowance. It is held against the line as it should be, so that
 * corners, folds and hems are judged like the rest; the legs of darts have no allowance. Where the outline is as it was
 * drawn, so should the line beside it be.
 */
final class BesideOff {
    /** How often an edge is looked at. */
    private static final int LOOKS = 33;

    private final Piece piece;
    private final Outline beside;
    private final Optional<Outline> drawn;
    private final Optional<Outline> wanted;

    /**
     * @param piece one that was changed
     * @param line  the line beside its outline
     */
    BesideOff(Piece piece, Rider line) {
        this.piece = piece;
        this.beside = new Outline(line.segments());
        this.drawn = line.original()
                .filter(was -> !was.equals(line.segments()))
                .filter(CutTruer::isClosed)
                .map(Outline::new);
        this.wanted = CutTruer.around(piece, beside);
    }

    /** Whether the line may lie elsewhere than it was drawn where the outline does not. */
    boolean isRedrawn() {
        return drawn.isPresent();
    }

    /**
     * How much it is at most, mm: along what was changed, and along what is as it was drawn, the line beside it as well.
     *
     * @param at where it is most along what was changed
     */
    record Off(double changed, double asDrawn, Point at) {
        static final Off NONE = new Off(0, 0, Point.ORIGIN);
    }

    Off along(Edge edge) {
        Curve run = edge.on(piece.outline());
        Outline original = piece.original().orElseThrow();
        Off most = Off.NONE;
        double length = run.length();
        for (int i = 0; i < LOOKS; i++) {
            Point p = run.pointAtLength(length * (i + 0.5) / LOOKS);
            double off = off(p);
            if (off > Math.min(most.changed(), most.asDrawn())) {
                Segment here = run.segments().get(run.nearest(p).place().segment());
                if (isOnLeg(here)) {
                    continue;
                }
                double moved = moved(original, p);
                if (isAsDrawn(original, here, p) && Math.min(off, moved) <= Truing.ALLOWANCE_WITHIN) {
                    most = new Off(most.changed(), Math.max(most.asDrawn(), off), most.at());
                } else if (off > most.changed()) {
                    most = new Off(off, most.asDrawn(), p);
                }
            }
        }
        return most;
    }

    private double off(Point p) {
        double wide = beside.nearest(p).distance();
        return wanted.map(line -> Math.abs(wide - line.nearest(p).distance())).orElse(0.0);
    }

    /** By how much the distance of the line there is another one than in the drawing, where the outline is as it was, mm. */
    private double moved(Outline original, Point p) {
        return original.nearest(p).distance() > Likeness.CLOSE
                ? 0
                : drawn.map(line -> Math.abs(
                                beside.nearest(p).distance() - line.nearest(p).distance()))
                        .orElse(0.0);
    }

    private boolean isOnLeg(Segment here) {
        return piece.darts().stream().anyMatch(d -> d.otherPoint().isEmpty() && Redraw.isLeg(d, here));
    }

    /** Whether the outline lies there where it was drawn, or goes along whole with a part of the piece. */
    private static boolean isAsDrawn(Outline original, Segment here, Point p) {
        if (original.nearest(p).distance() <= Likeness.CLOSE) {
            return true;
        }
        return here instanceof Cubic now
                && original.segments().stream().anyMatch(s -> s instanceof Cubic was && isCongruent(was, now));
    }

    /** Whether one curve is the other, moved, turned or mirrored. */
    private static boolean isCongruent(Cubic was, Cubic now) {
        List<Point> one = List.of(was.start(), was.control1(), was.control2(), was.end());
        List<Point> two = List.of(now.start(), now.control1(), now.control2(), now.end());
        for (int i = 0; i < one.size(); i++) {
            for (int k = i + 1; k < one.size(); k++) {
                double apart = one.get(i).distance(one.get(k)) - two.get(i).distance(two.get(k));
                if (Math.abs(apart) > Likeness.CLOSE) {
                    return false;
                }
            }
        }
        return true;
    }
}
