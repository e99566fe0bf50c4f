package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Path data taken apart.
 *
 * @param brokenAt where the data stops making sense; the commands are those before it
 */
public record ParsedPath(List<Command> commands, OptionalInt brokenAt) {
    /** A gap that {@code Z} would bridge with a line shorter than this is rounding, not a line, mm. */
    static final double ROUNDING = 1e-6;

    public ParsedPath {
        commands = List.copyOf(commands);
    }

    /**
     * A sub-path with, for each segment, the index of the command that drew it.
     *
     * @param path mm
     */
    public record Stroke(SubPath path, List<Integer> commands) {
        public Stroke {
            commands = List.copyOf(commands);
        }
    }

    /**
     * The sub-paths in mm. Segments that have no extent are left out; a closing line shorter than 1e-6 mm is taken
     * up by the segment before it.
     *
     * @throws IllegalArgumentException if a place is too far away for a number to hold
     */
    public List<Stroke> strokes(Affine toMm) {
        StrokeMaker maker = new StrokeMaker(toMm);
        for (Command c : commands) {
            maker.take(c.letter(), c.from(), c.to(), c.start(), c.end(), c.segments(), c.subPath());
        }
        List<SubPath> paths = maker.paths();
        List<Stroke> strokes = new ArrayList<>(paths.size());
        for (int i = 0; i < paths.size(); i++) {
            strokes.add(new Stroke(paths.get(i), maker.owners(i)));
        }
        return strokes;
    }

    /** The segment led to another end very near its own. */
    static Segment ending(Segment segment, Point end) {
        if (segment instanceof Cubic cubic) {
            return new Cubic(cubic.start(), cubic.control1(), cubic.control2(), end);
        }
        return new Line(segment.start(), end);
    }
}
