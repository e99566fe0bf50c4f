package easewright.draft;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Draws the stitching line of a piece edge by edge, each with its name, role and allowance. Not thread-safe. */
final class Contour {
    private final List<Curve> runs = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();
    private final List<Double> allowances = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<Boolean> hems = new ArrayList<>();
    private final List<Integer> firsts = new ArrayList<>();
    private Point pen;

    Contour(Point start) {
        pen = start;
    }

    /** Adds an edge that follows the curve, which starts where the pen is. */
    Contour edge(String name, EdgeRole role, double allowance, Curve curve) {
        if (curve.start().distance(pen) > 1e-6) {
            throw new IllegalArgumentException("Edge " + name + " does not start where the last one ends");
        }
        runs.add(curve);
        firsts.add(segments.size());
        segments.addAll(curve.segments());
        curve.segments().forEach(s -> {
            allowances.add(allowance);
            hems.add(role == EdgeRole.HEM);
        });
        edges.add(new Edge(
                name, role, curve.start(), curve.end(), role.protectedByDefault(), OptionalDouble.of(allowance)));
        pen = curve.end();
        return this;
    }

    /** Adds a straight edge. */
    Contour edge(String name, EdgeRole role, double allowance, Point to) {
        return edge(name, role, allowance, new Curve(List.of(new Line(pen, to))));
    }

    /** The same piece drawn the other way round. */
    Contour reversed() {
        Contour back = new Contour(pen);
        for (int i = edges.size() - 1; i >= 0; i--) {
            Edge edge = edges.get(i);
            back.edge(
                    edge.name(),
                    edge.role(),
                    edge.allowance().orElseThrow(),
                    runs.get(i).reversed());
        }
        return back;
    }

    List<Edge> edges() {
        return List.copyOf(edges);
    }

    Outline stitching() {
        return new Outline(closed(segments));
    }

    /** The cutting line around the stitching line. */
    Outline cutting() {
        return CuttingLine.around(stitching().segments(), allowances, hems).outline();
    }

    /** The edges as runs of the cutting line. */
    List<Edge> cutEdges() {
        List<Point> starts =
                CuttingLine.around(stitching().segments(), allowances, hems).starts();
        List<Edge> moved = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Point from = starts.get(firsts.get(i));
            Point to = starts.get(firsts.get((i + 1) % edges.size()));
            moved.add(edges.get(i).withEnds(from, to));
        }
        return moved;
    }

    /** Closes the last hair's breadth, so that the last segment ends exactly where the first begins. */
    private static List<Segment> closed(List<Segment> drawn) {
        List<Segment> joined = new ArrayList<>(drawn);
        for (int i = 0; i < joined.size(); i++) {
            Segment next = joined.get((i + 1) % joined.size());
            joined.set(i, Places.endingAt(joined.get(i), next.start()));
        }
        return joined;
    }
}
