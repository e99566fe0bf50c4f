package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where a piece's name finds the most room: away from its levels, its darts, its grainline and the lines drawn on it.
 *
 * @param at     middle of the free stretch, mm
 * @param width  of the free stretch, mm
 * @param height free above and below it together, mm
 */
public record NamePlace(Point at, double width, double height) {
    private static final int ROWS = 19;

    /** Names are about this many times as wide as they are high. */
    private static final double WIDE = 3.1;

    /** Half the height of a level's label at usual zooms, mm. */
    private static final double LABEL = 14;

    /** How far the sign of a notch, a dart's point or the head of an arrow reaches at usual zooms, mm. */
    private static final double SIGN = 10;

    /** Where else than in their middle words are looked at, as parts of their width. */
    private static final double[] BESIDE = {-0.45, -0.3, -0.15, 0.15, 0.3, 0.45};

    private static final double WIDER = 0.002;

    /** Lines are found so near to their boxes, mm. */
    private static final double ROUNDING = 1e-6;

    /** Two words beside each other are about this many times as wide as they are high; more room is of no use. */
    private static final double WIDEST = 14;

    private static final Point ACROSS = new Point(1, 0);
    private static final Point DOWN = new Point(0, 1);

    /** The roomiest place on a piece with these levels across it. */
    public static NamePlace on(Piece piece, List<Line> levels) {
        return on(piece, levels, List.of());
    }

    /**
     * The same.
     *
     * @param words around what is written on the drawing, mm
     */
    public static NamePlace on(Piece piece, List<Line> levels, List<Box> words) {
        List<Segment> lines = new ArrayList<>(piece.outline().segments());
        words.forEach(box -> lines.addAll(sides(box)));
        List<Point> signs = new ArrayList<>();
        piece.notches()
                .forEach(n -> lines.addAll(sides(Box.around(List.of(n.at())).grown(SIGN))));
        piece.grain().ifPresent(g -> {
            lines.add(new Line(g.from(), g.to()));
            signs.addAll(List.of(g.from(), g.to()));
        });
        for (Dart dart : piece.darts()) {
            lines.add(new Line(dart.mouth1(), dart.point()));
            lines.add(new Line(dart.mouth2(), dart.point()));
            signs.add(dart.point());
        }
        for (Rider rider : piece.riders()) {
            if (rider.kind() != Rider.Kind.ATTACHED) {
                lines.addAll(rider.segments());
            }
        }
        Box box = piece.outline().box();
        NamePlace best = new NamePlace(box.centre(), box.width(), box.height());
        List<Boxed> boxed = boxed(lines);
        List<Boxed> across = boxed(levels);
        double most = -1;
        for (int row = 1; row < ROWS; row++) {
            double y = box.minY() + box.height() * row / ROWS;
            List<Double> walls = meetings(boxed, new Point(box.minX(), y), ACROSS);
            for (int i = 1; i < walls.size(); i++) {
                double left = box.minX() + walls.get(i - 1);
                double right = box.minX() + walls.get(i);
                Point at = new Point((left + right) / 2, y);
                double height = 2 * Math.min(clearance(boxed, at), clearance(across, at) - LABEL);
                double room = Math.min((right - left) / WIDE, height);
                double wider = WIDER * Math.min(right - left, WIDEST * height);
                if (room + wider > most) {
                    // A dart or a notch may point at the words beside their middle.
                    for (double part : BESIDE) {
                        Point beside = at.plus(ACROSS.times(part * room * WIDE));
                        height = Math.min(height, 2 * clearance(boxed, beside));
                    }
                    height = Math.min(height, besides(signs, at, room * WIDE));
                    room = Math.min(room, height);
                }
                boolean free = words.stream().noneMatch(w -> w.contains(at));
                // Among places of the same height the widest: words may stand beside each other there.
                room += wider;
                if (room > most && free && piece.outline().contains(at)) {
                    most = room;
                    best = new NamePlace(at, right - left, height);
                }
            }
        }
        return best;
    }

    /** How high words of this width may be so that they keep clear of the signs, which a ray beside them would miss. */
    private static double besides(List<Point> signs, Point at, double width) {
        return signs.stream()
                .filter(sign -> Math.abs(sign.x() - at.x()) < width / 2 + SIGN)
                .mapToDouble(sign -> 2 * (Math.abs(sign.y() - at.y()) - SIGN))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static List<Line> sides(Box box) {
        Point upper = new Point(box.minX(), box.minY());
        Point lower = new Point(box.maxX(), box.maxY());
        Point right = new Point(box.maxX(), box.minY());
        Point left = new Point(box.minX(), box.maxY());
        return List.of(new Line(upper, right), new Line(right, lower), new Line(lower, left), new Line(left, upper));
    }

    /** A line with the box around it: most lines are nowhere near where it is looked. */
    private record Boxed(Segment line, Box box) {
        boolean comesTo(Point from, Point direction) {
            return direction == ACROSS
                    ? box.minY() <= from.y() && from.y() <= box.maxY()
                    : box.minX() <= from.x() && from.x() <= box.maxX();
        }
    }

    private static List<Boxed> boxed(List<? extends Segment> lines) {
        return lines.stream()
                .map(line -> new Boxed(line, line.box().grown(ROUNDING)))
                .toList();
    }

    /** How far it is up or down to the nearest line. */
    private static double clearance(List<Boxed> lines, Point at) {
        double least = Double.POSITIVE_INFINITY;
        for (double away : meetings(lines, at, DOWN)) {
            least = Math.min(least, Math.abs(away));
        }
        return least;
    }

    /** Distances along a straight line at which others cross it, in order. */
    private static List<Double> meetings(List<Boxed> lines, Point from, Point direction) {
        List<Double> found = new ArrayList<>();
        for (Boxed each : lines) {
            if (each.comesTo(from, direction)) {
                Segment line = each.line();
                for (double t : line.crossings(from, direction)) {
                    found.add(line.at(t).minus(from).dot(direction));
                }
            }
        }
        Collections.sort(found);
        return found;
    }
}
