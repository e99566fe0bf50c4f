package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * Between what the allowance along an edge varies where both its lines are drawn, as they do by hand: one figure is
 * suggested for it, and who sews it by that is to know.
 *
 * @param edge  the name of the edge
 * @param least mm
 * @param most  mm
 */
public record AllowanceSpread(String edge, double least, double most) {
    /** Within this both lines are told to be evenly apart, mm: a millimetre either way, common practice. */
    static final double EVEN = 2;

    /** Places are looked at this near to each other, mm. */
    private static final double STEP = 5;

    /** This many allowances from an end, and from a dart, the corner of the other line tells nothing of the edge. */
    private static final double CLEAR = 1.5;

    /** How much the distance varies, mm. */
    double width() {
        return most - least;
    }

    /**
     * Empty where the lines run evenly, or are too short to tell, or only one is drawn.
     *
     * @param run       the edge as it is sewn
     * @param allowance on most of it, mm
     * @param darts     of the piece
     */
    static Optional<AllowanceSpread> along(String edge, Piece piece, Curve run, double allowance, List<Dart> darts) {
        Optional<Outline> other = RunsOfPiece.otherLine(piece);
        double length = run.length();
        double clear = CLEAR * allowance;
        if (other.isEmpty() || length < 2 * clear + 2 * STEP) {
            return Optional.empty();
        }
        DoubleSummaryStatistics away = new DoubleSummaryStatistics();
        for (double at = clear; at <= length - clear; at += STEP) {
            Point place = run.pointAtLength(at);
            if (darts.stream().noneMatch(d -> isBeside(d, place, clear))) {
                away.accept(other.get().nearest(place).distance());
            }
        }
        AllowanceSpread spread =
                new AllowanceSpread(edge, Rounding.meant(away.getMin()), Rounding.meant(away.getMax()));
        return away.getCount() > 1 && spread.width() > EVEN ? Optional.of(spread) : Optional.empty();
    }

    /** The cutting line may go round what is folded there. */
    private static boolean isBeside(Dart dart, Point place, double clear) {
        Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
        return place.distance(middle) < dart.mouth1().distance(dart.mouth2()) / 2 + clear;
    }
}
