package easewright.suggest;

import easewright.geom.Crossing;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds darts by their form: cut into the outline, drawn as two legs, also with a line across the mouth, or drawn as a
 * slim diamond.
 */
final class DartShapes {
    /** Shortest leg, mm. */
    private static final double SHORTEST = 25;

    /** Narrowest mouth, mm. */
    private static final double NARROWEST = 4;

    /** Widest angle at the point, degrees. */
    private static final double WIDEST = 62;

    /** Legs agree in length this well, relatively. */
    private static final double EQUAL = 0.15;

    /** Legs meet this near, mm. */
    private static final double MEET = 1.5;

    /** A leg may begin this far from the drawn outline, on a stitching line that is not drawn, mm. */
    private static final double ALLOWANCE = 22;

    private static final double ON_LINE = 1.5;

    /** Legs may be drawn on over the outline by this much, to a cutting line or to a larger size, mm. */
    private static final double BEYOND = 40;

    private final Piece piece;
    private final Outline outline;
    private final List<Dart> found = new ArrayList<>();

    private DartShapes(Piece piece) {
        this.piece = piece;
        this.outline = piece.outline();
    }

    /** Nameless darts, in no certain order. */
    static List<Dart> on(Piece piece) {
        DartShapes shapes = new DartShapes(piece);
        shapes.cutOut(piece.outline());
        SewnInside.known(piece).ifPresent(shapes::cutOut);
        shapes.legs();
        shapes.closed();
        return List.copyOf(shapes.found);
    }

    private void add(Point mouth1, Point mouth2, Point point, Optional<Point> other) {
        boolean known = found.stream()
                .anyMatch(d -> d.point().distance(point) < 4 * MEET
                        && (d.mouth1().distance(mouth1) < ALLOWANCE
                                || d.mouth1().distance(mouth2) < ALLOWANCE));
        if (!known) {
            found.add(new Dart("dart", mouth1, mouth2, point, other, Optional.empty()));
        }
    }

    /** A deep, slim cut into the outline, or into the line that is sewn inside it, with straight sides of equal length. */
    private void cutOut(Outline line) {
        List<Corners.Corner> corners = Corners.of(line, List.of()).corners();
        Ring ring = new Ring(line);
        boolean clockwise = line.signedArea() > 0;
        int n = corners.size();
        for (int i = 0; i < n && n >= 5; i++) {
            Corners.Corner tip = corners.get(i);
            boolean inwards = clockwise == tip.turn() < 0 && Math.abs(tip.turn()) > 180 - WIDEST;
            if (inwards) {
                Corners.Corner before = corners.get((i + n - 1) % n);
                Corners.Corner after = corners.get((i + 1) % n);
                Curve one = ring.run(before.along(), tip.along());
                Curve two = ring.run(tip.along(), after.along());
                if (areLegs(one, two)) {
                    add(before.at(), after.at(), tip.at(), Optional.empty());
                }
            }
        }
    }

    private static boolean areLegs(Curve one, Curve two) {
        double a = one.length();
        double b = two.length();
        double mouth = one.start().distance(two.end());
        return Math.min(a, b) >= SHORTEST
                && Math.abs(a - b) <= EQUAL * Math.max(a, b)
                && mouth >= NARROWEST
                && mouth <= 0.9 * Math.min(a, b)
                && one.start().distance(one.end()) > 0.97 * a
                && two.start().distance(two.end()) > 0.97 * b;
    }

    /** Two inner lines that meet inside and begin at the outline. */
    private void legs() {
        List<Curve> lines = new ArrayList<>();
        for (Rider rider : piece.riders()) {
            if (rider.kind() == Rider.Kind.INNER) {
                for (Pen pen : Pen.of(rider)) {
                    if (!pen.closed()) {
                        pen.runs().stream().filter(r -> r.length() >= SHORTEST).forEach(lines::add);
                    }
                }
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                legs(lines.get(i), lines.get(j));
            }
        }
    }

    private void legs(Curve a, Curve b) {
        for (Curve one : List.of(a, a.reversed())) {
            for (Curve two : List.of(b, b.reversed())) {
                // One leg to the point, the other away from it.
                if (one.end().distance(two.start()) <= MEET && areLegs(one, two)) {
                    Point tip = one.end();
                    double angle =
                            Turns.degrees(one.start().minus(tip), two.end().minus(tip));
                    Optional<Point> mouth1 = mouth(one.start(), tip);
                    Optional<Point> mouth2 = mouth(two.end(), tip);
                    boolean inside =
                            outline.contains(tip) && outline.nearest(tip).distance() > 8;
                    if (angle <= WIDEST && inside && mouth1.isPresent() && mouth2.isPresent()) {
                        add(mouth1.get(), mouth2.get(), tip, Optional.empty());
                    }
                }
            }
        }
    }

    /** The end of a leg on the outline, or where it begins on a stitching line inside it. */
    private Optional<Point> mouth(Point end, Point tip) {
        if (!outline.contains(end)) {
            Optional<Point> crossing = crossing(end, tip);
            if (crossing.isPresent()) {
                return crossing;
            }
        }
        Nearest nearest = outline.nearest(end);
        if (nearest.distance() <= ON_LINE) {
            return Optional.of(nearest.point());
        }
        boolean nearTheLine = nearest.distance() <= ALLOWANCE && nearest.distance() < end.distance(tip) / 2;
        return nearTheLine ? Optional.of(end) : Optional.empty();
    }

    /** Where a leg that is drawn on over the outline crosses it. */
    private Optional<Point> crossing(Point end, Point tip) {
        if (outline.nearest(end).distance() > BEYOND) {
            return Optional.empty();
        }
        Point leg = end.minus(tip);
        return outline.crossings(tip, leg).stream()
                .map(Crossing::point)
                .filter(p -> p.minus(tip).dot(leg) > 0 && p.distance(tip) <= end.distance(tip))
                .max(Comparator.comparingDouble(p -> p.distance(tip)));
    }

    /** A slim line inside the piece that closes: of three sides, of which two are legs, or of four. */
    private void closed() {
        for (Rider rider : piece.riders()) {
            if (rider.kind() != Rider.Kind.INNER) {
                continue;
            }
            for (Pen pen : Pen.of(rider)) {
                // The bends beside its mouth are often too flat to end a run.
                List<Segment> sides = pen.segments();
                boolean straight = pen.closed() && sides.stream().allMatch(Line.class::isInstance);
                if (straight && sides.size() == 4) {
                    diamond(sides);
                } else if (straight && sides.size() == 3) {
                    List<Curve> lines =
                            sides.stream().map(side -> new Curve(List.of(side))).toList();
                    for (int i = 0; i < 3; i++) {
                        legs(lines.get(i), lines.get((i + 1) % 3));
                    }
                }
            }
        }
    }

    private void diamond(List<Segment> sides) {
        List<Point> corners = sides.stream().map(Segment::start).toList();
        double one = corners.get(0).distance(corners.get(2));
        double two = corners.get(1).distance(corners.get(3));
        int first = one >= two ? 0 : 1;
        Point point = corners.get(first);
        Point other = corners.get(first + 2);
        Point mouth1 = corners.get(1 - first);
        Point mouth2 = corners.get(3 - first);
        double length = point.distance(other);
        double width = mouth1.distance(mouth2);
        boolean even = sides.stream()
                        .map(Segment::length)
                        .min(Comparator.naturalOrder())
                        .orElseThrow()
                > length * 0.15;
        if (length >= 2 * SHORTEST && width >= NARROWEST && width <= length / 3 && even) {
            add(mouth1, mouth2, point, Optional.of(other));
        }
    }
}
