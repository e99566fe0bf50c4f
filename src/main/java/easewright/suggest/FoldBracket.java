package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;

/** The sign for a fold as it is drawn: a line along the fold edge whose bent ends point at it. */
public record FoldBracket(Line bar, Point end1, Point end2) {
    /** Its ends come this near to the edge, mm. */
    private static final double TOUCHES = 7;

    private static final double LONGEST_END = 40;

    static Optional<FoldBracket> on(Piece piece) {
        return piece.riders().stream().flatMap(r -> of(r, piece).stream()).findFirst();
    }

    /**
     * The drawn lines of a piece without the bracket of a fold that is marked: who draws the sign of the mark would
     * draw it twice.
     */
    public static List<Rider> without(Piece piece) {
        return piece.onFold()
                ? piece.riders().stream().filter(r -> of(r, piece).isEmpty()).toList()
                : piece.riders();
    }

    private static Optional<FoldBracket> of(Rider rider, Piece piece) {
        return Pen.of(rider).stream().flatMap(pen -> of(pen, piece).stream()).findFirst();
    }

    private static Optional<FoldBracket> of(Pen pen, Piece piece) {
        if (pen.closed() || pen.runs().size() != 3 || !pen.runs().stream().allMatch(Pen::isStraight)) {
            return Optional.empty();
        }
        List<Line> lines = pen.runs().stream().map(Pen::chord).toList();
        Line bar = lines.get(1);
        double longest = Math.max(lines.get(0).length(), lines.get(2).length());
        Point end1 = lines.get(0).start();
        Point end2 = lines.get(2).end();
        boolean shape = bar.length() >= 2 * longest
                && longest <= LONGEST_END
                && Turns.between(bar.tangent(0), lines.get(0).tangent(0)) > 40
                && Turns.between(bar.tangent(0), lines.get(2).tangent(0)) > 40
                // Both ends lie on the same side of the bar.
                && bar.tangent(0).cross(end1.minus(bar.start()))
                                * bar.tangent(0).cross(end2.minus(bar.end()))
                        > 0;
        boolean touches = shape
                && piece.outline().nearest(end1).distance() <= TOUCHES
                && piece.outline().nearest(end2).distance() <= TOUCHES;
        return touches ? Optional.of(new FoldBracket(bar, end1, end2)) : Optional.empty();
    }
}
