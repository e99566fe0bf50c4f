package easewright.editor.mark;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines by which a dart is drawn: where its point or its mouth is put elsewhere, its legs go along, and so do a line
 * down its middle, a tick at its mouth and a small ring round its point. Each keeps its form, turned and drawn out between
 * its two ends.
 */
final class DartLegs {
    /** A line ends at a place of the dart if it comes this near to it, mm: as near as marks are looked for on outlines. */
    private static final double NEAR = 0.5;

    /** A dart with its point this near to the outline is cut out of it, mm. */
    private static final double ON_LINE = 0.1;

    /** Ends of segments nearer than this are one, mm. */
    private static final double JOINED = 1e-6;

    /** A second line drawn round a dart that is cut out comes this near to its point, mm: an allowance away. */
    private static final double BESIDE = 20;

    private final List<Corner> corners;

    /** A place of the dart, and where it comes to lie. */
    private record Corner(Point was, Point is, boolean mouth) {
        boolean isAt(Point p) {
            return was.distance(p) <= NEAR;
        }

        Point moved(Point p) {
            return p.plus(is.minus(was));
        }
    }

    private DartLegs(Dart was, Dart is) {
        List<Corner> all = new ArrayList<>();
        all.add(new Corner(was.mouth1(), is.mouth1(), true));
        all.add(new Corner(was.mouth2(), is.mouth2(), true));
        all.add(new Corner(was.point(), is.point(), false));
        was.otherPoint().ifPresent(p -> all.add(new Corner(p, is.otherPoint().orElse(p), false)));
        this.corners = List.copyOf(all);
    }

    /** Whether the outline itself runs along the legs. */
    static boolean areOutline(Piece piece, Dart dart) {
        return dart.otherPoint().isEmpty() && piece.outline().comesWithin(dart.point(), ON_LINE);
    }

    /** The piece with the lines drawn within it following a dart that was put elsewhere. */
    static Piece following(Piece piece, Dart was, Dart is) {
        DartLegs legs = new DartLegs(was, is);
        return piece.toBuilder()
                .riders(piece.riders().stream()
                        .map(r -> r.kind() == Rider.Kind.PARALLEL ? r : r.mapped(legs::lines))
                        .toList())
                .build();
    }

    /**
     * The piece with its outline following the point of a dart that is cut out of it; what it was before any change
     * follows too, so that changes can still be taken back.
     *
     * @throws MarkRefused {@code dart-drawn} if the legs do not meet in one corner, or another line is drawn round them;
     *                     {@code dart-changed} if they lay elsewhere before a change; {@code dart-point-outside}
     */
    static Piece cutAnew(Piece piece, Dart was, Dart is) throws MarkRefused {
        boolean lined = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                .flatMap(r -> r.segments().stream())
                .anyMatch(s -> s.at(s.nearest(was.point())).distance(was.point()) <= BESIDE);
        DartLegs legs = new DartLegs(was, is);
        Optional<Outline> now = lined ? Optional.empty() : legs.outline(piece.outline());
        if (now.isEmpty()) {
            throw new MarkRefused("dart-drawn", Map.of("dart", was.name()));
        }
        if (!isSound(piece.outline(), now.get())) {
            throw new MarkRefused("dart-point-outside", Map.of("dart", was.name()));
        }
        Optional<Outline> original = piece.original().flatMap(legs::outline);
        if (piece.original().isPresent() && original.isEmpty()) {
            throw new MarkRefused("dart-changed", Map.of("dart", was.name()));
        }
        return piece.toBuilder().outline(now.get()).original(original).build();
    }

    private static boolean isSound(Outline before, Outline after) {
        return before.signedArea() * after.signedArea() > 0 && (Validity.isSimple(after) || !Validity.isSimple(before));
    }

    /** Empty if it has no two legs that meet in one corner. */
    private Optional<Outline> outline(Outline outline) {
        List<Segment> all = new ArrayList<>(outline.segments());
        Point tip = corners.get(2).was();
        int at = -1;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).hasLength() && all.get(i).start().distance(tip) <= ON_LINE) {
                if (at >= 0) {
                    return Optional.empty();
                }
                at = i;
            }
        }
        if (at < 0) {
            return Optional.empty();
        }
        // Begun at the point, the legs are the first run and the last one up to a mouth.
        Collections.rotate(all, -at);
        int first = 0;
        while (first < all.size() && !isMouth(all.get(first).end())) {
            first++;
        }
        int last = all.size() - 1;
        while (last >= 0 && !isMouth(all.get(last).start())) {
            last--;
        }
        if (first >= last) {
            return Optional.empty();
        }
        Point moved = corners.get(2).moved(all.get(0).start());
        List<Segment> legs =
                drawnOut(all.subList(0, first + 1), moved, all.get(first).end());
        List<Segment> others =
                drawnOut(all.subList(last, all.size()), all.get(last).start(), moved);
        List<Segment> now = new ArrayList<>(legs);
        now.addAll(all.subList(first + 1, last));
        now.addAll(others);
        // Where it began before, so that the same element is written the same way.
        Collections.rotate(now, at);
        return Optional.of(new Outline(now));
    }

    private boolean isMouth(Point p) {
        return corners.stream().anyMatch(c -> c.mouth() && c.isAt(p));
    }

    /** Lines drawn within the piece, as they come to lie. */
    private List<Segment> lines(List<Segment> segments) {
        List<Segment> now = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < segments.size(); i++) {
            boolean ends = i == segments.size() - 1
                    || segments.get(i).end().distance(segments.get(i + 1).start()) > JOINED;
            if (ends) {
                now.addAll(run(segments.subList(from, i + 1)));
                from = i + 1;
            }
        }
        return now;
    }

    /** Segments that join, as they come to lie. */
    private List<Segment> run(List<Segment> run) {
        boolean touches = run.stream()
                .anyMatch(s -> corner(s.start()).isPresent() || corner(s.end()).isPresent());
        if (!touches) {
            return ring(run);
        }
        List<Segment> now = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < run.size(); i++) {
            if (i == run.size() - 1 || corner(run.get(i).end()).isPresent()) {
                now.addAll(between(run.subList(from, i + 1)));
                from = i + 1;
            }
        }
        return now;
    }

    private Optional<Corner> corner(Point p) {
        return corners.stream().filter(c -> c.isAt(p)).findFirst();
    }

    /** A small ring round a point goes with it. */
    private List<Segment> ring(List<Segment> run) {
        boolean closed = run.get(0).start().distance(run.get(run.size() - 1).end()) <= JOINED;
        Box box = run.stream().map(Segment::box).reduce(Box::union).orElseThrow();
        return corners.stream()
                .filter(c -> closed && !c.mouth() && c.isAt(box.centre()))
                .findFirst()
                .map(c -> moved(run, c))
                .orElse(run);
    }

    private static List<Segment> moved(List<Segment> part, Corner by) {
        Affine move = Affine.translation(by.is().minus(by.was()));
        return by.is().equals(by.was())
                ? part
                : part.stream().map(s -> s.transformed(move)).toList();
    }

    /** A stretch of line between two places of the dart, or from one of them to where nothing of it lies. */
    private List<Segment> between(List<Segment> part) {
        Point start = part.get(0).start();
        Point end = part.get(part.size() - 1).end();
        Optional<Corner> from = corner(start);
        Optional<Corner> to = corner(end);
        if (from.isPresent() == to.isPresent()) {
            return from.isEmpty()
                    ? part
                    : drawnOut(part, from.get().moved(start), to.get().moved(end));
        }
        Corner only = from.orElseGet(to::get);
        if (only.mouth()) {
            return moved(part, only);
        }
        Point free = from.isPresent() ? end : start;
        Point there = part.size() == 1 ? beyondMouth(part.get(0), only, free) : free;
        return from.isPresent() ? drawnOut(part, only.moved(start), there) : drawnOut(part, there, only.moved(end));
    }

    /** Where a leg ends that is drawn on over the mouth, to the cutting line: as far from the mouth as it did. */
    private Point beyondMouth(Segment leg, Corner point, Point free) {
        return corners.stream()
                .filter(c -> c.mouth() && leg instanceof Line)
                .filter(c -> leg.at(leg.nearest(c.was())).distance(c.was()) <= NEAR)
                .findFirst()
                .map(c -> c.is().plus(
                                c.is().minus(point.is()).unit().times(c.was().distance(free))))
                .orElse(free);
    }

    /** Segments that join, turned and drawn out so that they lead from one place to another. */
    private static List<Segment> drawnOut(List<Segment> part, Point start, Point end) {
        Point from = part.get(0).start();
        Point to = part.get(part.size() - 1).end();
        if (from.equals(start) && to.equals(end)) {
            return part;
        }
        Point was = to.minus(from);
        Point is = end.minus(start);
        double square = was.dot(was);
        Affine map = square == 0
                ? Affine.translation(start.minus(from))
                : turned(from, start, was.dot(is) / square, was.cross(is) / square);
        List<Segment> now = new ArrayList<>();
        Point at = start;
        for (int i = 0; i < part.size(); i++) {
            Segment moved = part.get(i).transformed(map);
            Point next = i == part.size() - 1 ? end : moved.end();
            // Both ends exactly where the neighbours have them.
            now.add(moved instanceof Cubic c ? new Cubic(at, c.control1(), c.control2(), next) : new Line(at, next));
            at = next;
        }
        return now;
    }

    /** Turns about a place, draws out, and puts that place elsewhere. */
    private static Affine turned(Point about, Point there, double cos, double sin) {
        return new Affine(
                cos,
                sin,
                -sin,
                cos,
                there.x() - cos * about.x() + sin * about.y(),
                there.y() - sin * about.x() - cos * about.y());
    }
}
