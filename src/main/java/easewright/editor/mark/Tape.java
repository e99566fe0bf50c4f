package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a tape shows between two places: the straight way, and where both lie on one outline the way along it. */
public final class Tape {
    private static final double ON_LINE = 0.01;

    private Tape() {}

    /** The shorter way along the outline on which both ends lie, if there is one. */
    static Optional<List<Segment>> along(Pattern pattern, Line line) {
        for (Piece piece : pattern.pieces()) {
            Outline outline = piece.outline();
            var from = outline.nearest(line.start());
            var to = outline.nearest(line.end());
            if (from.distance() <= ON_LINE
                    && to.distance() <= ON_LINE
                    && !from.place().equals(to.place())) {
                return Optional.of(shorter(outline, from.place(), to.place()).segments());
            }
        }
        return Optional.empty();
    }

    private static Curve shorter(Outline outline, Place from, Place to) {
        Curve there = outline.run(from, to);
        Curve back = outline.run(to, from);
        return there.length() <= back.length() ? there : back;
    }

    /** Both lengths in words; one where they are the same. */
    public static String words(Desk desk, Line line) {
        double straight = line.length();
        double along = along(desk.pattern(), line)
                .map(run -> run.stream().mapToDouble(Segment::length).sum())
                .orElse(straight);
        return along - straight < 0.05
                ? desk.words().length(straight)
                : desk.words().of("editor.tape.both", Map.of("straight", straight, "along", along));
    }
}
