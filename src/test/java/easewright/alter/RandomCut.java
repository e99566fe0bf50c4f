package easewright.alter;

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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Seeded random pieces drawn by their cutting line, an allowance of its own on each edge: half skirts, half bodices with
 * a hollow armhole, and trouser legs with a crotch curve; straight and curved sides, darts marked on the cutting line or
 * cut out of it, notches. Every piece has the levels "mid", across its sides, and "top", along its upper edge.
 */
final class RandomCut {
    private final Random random;
    private final List<Segment> drawn = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<Dart> darts = new ArrayList<>();
    private final List<Notch> notches = new ArrayList<>();

    RandomCut(long seed) {
        random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    boolean chance(double p) {
        return random.nextDouble() < p;
    }

    Piece piece(String id) {
        return switch (random.nextInt(3)) {
            case 0 -> skirt(id);
            case 1 -> bodice(id);
            default -> leg(id);
        };
    }

    private Piece skirt(String id) {
        Point top = new Point(0, between(0, 15));
        Point side = new Point(between(170, 260), between(-15, 10));
        Point hem = new Point(side.x() + between(-10, 70), between(500, 750));
        Point foot = new Point(0, hem.y() + between(0, 12));
        edge("top", EdgeRole.WAIST, between(6, 20), waist(top, side));
        edge("side", EdgeRole.SEAM, between(8, 25), side(side, hem));
        edge("hem", EdgeRole.HEM, between(10, 60), List.of(bent(hem, foot, 4)));
        edge("fold", EdgeRole.FOLD, 0, List.of(new Line(foot, top)));
        return done(id, true, between(190, 240));
    }

    private Piece bodice(String id) {
        Point neck = new Point(0, between(60, 90));
        Point shoulder = new Point(between(70, 85), between(-5, 5));
        Point tip = new Point(shoulder.x() + between(100, 130), between(30, 45));
        Point underarm = new Point(tip.x() + between(35, 60), between(215, 245));
        Point side = new Point(underarm.x() - between(0, 30), between(440, 470));
        Point foot = new Point(0, side.y() + between(-5, 10));
        edge(
                "neck",
                EdgeRole.NECK,
                between(5, 10),
                List.of(Cubic.hermite(neck, new Point(90, 0), shoulder, new Point(20, -90))));
        edge("shoulder", EdgeRole.SHOULDER, between(8, 20), List.of(new Line(shoulder, tip)));
        edge(
                "armhole",
                EdgeRole.ARMHOLE,
                between(6, 12),
                List.of(Cubic.hermite(
                        tip, new Point(-60, 220), underarm, new Point(between(120, 220), between(-5, 20)))));
        edge("side", EdgeRole.SEAM, between(8, 25), side(underarm, side));
        edge("top", EdgeRole.WAIST, between(8, 20), waist(side, foot));
        edge("fold", EdgeRole.FOLD, 0, List.of(new Line(foot, neck)));
        return done(id, true, underarm.y() + between(70, 130));
    }

    private Piece leg(String id) {
        Point top = new Point(between(20, 50), between(-5, 5));
        Point side = new Point(between(230, 260), between(-10, 5));
        Point hem = new Point(side.x() - between(0, 40), 1000);
        Point in = new Point(between(10, 40), 1000 + between(-3, 3));
        Point fork = new Point(between(-90, -50), between(250, 280));
        Point rise = new Point(top.x() - between(5, 15), between(160, 190));
        edge("top", EdgeRole.WAIST, between(8, 20), waist(top, side));
        edge("side", EdgeRole.SEAM, between(8, 25), side(side, hem));
        edge("hem", EdgeRole.HEM, between(10, 50), List.of(bent(hem, in, 3)));
        edge("inseam", EdgeRole.SEAM, between(8, 20), List.of(bent(in, fork, 8)));
        edge(
                "crotch",
                EdgeRole.CROTCH,
                between(6, 12),
                List.of(Cubic.hermite(fork, new Point(120, 10), rise, new Point(0, -120)), new Line(rise, top)));
        return done(id, false, between(420, 520));
    }

    private List<Segment> waist(Point from, Point to) {
        Segment line = bent(from, to, 5);
        if (chance(0.4)) {
            return List.of(line);
        }
        Point one = line.at(between(0.38, 0.44));
        Point two = line.at(between(0.48, 0.54));
        double down = from.x() < to.x() ? 1 : -1;
        Point point = one.towards(two, 0.5).plus(new Point(between(-8, 8), down * between(80, 120)));
        darts.add(new Dart("dart", one, two, point, Optional.empty(), Optional.of("top")));
        if (chance(0.5)) {
            return List.of(line);
        }
        double from1 = line.nearest(one);
        double to1 = line.nearest(two);
        return List.of(line.between(0, from1), new Line(one, point), new Line(point, two), line.between(to1, 1));
    }

    private List<Segment> side(Point from, Point to) {
        int bends = 1 + random.nextInt(3);
        List<Segment> parts = new ArrayList<>();
        Point at = from;
        for (int i = 1; i <= bends; i++) {
            Point next = i == bends ? to : from.towards(to, i / (double) bends).plus(new Point(between(-12, 25), 0));
            parts.add(chance(0.3) ? new Line(at, next) : bent(at, next, 14));
            at = next;
        }
        if (chance(0.3)) {
            Segment first = parts.get(0);
            notches.add(new Notch("n", first.at(between(0.05, 0.9))));
        }
        return parts;
    }

    private Cubic bent(Point a, Point b, double by) {
        Point way = b.minus(a);
        Point aside = way.unit().quarterTurned();
        return new Cubic(
                a,
                a.plus(way.times(between(0.25, 0.4))).plus(aside.times(between(-by, by))),
                a.plus(way.times(between(0.6, 0.75))).plus(aside.times(between(-by, by))),
                b);
    }

    private void edge(String name, EdgeRole role, double allowance, List<Segment> run) {
        Point from = run.get(0).start();
        Point to = run.get(run.size() - 1).end();
        edges.add(new Edge(name, role, from, to, role.protectedByDefault(), OptionalDouble.of(allowance)));
        for (Segment segment : run) {
            Point start = drawn.isEmpty()
                    ? segment.start()
                    : drawn.get(drawn.size() - 1).end();
            drawn.add(
                    segment instanceof Cubic c
                            ? new Cubic(start, c.control1(), c.control2(), c.end())
                            : new Line(start, segment.end()));
        }
    }

    private Piece done(String id, boolean fold, double level) {
        return Piece.bare(id, new Outline(drawn)).toBuilder()
                .cut(1, fold)
                .drawn(LineKind.CUTTING, 10)
                .grain(new Grain(new Point(60, 150), new Point(60, 350)))
                .edges(edges)
                .levels(List.of(LevelMark.through("mid", new Point(100, level)), LevelMark.along("top", "top")))
                .darts(darts)
                .notches(notches)
                .build();
    }
}
