package easewright.editor.model;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.measure.MovedRuns;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Lines of the drawing that lie elsewhere since pieces were changed: a cutting line as it was, beside the one as it is and
 * drawn alike, would be taken for it. Remembers the lines of the file it was last asked about.
 */
public final class DrawnBefore {
    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    private SvgFile file;
    private double scale;
    private Map<String, List<Segment>> drawn = Map.of();

    /** Ids of the drawn lines that a pattern of the file has elsewhere. */
    public Set<String> moved(SvgFile svg, Pattern pattern) {
        Set<String> ids = new HashSet<>();
        if (pattern.changes().isEmpty()) {
            return ids;
        }
        Map<String, List<Segment>> lines = lines(svg, pattern);
        for (Piece piece : pattern.pieces()) {
            if (piece.original().isPresent()
                    && isElsewhere(lines.get(piece.id()), piece.outline().segments())) {
                ids.add(piece.id());
            }
            for (Rider rider : piece.riders()) {
                if (isElsewhere(lines.get(rider.id()), rider.segments())) {
                    ids.add(rider.id());
                }
            }
        }
        return ids;
    }

    /**
     * The lines around a piece on the desk as they were drawn, where they lie elsewhere now: before all changes, as its
     * outline is shown, also where the file was saved after some of them.
     */
    List<Rider> around(Desk desk, Piece piece) {
        if (desk.file().isEmpty() || desk.pattern().changes().isEmpty()) {
            return List.of();
        }
        Map<String, List<Segment>> lines = lines(desk.file().get().svg(), desk.pattern());
        return around(piece)
                .map(r -> r.withSegments(r.original().orElse(lines.getOrDefault(r.id(), r.segments()))))
                .filter(was -> isElsewhere(was.segments(), now(piece, was)))
                .toList();
    }

    private static List<Segment> now(Piece piece, Rider line) {
        return piece.riders().stream()
                .filter(r -> r.id().equals(line.id()))
                .findFirst()
                .orElseThrow()
                .segments();
    }

    /** The same where the piece is known as it was. */
    static List<Rider> around(Piece before, Piece piece) {
        return around(before).filter(r -> !piece.riders().contains(r)).toList();
    }

    private static Stream<Rider> around(Piece piece) {
        return piece.riders().stream().filter(r -> r.kind() == Rider.Kind.PARALLEL);
    }

    /** Lines of the drawing by their ids, at the scale of the pattern. */
    private Map<String, List<Segment>> lines(SvgFile svg, Pattern pattern) {
        double grown = pattern.scale().mmPerUnitX() / svg.drawing().scale().mmPerUnitX();
        if (file != svg || scale != grown) {
            file = svg;
            scale = grown;
            drawn = new HashMap<>();
            for (Piece piece : svg.pattern().pieces()) {
                put(piece.id(), piece.outline().segments());
                piece.riders().forEach(r -> put(r.id(), r.segments()));
            }
            svg.loose(svg.pattern()).forEach(r -> put(r.id(), r.segments()));
        }
        return drawn;
    }

    private void put(String id, List<Segment> segments) {
        Affine map = Affine.scaling(scale, scale);
        drawn.put(
                id,
                scale == 1
                        ? segments
                        : segments.stream().map(s -> s.transformed(map)).toList());
    }

    private static boolean isElsewhere(List<Segment> was, List<Segment> is) {
        if (was == null || was.equals(is)) {
            return false;
        }
        return isClosed(was) && isClosed(is)
                ? !MovedRuns.between(new Outline(was), new Outline(is), SEEN).isEmpty()
                : !isAlike(was, is);
    }

    private static boolean isClosed(List<Segment> segments) {
        for (int i = 0; i < segments.size(); i++) {
            Segment next = segments.get((i + 1) % segments.size());
            if (!segments.get(i).end().equals(next.start())) {
                return false;
            }
        }
        return segments.size() > 1;
    }

    /** Whether open lines have the same places, drawn in as many parts. */
    private static boolean isAlike(List<Segment> was, List<Segment> is) {
        boolean alike = was.size() == is.size();
        for (int i = 0; alike && i < was.size(); i++) {
            for (double t : List.of(0.0, 0.5, 1.0)) {
                alike &= was.get(i).at(t).distance(is.get(i).at(t)) <= SEEN;
            }
        }
        return alike;
    }
}
