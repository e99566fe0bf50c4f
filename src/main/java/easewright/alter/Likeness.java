package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;

/** Whether two pieces are the same for every purpose of sewing, however their outlines are divided. */
final class Likeness {
    /** A thousandth of what a change promises to be exact to, mm. */
    static final double CLOSE = 1e-5;

    private static final int LOOKS = 4;

    private Likeness() {}

    /** Same marks, and every place and line within {@link #CLOSE}. */
    static boolean same(Piece a, Piece b) {
        return sameMarks(a, b) && sameLine(a.outline(), b.outline());
    }

    /** Every place of either outline lies within {@link #CLOSE} of the other. */
    static boolean sameLine(Outline a, Outline b) {
        return sameLine(a, b, CLOSE);
    }

    /** Every place of either outline lies within so many mm of the other. */
    static boolean sameLine(Outline a, Outline b, double close) {
        return a.equals(b) || (liesOn(a, b, close) && liesOn(b, a, close));
    }

    /** Lines of a piece one by one: every place of either within so many mm of the other. */
    static boolean sameLines(List<Rider> some, List<Rider> others, double close) {
        for (int i = 0; i < some.size(); i++) {
            List<Segment> one = some.get(i).segments();
            List<Segment> other = others.get(i).segments();
            if (!one.equals(other) && !(lieOn(one, other, close) && lieOn(other, one, close))) {
                return false;
            }
        }
        return true;
    }

    /** Of lines whose parts need not be joined. */
    private static boolean lieOn(List<Segment> line, List<Segment> other, double close) {
        for (Segment segment : line) {
            for (int i = 0; i < LOOKS; i++) {
                Point p = segment.at((double) i / LOOKS);
                if (other.stream().noneMatch(s -> s.at(s.nearest(p)).distance(p) <= close)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean liesOn(Outline line, Outline other, double close) {
        for (Segment segment : line.segments()) {
            for (int i = 0; i < LOOKS; i++) {
                if (other.nearest(segment.at((double) i / LOOKS)).distance() > close) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean sameMarks(Piece a, Piece b) {
        List<Point> here = places(a);
        List<Point> there = places(b);
        if (here.size() != there.size() || !bare(a).equals(bare(b))) {
            return false;
        }
        for (int i = 0; i < here.size(); i++) {
            if (here.get(i).distance(there.get(i)) > CLOSE) {
                return false;
            }
        }
        return true;
    }

    /** Every place that is marked, in order. */
    private static List<Point> places(Piece piece) {
        List<Point> places = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            places.add(edge.from());
            places.add(edge.to());
        }
        for (LevelMark level : piece.levels()) {
            level.through().ifPresent(places::add);
            level.reference().ifPresent(places::add);
        }
        piece.darts().forEach(d -> places.addAll(d.corners()));
        piece.notches().forEach(n -> places.add(n.at()));
        piece.grain().map(Grain::from).ifPresent(places::add);
        piece.grain().map(Grain::to).ifPresent(places::add);
        return places;
    }

    /** All that is known of a piece besides places: names, roles, numbers. */
    private static List<Object> bare(Piece piece) {
        Point none = Point.ORIGIN;
        List<Object> rest = new ArrayList<>(List.of(
                piece.id(),
                piece.name(),
                piece.drawn(),
                piece.allowance(),
                piece.times(),
                piece.layers(),
                piece.onFold(),
                piece.size(),
                piece.side()));
        piece.edges().forEach(e -> rest.add(e.withEnds(none, none)));
        piece.levels().forEach(l -> rest.add(placeless(l)));
        piece.darts()
                .forEach(
                        d -> rest.add(List.of(d.name(), d.edge(), d.otherPoint().isPresent())));
        piece.notches().stream().map(Notch::name).forEach(rest::add);
        piece.riders().forEach(r -> rest.add(List.of(r.id(), r.kind())));
        return rest;
    }

    private static LevelMark placeless(LevelMark mark) {
        LevelMark still = mark.through().isPresent() ? mark.withThrough(Point.ORIGIN) : mark;
        return still.reference().isPresent() ? still.withReference(Point.ORIGIN) : still;
    }
}
