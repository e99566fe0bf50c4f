package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.geom.Point;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A seam being pulled: turns the way the hand has gone along the level into a change of the finished girth.
 *
 * @param from    where the hand took hold, mm
 * @param outward unit direction that makes the piece wider
 * @param sewn    by how much the girth grows when every seam that takes part moves out by 1
 * @param before  the amount wanted when the hand took hold, mm
 */
public record Pulling(Point from, Point outward, int sewn, double before) {
    /** As near to the wish as this the seam is drawn to it, pixels. */
    private static final double NEAR = 3;

    public static Pulling begin(Hold hold, List<Hold> holds, Wanted wanted, Point at) {
        List<Hold> taking =
                holds.stream().filter(h -> !wanted.leftOut().contains(h.edge())).toList();
        return new Pulling(at, hold.outward(), Math.max(1, Hold.sewn(taking)), wanted.amount());
    }

    /** The change of the girth that puts the seam under the hand, mm. */
    public double amount(Point hand) {
        return before + hand.minus(from).dot(outward) * sewn;
    }

    /**
     * The amount drawn to the wish if near, or else the nearest round one. From afar a hand that moves by one pixel
     * changes the girth by millimetres; so the amounts are as round as the pixels are coarse, and none is passed over.
     *
     * @param pixel what one pixel is at the seam, mm
     */
    public double snapped(double amount, double pixel, LengthUnit unit, OptionalDouble wish) {
        double perPixel = pixel * sewn;
        if (wish.isPresent() && Math.abs(amount - wish.getAsDouble()) <= NEAR * perPixel) {
            return wish.getAsDouble();
        }
        return RoundAmounts.nearest(amount, RoundAmounts.step(perPixel, unit));
    }

    /** What is missing to the wish at the level at work, before the trial; empty where it is met already. */
    public static OptionalDouble missing(Desk desk) {
        Optional<EaseLine> line = desk.wanted().flatMap(w -> HereWords.line(desk.reading(), w));
        OptionalDouble missing = line.map(EaseLine::missing).orElse(OptionalDouble.empty());
        return missing.isPresent() && Math.abs(missing.getAsDouble()) <= EaseRow.MET_WITHIN
                ? OptionalDouble.empty()
                : missing;
    }
}
