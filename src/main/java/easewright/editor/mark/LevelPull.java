package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.Span;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.Optional;

/** The hand that moves a straight level along the grain of one piece. */
record LevelPull(String piece, String level) {
    /** The level whose line lies under the hand. */
    static Optional<LevelPull> at(Desk desk, Point at, double reach) {
        LevelPull best = null;
        double distance = reach;
        for (Girth girth : desk.reading().measures().inEverySize().girths()) {
            for (LevelWidth part : girth.parts()) {
                boolean straight = desk.pattern()
                        .piece(part.pieceId())
                        .flatMap(p -> p.level(girth.level().name()))
                        .flatMap(m -> m.through())
                        .isPresent();
                for (Span span : part.spans()) {
                    Line line = new Line(span.from(), span.to());
                    double away = line.at(line.nearest(at)).distance(at);
                    if (straight && away <= distance) {
                        distance = away;
                        best = new LevelPull(part.pieceId(), girth.level().name());
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The pattern with the level at the height of the hand, or of a corner or notch beside it. */
    Pattern to(Pattern pattern, Snaps snaps, Point at, double reach) {
        Piece on = EdgeEdits.piece(pattern, piece);
        Point down = on.downGrain();
        double height = snaps.atHeight(on, at, reach).map(Snap::at).orElse(at).dot(down);
        Point through = on.level(level).flatMap(m -> m.through()).orElse(at);
        return LevelEdits.place(pattern, piece, level, through.plus(down.times(height - through.dot(down))));
    }
}
