package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A straight skirt as somebody draws it by hand: stitching lines with a dart cut out of the waist, whose legs are not
 * quite equal, and around each a cutting line that is nearly parallel, goes straight over the dart and has a crumb of a
 * line here and there. Allowance 15 mm, hem 40 mm.
 */
final class HandDrawn {
    private HandDrawn() {}

    static final double ALLOWANCE = 15;

    static Piece front() {
        Point low = new Point(40, 80);
        Point high = new Point(262, 68);
        return Piece.bare(
                        "front",
                        new Outline(
                                path(
                                        "40 80 C 70.22 80 100.435 79 130 77.465 L 140 166.9 L 150 76.34 C 189.31 73.975"
                                                + " 227.175 70.825 262 68 C 282.9 138 300 190 300 280 L 300 680 L 40 680 L 40 80")))
                .toBuilder()
                .cut(1, true)
                .drawn(LineKind.STITCHING, ALLOWANCE)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, low, high),
                        Edge.of("side", EdgeRole.SEAM, high, new Point(300, 680)),
                        new Edge(
                                "hem",
                                EdgeRole.HEM,
                                new Point(300, 680),
                                new Point(40, 680),
                                false,
                                OptionalDouble.of(40)),
                        new Edge("fold", EdgeRole.FOLD, new Point(40, 680), low, false, OptionalDouble.of(0))))
                .darts(List.of(new Dart(
                        "dart",
                        new Point(130, 77.465),
                        new Point(150, 76.34),
                        new Point(140, 166.9),
                        Optional.empty(),
                        Optional.of("waist"))))
                .riders(
                        List.of(
                                new Rider(
                                        "front cut",
                                        Rider.Kind.PARALLEL,
                                        path(
                                                "40 65 C 70.025 65.005 99.85 64.015 129.22 62.485 L 129.19 62.485 L 149.13 61.365"
                                                        + " L 149.1 61.37 C 188.33 59.01 226.04 55.865 260.79 53.05 L 272.91 52.065"
                                                        + " L 276.375 63.71 C 297.51 134.77 314.92 188.915 315 280 L 315 720 L 40 720 L 40 65"))))
                .build();
    }

    static Piece back() {
        Point low = new Point(640, 86);
        Point high = new Point(426, 68);
        return Piece.bare(
                        "back",
                        new Outline(
                                path(
                                        "640 86 C 613.17 86 586.34 84.615 560 82.505 L 545 211.15 L 530 79.8 C 493.525"
                                                + " 76.185 458.4 71.635 426 68 C 406.2 138 390 190 390 280 L 390 684 L 640 680 L 640 86")))
                .toBuilder()
                .cut(2, false)
                .drawn(LineKind.STITCHING, ALLOWANCE)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, low, high),
                        Edge.of("side", EdgeRole.SEAM, high, new Point(390, 684)),
                        new Edge(
                                "hem",
                                EdgeRole.HEM,
                                new Point(390, 684),
                                new Point(640, 680),
                                false,
                                OptionalDouble.of(40)),
                        Edge.of("centre back", EdgeRole.CENTRE, new Point(640, 680), low)))
                .darts(List.of(new Dart(
                        "dart",
                        new Point(560, 82.505),
                        new Point(530, 79.8),
                        new Point(545, 211.15),
                        Optional.empty(),
                        Optional.of("waist"))))
                .riders(List.of(new Rider(
                        "back cut",
                        Rider.Kind.PARALLEL,
                        path("655 70.995 L 640 71 C 613.47 71.005 587.235 69.645 561.2 67.55 L 561.275 67.56"
                                + " L 531.415 64.865 L 531.48 64.875 C 495.055 61.26 460.025 56.72 427.67 53.095"
                                + " L 415.015 51.675 L 411.565 63.915 C 391.555 134.93 375.07 188.97 375 280 L 375 724.245"
                                + " L 655 719.765 L 655 70.995"))))
                .build();
    }

    /** Both, sewn at the side. */
    static Pattern skirt() {
        return Cloths.pattern(List.of(), front(), back())
                .withMates(List.of(new Mate(
                        "side seam", List.of(EdgeRef.of("back", "side")), List.of(EdgeRef.of("front", "side")), 0)));
    }

    /** Lines and cubics through the numbers, begun at the first place. */
    private static List<Segment> path(String text) {
        List<String> words = new ArrayList<>(Arrays.asList(text.split(" ")));
        Point at = point(words);
        List<Segment> all = new ArrayList<>();
        while (!words.isEmpty()) {
            String letter = words.remove(0);
            Segment next = letter.equals("C")
                    ? new Cubic(at, point(words), point(words), point(words))
                    : new Line(at, point(words));
            all.add(next);
            at = next.end();
        }
        return all;
    }

    private static Point point(List<String> words) {
        return new Point(Double.parseDouble(words.remove(0)), Double.parseDouble(words.remove(0)));
    }

    /** How wide the allowance is at least and at most along an edge outside of darts and away from its ends, mm. */
    static double[] allowance(Piece piece, String edge) {
        Outline line = cut(piece);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        List<Segment> run = piece.edge(edge).orElseThrow().on(piece.outline()).segments();
        Point start = run.get(0).start();
        Point end = run.get(run.size() - 1).end();
        for (Segment s : run) {
            for (double t = 0; t <= 1; t += 1.0 / 64) {
                Point p = s.at(t);
                boolean clear = p.distance(start) > 1.1 * ALLOWANCE && p.distance(end) > 1.1 * ALLOWANCE;
                boolean leg = piece.darts().stream()
                        .anyMatch(d ->
                                s.end().distance(d.point()) < 1e-3 || s.start().distance(d.point()) < 1e-3);
                if (clear && !leg) {
                    double wide = line.nearest(p).distance();
                    least = Math.min(least, wide);
                    most = Math.max(most, wide);
                }
            }
        }
        return new double[] {least, most};
    }

    static Outline cut(Piece piece) {
        return new Outline(piece.riders().get(0).segments());
    }
}
