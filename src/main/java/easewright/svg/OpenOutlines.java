package easewright.svg;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Tells of lines that look like the outline of a piece whose closing was forgotten: they come back near to where they
 * began, would hold a piece's area, and do not lie inside another piece, as the legs of a dart do.
 */
final class OpenOutlines {
    /** Largest gap, as a part of the line's length, that looks forgotten. */
    private static final double FORGOTTEN = 0.1;

    /** More such lines than this are some other kind of drawing. */
    private static final int MOST = 500;

    private record Candidate(DrawnShape shape, SubPath line, Area closed, double gap) {}

    private OpenOutlines() {}

    static void tell(List<DrawnShape> shapes, List<JoinedOutline> joined, Notes notes) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < shapes.size() && candidates.size() < MOST; i++) {
            for (SubPath line : shapes.get(i).shown() ? shapes.get(i).subPaths() : List.<SubPath>of()) {
                candidate(shapes.get(i), i, line, candidates);
            }
        }
        if (candidates.isEmpty()) {
            return;
        }
        candidates.sort(
                Comparator.comparingDouble((Candidate c) -> c.closed().area()).reversed());
        List<Area> outer = new ArrayList<>(IntStream.range(0, shapes.size())
                .filter(i -> shapes.get(i).shown())
                .mapToObj(i -> Area.ofPieces(shapes.get(i), i))
                .flatMap(List::stream)
                .limit(MOST)
                .toList());
        joined.forEach(outline -> outer.add(Area.of(outline.outline(), -1, 0)));
        for (Candidate candidate : candidates) {
            if (outer.stream().noneMatch(area -> area.holds(candidate.line()))) {
                outer.add(candidate.closed());
                String name = candidate.shape().label().isEmpty()
                        ? ShapeNames.readable(candidate.shape().id())
                        : candidate.shape().label();
                notes.add(Finding.of("outline-open", Severity.FAULT, name).with("gap", candidate.gap()));
            }
        }
    }

    private static void candidate(DrawnShape shape, int index, SubPath line, List<Candidate> candidates) {
        List<Segment> segments = line.segments();
        if (line.closed() || segments.size() < 2) {
            return;
        }
        double length = 0;
        for (Segment segment : segments) {
            length += segment.start().distance(segment.end());
        }
        Segment last = segments.get(segments.size() - 1);
        double gap = last.end().distance(segments.get(0).start());
        if (gap > FORGOTTEN * length || gap == 0) {
            return;
        }
        List<Segment> joined = new ArrayList<>(segments);
        joined.add(new Line(last.end(), segments.get(0).start()));
        Area closed = Area.of(new Outline(joined), index, 0);
        if (closed.area() >= BarePattern.LEAST_AREA) {
            candidates.add(new Candidate(shape, line, closed, gap));
        }
    }
}
