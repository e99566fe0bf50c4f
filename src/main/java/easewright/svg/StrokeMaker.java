package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins what commands draw to sub-paths in mm. Segments that have no extent are left out; a closing line shorter than
 * {@link ParsedPath#ROUNDING} is taken up by the segment before it.
 */
final class StrokeMaker implements PathParser.Taker {
    private final Affine toMm;
    private final boolean asWritten;
    private final List<SubPath> paths = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();

    /** For each segment of all sub-paths in turn, the command that drew it. */
    private int[] owners = new int[16];

    /** How many segments there are in the sub-paths before each. */
    private final List<Integer> begins = new ArrayList<>();

    private int count;
    private int commands;
    private boolean closed;

    /** Where the last segment ends, as written and in mm: mostly where the next one begins. */
    private Point penWritten;

    private Point pen;
    private IllegalArgumentException beyondNumbers;

    StrokeMaker(Affine toMm) {
        this.toMm = toMm;
        this.asWritten = toMm.equals(Affine.IDENTITY);
    }

    @Override
    public void take(char letter, int from, int to, Point start, Point end, List<Segment> drawn, int subPath) {
        if (beyondNumbers == null) {
            try {
                take(letter, drawn);
            } catch (IllegalArgumentException e) {
                beyondNumbers = e;
            }
        }
        commands++;
    }

    private void take(char letter, List<Segment> drawn) {
        if (letter == 'M' || letter == 'm' || closed) {
            finish();
        }
        for (int i = 0; i < drawn.size(); i++) {
            Segment inMm = asWritten ? drawn.get(i) : inMm(drawn.get(i));
            if (inMm.hasLength()) {
                segments.add(inMm);
                owners = count < owners.length ? owners : Arrays.copyOf(owners, 2 * count);
                owners[count++] = commands;
            }
        }
        closed = letter == 'Z' || letter == 'z';
    }

    private Segment inMm(Segment written) {
        Point start = written.start() == penWritten ? pen : toMm.apply(written.start());
        penWritten = written.end();
        pen = toMm.apply(penWritten);
        return written instanceof Cubic c
                ? new Cubic(start, toMm.apply(c.control1()), toMm.apply(c.control2()), pen)
                : new Line(start, pen);
    }

    /**
     * The sub-paths, when all commands have been taken.
     *
     * @throws IllegalArgumentException if a place is too far away for a number to hold
     */
    List<SubPath> paths() {
        if (beyondNumbers == null) {
            finish();
        }
        if (beyondNumbers != null) {
            throw beyondNumbers;
        }
        return paths;
    }

    /** How many commands have been taken. */
    int commands() {
        return commands;
    }

    /** For each segment of a sub-path, the command that drew it. */
    List<Integer> owners(int path) {
        List<Integer> own = new ArrayList<>();
        int from = begins.get(path);
        for (int i = from; i < from + paths.get(path).segments().size(); i++) {
            own.add(owners[i]);
        }
        return own;
    }

    private void finish() {
        if (!segments.isEmpty()) {
            int begin = count - segments.size();
            boolean meets = closed && meet();
            paths.add(new SubPath(segments, meets));
            begins.add(begin);
            segments.clear();
        }
        closed = false;
    }

    /** Makes the end meet the start exactly, and drops a closing line that is mere rounding. */
    private boolean meet() {
        Point start = segments.get(0).start();
        int last = segments.size() - 1;
        Segment closing = segments.get(last);
        if (last > 0 && closing instanceof Line && closing.start().distance(start) < ParsedPath.ROUNDING) {
            segments.remove(last);
            last--;
        }
        Segment end = segments.get(last);
        if (end.end().distance(start) >= ParsedPath.ROUNDING) {
            return false;
        }
        Segment joined = ParsedPath.ending(end, start);
        if (!joined.hasLength()) {
            return false;
        }
        segments.set(last, joined);
        return true;
    }
}
