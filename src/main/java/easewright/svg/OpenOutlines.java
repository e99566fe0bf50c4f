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

    /**
     * @param id by which a piece can refer to the line
     */
    private record Candidate(DrawnShape shape, String id, SubPath line, Area closed, double gap) {}

    private OpenOutlines() {}

    static void tell(
            List<DrawnShape> shapes, List<JoinedOutline> joined, List<Writings.Writing> writings, Notes notes) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < shapes.size() && candidates.size() < MOST; i++) {
            DrawnShape shape = shapes.get(i);
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                candidate(shape, i, k, candidates);
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
            if (outer.stream().noneMatch(area -> area.holds(candidate.line()) || area.holdsMost(candidate.line()))) {
                outer.add(candidate.closed());
                notes.add(Finding.of("outline-open", Severity.FAULT, name(candidate, writings))
                        .with("gap", candidate.gap())
                        .with("id", candidate.id()));
            }
        }
    }

    /** What the file calls it, else the first words inside, as where an outline closes. */
    private static String name(Candidate candidate, List<Writings.Writing> writings) {
        if (!candidate.shape().label().isEmpty()) {
            return candidate.shape().label();
        }
        return writings.stream()
                .filter(writing -> candidate.closed().contains(writing.at()))
                .findFirst()
                .map(Writings.Writing::text)
                .orElseGet(() -> ShapeNames.readable(candidate.shape().id()));
    }

    private static void candidate(DrawnShape shape, int index, int subPath, List<Candidate> candidates) {
        SubPath line = shape.subPaths().get(subPath);
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
        Area closed = Area.of(closed(line), index, subPath);
        if (closed.area() >= BarePattern.LEAST_AREA) {
            String id = shape.subPaths().size() == 1 ? shape.id() : shape.id() + "#" + subPath;
            candidates.add(new Candidate(shape, id, line, closed, gap));
        }
    }

    /** The line with a straight one from its end back to its start. */
    static Outline closed(SubPath open) {
        List<Segment> joined = new ArrayList<>(open.segments());
        joined.add(new Line(joined.get(joined.size() - 1).end(), joined.get(0).start()));
        return new Outline(joined);
    }
}
