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
        boolean same = toMm.equals(Affine.IDENTITY);
        List<Stroke> strokes = new ArrayList<>();
        List<Segment> segments = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        boolean closed = false;
        for (int i = 0; i < commands.size(); i++) {
            Command command = commands.get(i);
            if (command.letter() == 'M' || command.letter() == 'm' || closed) {
                finish(strokes, segments, owners, closed);
                closed = false;
            }
            for (Segment segment : command.segments()) {
                Segment inMm = same ? segment : segment.transformed(toMm);
                if (hasExtent(inMm)) {
                    segments.add(inMm);
                    owners.add(i);
                }
            }
            closed = command.letter() == 'Z' || command.letter() == 'z';
        }
        finish(strokes, segments, owners, closed);
        return strokes;
    }

    private static void finish(List<Stroke> strokes, List<Segment> segments, List<Integer> owners, boolean closed) {
        if (!segments.isEmpty()) {
            boolean meets = closed && meet(segments, owners);
            strokes.add(new Stroke(new SubPath(segments, meets), owners));
        }
        segments.clear();
        owners.clear();
    }

    /** Makes the end meet the start exactly, and drops a closing line that is mere rounding. */
    private static boolean meet(List<Segment> segments, List<Integer> owners) {
        Point start = segments.get(0).start();
        int last = segments.size() - 1;
        Segment closing = segments.get(last);
        if (last > 0 && closing instanceof Line && closing.start().distance(start) < ROUNDING) {
            segments.remove(last);
            owners.remove(last);
            last--;
        }
        Segment end = segments.get(last);
        if (end.end().distance(start) >= ROUNDING) {
            return false;
        }
        Segment joined = ending(end, start);
        if (!hasExtent(joined)) {
            return false;
        }
        segments.set(last, joined);
        return true;
    }

    /** The segment led to another end very near its own. */
    static Segment ending(Segment segment, Point end) {
        if (segment instanceof Cubic cubic) {
            return new Cubic(cubic.start(), cubic.control1(), cubic.control2(), end);
        }
        return new Line(segment.start(), end);
    }

    static boolean hasExtent(Segment segment) {
        if (segment instanceof Cubic c) {
            return !(c.start().equals(c.control1())
                    && c.start().equals(c.control2())
                    && c.start().equals(c.end()));
        }
        return !segment.start().equals(segment.end());
    }
}
