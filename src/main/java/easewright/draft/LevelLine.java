package easewright.draft;

import easewright.geom.Crossing;
import easewright.geom.Point;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/** The stretch of a straight level that is drawn on a piece, and where its name stands: away from the centre line. */
record LevelLine(Point from, Point to, Point label, String anchor) {
    private static final double INSET = 6;

    /** Empty for a level that follows an edge: the edge itself shows it. */
    static Optional<LevelLine> of(Piece piece, LevelMark mark) {
        if (mark.through().isEmpty()) {
            return Optional.empty();
        }
        Point through = mark.through().get();
        Point across = piece.grainDirection().quarterTurned().times(-1).unit();
        Point direction = across.x() < 0 ? across.times(-1) : across;
        List<Crossing> met = piece.outline().crossings(through, direction);
        Point from = through;
        Point to = through;
        for (Crossing crossing : met) {
            if (crossing.along() <= 0) {
                from = crossing.point();
            } else {
                to = crossing.point();
                break;
            }
        }
        boolean centreRight = piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.FOLD || e.role() == EdgeRole.CENTRE || e.role() == EdgeRole.CROTCH)
                .anyMatch(e -> e.from().x() > through.x());
        return Optional.of(
                centreRight
                        ? new LevelLine(from, to, from.plus(direction.times(INSET)), "start")
                        : new LevelLine(from, to, to.minus(direction.times(INSET)), "end"));
    }
}
