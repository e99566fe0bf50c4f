package easewright.bench;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/** A gored skirt of as many panels and as many segments as wanted, fully marked: a load that grows evenly. */
final class Gores {
    private static final double LENGTH = 650;
    private static final double HIP = 200;
    private static final double THIGH = 300;
    private static final double APART = 200;

    private Gores() {}

    /**
     * The skirt.
     *
     * @param panels   number of pieces
     * @param segments of all outlines together
     * @param drawn    whether the outlines are stitching or cutting lines
     */
    static Pattern skirt(int panels, int segments, LineKind drawn) {
        List<Piece> pieces = new ArrayList<>();
        List<Mate> mates = new ArrayList<>();
        for (int i = 0; i < panels; i++) {
            pieces.add(panel(i, panels, segments / panels, drawn));
            mates.add(new Mate(
                    "seam " + i,
                    List.of(EdgeRef.of("gore-" + i, "right")),
                    List.of(EdgeRef.of("gore-" + (i + 1) % panels, "left")),
                    0));
        }
        return new Pattern(
                pieces,
                List.of(
                        Level.of("waist", LevelKind.WAIST),
                        Level.of("hip", LevelKind.HIP),
                        Level.of("thigh", LevelKind.OTHER)),
                mates,
                new Body(
                        "",
                        List.of(
                                new BodyMeasure("Waist girth", "waist", 745, ""),
                                new BodyMeasure("Hip girth", "hip", 1000, ""))),
                Cloth.WOVEN,
                Map.of("hip", 60.0),
                new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE),
                List.of());
    }

    /** One panel: waist and hem gently hollow, both seams shaped over the hip. */
    private static Piece panel(int index, int of, int segments, LineKind drawn) {
        double share = 12.0 / of;
        double x = index * APART;
        DoubleFunction<Point> right = t -> new Point(x + share * half(LENGTH * t), LENGTH * t);
        DoubleFunction<Point> left = t -> new Point(x - share * half(LENGTH * (1 - t)), LENGTH * (1 - t));
        DoubleFunction<Point> waist = t -> across(left.apply(1), right.apply(0), t, 3);
        DoubleFunction<Point> hem = t -> across(right.apply(1), left.apply(0), t, 9);
        int cross = Math.max(1, segments / 8);
        int along = Math.max(2, segments / 2 - cross);
        List<Segment> outline = new ArrayList<>();
        run(outline, waist, cross);
        run(outline, right, along);
        run(outline, hem, cross);
        run(outline, left, along);
        Point a = waist.apply(0);
        Point b = waist.apply(1);
        Point c = hem.apply(0);
        Point d = hem.apply(1);
        return Piece.bare("gore-" + index, new Outline(outline)).toBuilder()
                .name("Gore " + (index + 1))
                .drawn(drawn, drawn == LineKind.CUTTING ? 10 : 0)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, a, b),
                        Edge.of("right", EdgeRole.SEAM, b, c),
                        Edge.of("hem", EdgeRole.HEM, c, d),
                        Edge.of("left", EdgeRole.SEAM, d, a)))
                .levels(List.of(
                        LevelMark.along("waist", "waist"),
                        LevelMark.through("hip", new Point(x, HIP)),
                        LevelMark.through("thigh", new Point(x, THIGH))))
                .notches(List.of(
                        new Notch("hip " + index, right.apply(HIP / LENGTH)),
                        new Notch("hip " + (index + of - 1) % of, left.apply(1 - HIP / LENGTH))))
                .grain(new Grain(new Point(x, 100), new Point(x, 500)))
                .build();
    }

    private static double half(double y) {
        return 32 + 12 * (1 - Math.exp(-y / 90)) + 20 * (y / LENGTH) * (y / LENGTH);
    }

    private static Point across(Point from, Point to, double t, double hollow) {
        return from.towards(to, t).plus(new Point(0, 4 * hollow * t * (1 - t)));
    }

    /** The curve in so many cubics, each with the curve's own directions at its ends. */
    private static void run(List<Segment> into, DoubleFunction<Point> curve, int pieces) {
        double step = 1.0 / pieces;
        Point from = into.isEmpty() ? curve.apply(0) : into.get(into.size() - 1).end();
        for (int i = 0; i < pieces; i++) {
            Point to = curve.apply(i == pieces - 1 ? 1 : (i + 1) * step);
            into.add(new Cubic(
                    from,
                    from.plus(speed(curve, i * step).times(step / 3)),
                    to.minus(speed(curve, (i + 1) * step).times(step / 3)),
                    to));
            from = to;
        }
    }

    private static Point speed(DoubleFunction<Point> curve, double t) {
        double low = Math.max(0, t - 1e-4);
        double high = Math.min(1, t + 1e-4);
        return curve.apply(high).minus(curve.apply(low)).times(1 / (high - low));
    }
}
