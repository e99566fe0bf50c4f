package easewright.svg;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What of a drawing has to change so that it draws a pattern.
 *
 * @param geometry new segments by number of shape and of sub-path
 * @param used     numbers of the shapes that marks refer to
 * @param copies   lines to be drawn anew, by their ids
 * @param pieces   name of the piece to which a shape belongs, by number of shape
 */
record Targets(
        Map<Integer, Map<Integer, List<Segment>>> geometry,
        Set<Integer> used,
        Map<Integer, String> pieces,
        Map<String, DrawnCopy> copies) {
    /** Far less than anybody could mean, and more than reckoning loses on a drawing of many metres, mm. */
    private static final double BITS = 1e-9;

    /**
     * @throws SvgProblem {@code piece-not-drawn}, {@code joined-not-writable} or {@code rider-not-writable}
     */
    static Targets of(Drawing drawing, DrawnGeometry drawn, Pattern pattern) throws SvgProblem {
        Targets targets = new Targets(new TreeMap<>(), new TreeSet<>(), new TreeMap<>(), DrawnCopy.in(drawn, pattern));
        for (Piece piece : pattern.pieces()) {
            Optional<DrawnGeometry.Part> whole = drawn.piece(piece.id());
            if (whole.isPresent()) {
                targets.add(drawing, whole.get(), List.of(piece.outline().segments()), piece.name());
            } else if (drawn.open(piece.id()).isPresent()) {
                targets.addClosing(drawing, drawn, piece);
            } else if (!targets.copies().containsKey(piece.id())) {
                targets.addJoined(drawing, drawn, piece);
            }
            for (Rider rider : piece.riders()) {
                if (targets.copies().containsKey(rider.id())) {
                    continue;
                }
                DrawnGeometry.Part line = drawn.rider(rider.id())
                        .orElseThrow(() ->
                                new SvgProblem("piece-not-drawn", Map.of("piece", piece.name(), "id", rider.id())));
                List<List<Segment>> strokes = strokes(drawing, line, rider.segments());
                if (strokes.size() != line.subPaths().size()) {
                    throw new SvgProblem("rider-not-writable", Map.of("piece", piece.name(), "id", rider.id()));
                }
                targets.add(drawing, line, strokes, piece.name());
            }
        }
        for (String id : pattern.noPieces()) {
            drawn.piece(id).ifPresent(part -> targets.named(drawing, part.shape()));
            drawn.joined(id).ifPresent(lines -> lines.parts().forEach(p -> targets.named(drawing, p.shape())));
        }
        return targets;
    }

    /** A shape gets an id, if it can be written, by which it is known when it is read again. */
    private void named(Drawing drawing, int shape) {
        if (drawing.all().get(shape).editable()) {
            used.add(shape);
        }
    }

    /** A line that was left open gets its last line too, and is begun where it began. */
    private void addClosing(Drawing drawing, DrawnGeometry drawn, Piece piece) {
        List<Segment> old = drawn.closing(piece.id()).orElseThrow().segments();
        List<Segment> now = Alignment.of(old, piece.outline().segments(), true).changed();
        add(drawing, drawn.open(piece.id()).orElseThrow(), List.of(now), piece.name());
    }

    /** An outline drawn as several lines gives each of them its own part of the change. */
    private void addJoined(Drawing drawing, DrawnGeometry drawn, Piece piece) throws SvgProblem {
        Map<String, Object> values = Map.of("piece", piece.name(), "id", piece.id());
        JoinedOutline joined = drawn.joined(piece.id()).orElseThrow(() -> new SvgProblem("piece-not-drawn", values));
        List<List<Segment>> dealt = DealtOutline.of(joined, piece.outline().segments(), drawing.all())
                .orElseThrow(() -> new SvgProblem("joined-not-writable", values));
        for (int i = 0; i < dealt.size(); i++) {
            JoinedOutline.Part part = joined.parts().get(i);
            add(
                    drawing,
                    new DrawnGeometry.Part(part.shape(), List.of(part.subPath())),
                    List.of(dealt.get(i)),
                    piece.name());
        }
    }

    private void add(Drawing drawing, DrawnGeometry.Part part, List<List<Segment>> strokes, String piece) {
        DrawnShape shape = drawing.all().get(part.shape());
        used.add(part.shape());
        pieces.putIfAbsent(part.shape(), piece);
        for (int i = 0; i < strokes.size(); i++) {
            int k = part.subPaths().get(i);
            // A segment without extent draws nothing and would not be there on the next reading.
            List<Segment> wanted =
                    strokes.get(i).stream().filter(Segment::hasLength).toList();
            if (!isDrawn(shape.subPaths().get(k).segments(), wanted)) {
                geometry.computeIfAbsent(part.shape(), s -> new TreeMap<>()).put(k, wanted);
            }
        }
    }

    /** Whether a line is where it is drawn already; multiplying by a scale and back may have moved its last bits. */
    private static boolean isDrawn(List<Segment> drawn, List<Segment> wanted) {
        boolean same = drawn.size() == wanted.size();
        for (int i = 0; same && i < drawn.size(); i++) {
            same = isDrawn(drawn.get(i), wanted.get(i));
        }
        return same;
    }

    private static boolean isDrawn(Segment drawn, Segment wanted) {
        if (drawn.equals(wanted)) {
            return true;
        }
        boolean ends =
                drawn.start().distance(wanted.start()) < BITS && drawn.end().distance(wanted.end()) < BITS;
        if (drawn instanceof Cubic a && wanted instanceof Cubic b) {
            return ends
                    && a.control1().distance(b.control1()) < BITS
                    && a.control2().distance(b.control2()) < BITS;
        }
        return ends && drawn instanceof Line && wanted instanceof Line;
    }

    /** A rider's segments, dealt out to its sub-paths: as before if they are as many, else where they do not join. */
    private static List<List<Segment>> strokes(Drawing drawing, DrawnGeometry.Part line, List<Segment> segments) {
        List<SubPath> old = line.subPaths().stream()
                .map(k -> drawing.all().get(line.shape()).subPaths().get(k))
                .toList();
        List<List<Segment>> strokes = new ArrayList<>();
        if (old.stream().mapToInt(s -> s.segments().size()).sum() == segments.size()) {
            int at = 0;
            for (SubPath one : old) {
                strokes.add(segments.subList(at, at + one.segments().size()));
                at += one.segments().size();
            }
            return strokes;
        }
        return joined(segments);
    }

    /** Runs of segments that join, in order. */
    static List<List<Segment>> joined(List<Segment> segments) {
        List<List<Segment>> strokes = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= segments.size(); i++) {
            if (i == segments.size()
                    || !segments.get(i - 1).end().equals(segments.get(i).start())) {
                strokes.add(segments.subList(from, i));
                from = i;
            }
        }
        return strokes;
    }
}
