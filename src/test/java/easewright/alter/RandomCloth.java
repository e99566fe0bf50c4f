package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Seeded random pieces that look like half a skirt or bodice: top edge, curved side, hem, straight fold. */
final class RandomCloth {
    private final Random random;

    RandomCloth(long seed) {
        random = new Random(seed);
    }

    /** How many cases to run: all that are asked for, or the share given by -Dcases.share, for the tests of tests. */
    static int cases(int asked) {
        return Math.max(30, (int) (asked * Double.parseDouble(System.getProperty("cases.share", "1"))));
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    boolean chance(double p) {
        return random.nextDouble() < p;
    }

    /** A sheet turned by no more than that either way, radians, and mirrored as often as not. */
    Affine sheet(double most) {
        Affine turn = Affine.rotation(between(-most, most), new Point(100, 200));
        return chance(0.5) ? turn.after(Affine.scaling(-1, 1)) : turn;
    }

    /** With that chance the same drawn by its cutting line. */
    Piece piece(String id, double cutting) {
        Piece piece = piece(id);
        return chance(cutting) ? cutting(piece, between(5, 20)) : piece;
    }

    Piece piece(String id) {
        double length = between(300, 900);
        int bends = 1 + random.nextInt(4);
        List<Point> side = new ArrayList<>();
        double x = between(150, 280);
        for (int i = 0; i <= bends; i++) {
            side.add(new Point(x, length * i / bends + (i == 0 ? between(-20, 20) : i == bends ? between(-8, 8) : 0)));
            x += between(-40, 60);
        }
        Point top = new Point(0, between(-5, 15));
        Point foot = new Point(0, length);
        List<Segment> segments = new ArrayList<>();
        Cubic waist = curve(top, side.get(0), 12, true);
        segments.add(waist);
        for (int i = 0; i < bends; i++) {
            Point a = side.get(i);
            Point b = side.get(i + 1);
            segments.add(chance(0.4) ? new Line(a, b) : curve(a, b, 18, false));
        }
        segments.add(chance(0.5) ? new Line(side.get(bends), foot) : curve(side.get(bends), foot, 6, true));
        segments.add(new Line(foot, top));
        double level = length * between(0.25, 0.75);
        List<Dart> darts = chance(0.5)
                ? List.of(new Dart(
                        "dart",
                        waist.at(0.4),
                        waist.at(0.5),
                        waist.at(0.45).plus(new Point(0, 90)),
                        Optional.empty(),
                        Optional.of("top")))
                : List.of();
        Outline outline = new Outline(segments);
        List<Notch> notches = new ArrayList<>();
        if (chance(0.3)) {
            Segment first = segments.get(1);
            notches.add(new Notch("n", first.at(between(0.05, 0.15) / 2)));
        }
        Piece piece = Piece.bare(id, outline).toBuilder()
                .cut(1, true)
                .grain(new Grain(new Point(60, 50), new Point(60, length - 50)))
                .edges(List.of(
                        Edge.of("top", EdgeRole.WAIST, top, side.get(0)),
                        Edge.of("side", EdgeRole.SEAM, side.get(0), side.get(bends)),
                        Edge.of("hem", EdgeRole.HEM, side.get(bends), foot),
                        Edge.of("fold", EdgeRole.FOLD, foot, top)))
                .levels(List.of(LevelMark.through("level", new Point(30, level)), LevelMark.along("top", "top")))
                .darts(darts)
                .notches(notches)
                .build();
        return piece;
    }

    private Cubic curve(Point a, Point b, double bulge, boolean lies) {
        Point way = b.minus(a);
        Point aside = way.unit().quarterTurned();
        double limit = lies ? bulge / 2 : bulge;
        return new Cubic(
                a,
                a.plus(way.times(between(0.2, 0.45))).plus(aside.times(between(-limit, limit))),
                a.plus(way.times(between(0.55, 0.8))).plus(aside.times(between(-limit, limit))),
                b);
    }

    static Piece cutting(Piece piece, double allowance) {
        List<Edge> edges = piece.edges().stream()
                .map(e -> new Edge(
                        e.name(),
                        e.role(),
                        e.from(),
                        e.to(),
                        e.isProtected(),
                        e.role() == EdgeRole.FOLD ? java.util.OptionalDouble.of(0) : e.allowance()))
                .toList();
        return piece.toBuilder().edges(edges).drawn(LineKind.CUTTING, allowance).build();
    }

    /** The piece seen through a map of the plane; a mirroring one is drawn backwards, so that edges run with it. */
    static Piece mapped(Piece piece, Affine map) {
        boolean mirrored = map.determinant() < 0;
        Outline outline = piece.outline().transformed(map);
        List<Edge> edges = new ArrayList<>();
        for (Edge e : piece.edges()) {
            Point from = map.apply(e.from());
            Point to = map.apply(e.to());
            edges.add(mirrored ? e.withEnds(to, from) : e.withEnds(from, to));
        }
        Grain grain = piece.grain().orElseThrow();
        return piece.toBuilder()
                .outline(mirrored ? reversedKeepingCorners(outline) : outline)
                .edges(edges)
                .grain(new Grain(map.apply(grain.from()), map.apply(grain.to())))
                .levels(piece.levels().stream()
                        .map(m -> m.through()
                                .map(p -> m.withThrough(map.apply(p)))
                                .orElse(m))
                        .toList())
                .darts(piece.darts().stream()
                        .map(d -> new Dart(
                                d.name(),
                                map.apply(d.mouth1()),
                                map.apply(d.mouth2()),
                                map.apply(d.point()),
                                Optional.empty(),
                                d.edge()))
                        .toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(n.name(), map.apply(n.at())))
                        .toList())
                .build();
    }

    private static Outline reversedKeepingCorners(Outline outline) {
        List<Segment> back = new ArrayList<>();
        outline.segments().forEach(s -> back.add(s.reversed()));
        Collections.reverse(back);
        return new Outline(back);
    }
}
