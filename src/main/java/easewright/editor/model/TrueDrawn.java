package easewright.editor.model;

import easewright.alter.Altered;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What putting a place right redraws: what is drawn of it on the table, and told of it in words, is the same.
 *
 * @param edges that come to lie elsewhere
 * @param lines as they would lie; for a notch the way it moves
 * @param ways  of notches, those among the lines
 */
record TrueDrawn(List<EdgeFate> edges, List<Segment> lines, List<Line> ways) {
    /** A notch that moves by less is not worth a word, mm. */
    private static final double NOTICED = 0.05;

    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    private static final List<Double> LOOKS = List.of(0.0, 0.25, 0.5, 0.75, 1.0);

    TrueDrawn {
        edges = List.copyOf(edges);
        lines = List.copyOf(lines);
        ways = List.copyOf(ways);
    }

    static TrueDrawn of(Altered altered, Pattern before) {
        List<EdgeFate> edges = EdgeFate.of(before, altered.pattern()).stream()
                .filter(f -> f.fate() != EdgeFate.Fate.STAYED)
                .toList();
        List<Segment> lines = new ArrayList<>();
        edges.forEach(f -> lines.addAll(redrawn(f, before)));
        if (edges.isEmpty()) {
            altered.moved().forEach(m -> lines.addAll(m.after().segments()));
        }
        List<Line> ways = notchWays(altered, before);
        lines.addAll(ways);
        if (lines.isEmpty()) {
            altered.pattern().pieces().forEach(now -> lines.addAll(beside(now, before.piece(now.id()))));
        }
        return new TrueDrawn(edges, lines, ways);
    }

    /** Those parts of an edge that are not drawn so already. */
    private static List<Segment> redrawn(EdgeFate fate, Pattern before) {
        List<Segment> was =
                before.piece(fate.piece().id()).map(p -> p.outline().segments()).orElse(List.of());
        return fate.run().stream().filter(s -> !liesOn(s, was)).toList();
    }

    /** The same of the lines that go along with an outline. */
    private static List<Segment> beside(Piece now, Optional<Piece> before) {
        List<Segment> was = before.stream()
                .flatMap(p -> p.riders().stream())
                .flatMap(r -> r.segments().stream())
                .toList();
        return now.riders().stream()
                .map(Rider::segments)
                .flatMap(List::stream)
                .filter(s -> !liesOn(s, was))
                .toList();
    }

    /** Whether a stretch is drawn already, be it by other segments. */
    private static boolean liesOn(Segment segment, List<Segment> lines) {
        return lines.contains(segment) || LOOKS.stream().allMatch(t -> isNear(segment.at(t), lines));
    }

    private static boolean isNear(Point p, List<Segment> lines) {
        return lines.stream().anyMatch(l -> l.at(l.nearest(p)).distance(p) <= SEEN);
    }

    private static List<Line> notchWays(Altered altered, Pattern before) {
        List<Line> ways = new ArrayList<>();
        for (Piece now : altered.pattern().pieces()) {
            List<Notch> was = before.piece(now.id()).map(Piece::notches).orElse(List.of());
            for (int i = 0; i < Math.min(was.size(), now.notches().size()); i++) {
                Point from = was.get(i).at();
                Point to = now.notches().get(i).at();
                if (from.distance(to) > NOTICED) {
                    ways.add(new Line(from, to));
                }
            }
        }
        return ways;
    }

    /** The edges in words, gathered by piece; empty for none. */
    String named(Words words) {
        return Effect.gathered(edges, Piece::name, each -> each.edge().name(), words);
    }

    /** The ids of the pieces of which an edge is redrawn. */
    Set<String> pieces() {
        return edges.stream().map(f -> f.piece().id()).collect(Collectors.toSet());
    }

    /** On each other piece than one of which an edge is redrawn, the place at which that is to be seen. */
    List<Point> onOthers(String piece) {
        return edges.stream()
                .map(f -> f.piece().id())
                .filter(id -> !id.equals(piece))
                .distinct()
                .map(this::place)
                .toList();
    }

    /** The corner between two of the edges, or else the middle of the first. */
    private Point place(String piece) {
        List<EdgeFate> own =
                edges.stream().filter(f -> f.piece().id().equals(piece)).toList();
        for (EdgeFate one : own) {
            Point end = one.run().get(one.run().size() - 1).end();
            if (own.stream().anyMatch(f -> f != one && f.run().get(0).start().equals(end))) {
                return end;
            }
        }
        List<Segment> run = own.get(0).run();
        return run.get(run.size() / 2).at(0.5);
    }
}
