package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds short lines and small triangles drawn at the outline, which are notches. */
final class Ticks {
    private static final double SHORTEST = 1.5;
    private static final double LONGEST = 15;

    /** A tick comes this near to the outline, mm. */
    private static final double TOUCHES = 3;

    /** A tick may stand on the cutting line this far from the stitching line, mm. */
    private static final double ALLOWANCE = 30;

    /** Least angle between a tick and the outline, degrees. */
    private static final double ACROSS = 55;

    private static final double SAME_END = 0.6;

    /**
     * A notch as drawn.
     *
     * @param loose whether the line belongs to no piece yet
     */
    record Tick(Point at, Rider line, boolean loose) {}

    private final Outline outline;
    private final Optional<Outline> cutting;
    private final List<Pen> all = new ArrayList<>();
    private final List<Tick> found = new ArrayList<>();

    private Ticks(Piece piece) {
        outline = piece.outline();
        cutting = Pen.cuttingLine(piece);
    }

    static List<Tick> on(Piece piece, Sheet sheet) {
        Ticks ticks = new Ticks(piece);
        List<Rider> own = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.INNER)
                .toList();
        own.forEach(r -> ticks.all.addAll(Pen.of(r)));
        List<Rider> loose = sheet.loose().stream()
                .filter(r -> !r.segments().isEmpty()
                        && piece.outline()
                                .box()
                                .grown(LONGEST)
                                .contains(r.segments().get(0).start()))
                .toList();
        loose.forEach(r -> ticks.all.addAll(Pen.of(r)));
        own.forEach(r -> ticks.look(r, false));
        loose.forEach(r -> ticks.look(r, true));
        return List.copyOf(ticks.found);
    }

    private void look(Rider rider, boolean loose) {
        List<Pen> pens = Pen.of(rider);
        for (Pen pen : pens) {
            at(pen).filter(p -> found.stream().noneMatch(t -> t.at().distance(p) < 1))
                    .ifPresent(p -> found.add(new Tick(p, rider, loose)));
        }
    }

    private Optional<Point> at(Pen pen) {
        if (pen.isLine()) {
            Line line = Pen.chord(pen.runs().get(0));
            boolean size = line.length() >= SHORTEST && line.length() <= LONGEST;
            return size && !meetsAnother(pen, line) ? across(line) : Optional.empty();
        }
        boolean triangle = pen.closed()
                && pen.runs().size() == 3
                && pen.runs().stream().allMatch(r -> Pen.isStraight(r) && r.length() <= LONGEST);
        return triangle ? base(pen) : Optional.empty();
    }

    /** Barbs of arrows and other figures made of several lines are no ticks. */
    private boolean meetsAnother(Pen own, Line line) {
        return all.stream()
                .filter(p -> p != own && !p.segments().equals(own.segments()))
                .flatMap(p -> p.runs().stream())
                .anyMatch(r -> near(r.start(), line) || near(r.end(), line));
    }

    private static boolean near(Point p, Line line) {
        return p.distance(line.start()) <= SAME_END || p.distance(line.end()) <= SAME_END;
    }

    private Optional<Point> across(Line line) {
        Nearest nearest = List.of(line.start(), line.at(0.5), line.end()).stream()
                .map(outline::nearest)
                .min(Comparator.comparingDouble(Nearest::distance))
                .orElseThrow();
        boolean onLine = nearest.distance() <= TOUCHES;
        boolean onCutting = !onLine
                && nearest.distance() <= ALLOWANCE
                && cutting.map(c -> Math.min(
                                        c.nearest(line.start()).distance(),
                                        c.nearest(line.end()).distance())
                                <= TOUCHES)
                        .orElse(false);
        if (!onLine && !onCutting) {
            return Optional.empty();
        }
        Point tangent = outline.segments()
                .get(nearest.place().segment())
                .tangent(nearest.place().t());
        return Turns.between(tangent, line.tangent(0)) >= ACROSS ? Optional.of(nearest.point()) : Optional.empty();
    }

    /** A triangle that stands on the outline with one side. */
    private Optional<Point> base(Pen triangle) {
        return triangle.runs().stream()
                .map(Pen::chord)
                .filter(side -> outline.nearest(side.start()).distance() <= TOUCHES
                        && outline.nearest(side.end()).distance() <= TOUCHES
                        && outline.nearest(side.at(0.5)).distance() <= TOUCHES)
                .min(Comparator.comparingDouble(
                        side -> outline.nearest(side.at(0.5)).distance()))
                .map(side -> outline.nearest(side.at(0.5)).point());
    }
}
