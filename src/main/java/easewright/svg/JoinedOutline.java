package easewright.svg;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A closed outline that is drawn as several loose lines, end to end.
 *
 * @param parts in the order in which the outline passes them
 * @param label what a text inside it calls it; may be empty
 * @param gap   the widest gap between two ends that was closed, mm
 * @param doubled how many of the lines are drawn once more in the same place
 */
public record JoinedOutline(List<Part> parts, Outline outline, String label, double gap, int doubled) {
    /** Ends this near may be joined, mm: about the width of a pen line. */
    public static final double TOLERANCE = 0.25;

    public JoinedOutline {
        parts = List.copyOf(parts);
    }

    /**
     * One loose line.
     *
     * @param shape    number of the shape in the drawing
     * @param subPath  number of the sub-path in the shape
     * @param reversed whether the outline passes it against the direction in which it is drawn
     * @param from     number of its first segment in the outline
     * @param to       just after its last one
     */
    public record Part(int shape, int subPath, boolean reversed, int from, int to) {}

    JoinedOutline withDoubled(int lines) {
        return new JoinedOutline(parts, outline, label, gap, lines);
    }

    JoinedOutline withLabel(String other) {
        return new JoinedOutline(parts, outline, other, gap, doubled);
    }

    /**
     * Joins lines in the order given, each turned so that it begins where the one before it ends. The end of each is
     * led to the start of the next.
     *
     * @param lines numbers of shape and sub-path
     * @return empty if some end lies too far from the next start, or a line would lose its extent
     */
    static Optional<JoinedOutline> of(List<DrawnShape> shapes, List<int[]> lines) {
        int n = lines.size();
        List<List<Segment>> runs = new ArrayList<>();
        boolean[] reversed = new boolean[n];
        for (int i = 0; i < n; i++) {
            List<Segment> own = segments(shapes, lines.get(i));
            if (i == 0) {
                List<Segment> next = segments(shapes, lines.get(1 % n));
                reversed[0] = fromEnds(end(own), next) > fromEnds(start(own), next) + TOLERANCE;
            } else {
                Point before = end(runs.get(i - 1));
                reversed[i] = end(own).distance(before) < start(own).distance(before);
            }
            runs.add(reversed[i] ? reversed(own) : own);
        }
        double widest = 0;
        List<Segment> all = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Segment> run = new ArrayList<>(runs.get(i));
            Point next = start(runs.get((i + 1) % n));
            double gap = end(run).distance(next);
            Segment led = ParsedPath.ending(run.get(run.size() - 1), next);
            if (gap > TOLERANCE || !led.hasLength()) {
                return Optional.empty();
            }
            widest = Math.max(widest, gap);
            if (gap > 0) {
                run.set(run.size() - 1, led);
            }
            parts.add(new Part(lines.get(i)[0], lines.get(i)[1], reversed[i], all.size(), all.size() + run.size()));
            all.addAll(run);
        }
        return Optional.of(new JoinedOutline(parts, new Outline(all), "", widest, 0));
    }

    private static double fromEnds(Point p, List<Segment> line) {
        return Math.min(p.distance(start(line)), p.distance(end(line)));
    }

    private static List<Segment> segments(List<DrawnShape> shapes, int[] line) {
        return shapes.get(line[0]).subPaths().get(line[1]).segments();
    }

    private static Point start(List<Segment> line) {
        return line.get(0).start();
    }

    private static Point end(List<Segment> line) {
        return line.get(line.size() - 1).end();
    }

    static List<Segment> reversed(List<Segment> line) {
        List<Segment> back = new ArrayList<>(line.size());
        for (Segment segment : line) {
            back.add(segment.reversed());
        }
        Collections.reverse(back);
        return back;
    }

    /** By what marks refer to it: the ids of its lines in order. */
    String ref(List<DrawnShape> shapes) {
        List<String> ids = new ArrayList<>();
        for (Part part : parts) {
            DrawnShape shape = shapes.get(part.shape());
            ids.add(shape.subPaths().size() == 1 ? shape.id() : shape.id() + "#" + part.subPath());
        }
        return String.join(" ", ids);
    }
}
