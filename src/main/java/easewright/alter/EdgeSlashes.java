package easewright.alter;

import easewright.geom.Crossing;
import easewright.geom.Curve;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/**
 * Slashes square to an edge, one in the middle of each stretch between its notches and ends, each opened in proportion
 * to its stretch, so that the notches stay in proportion. A tuck lies about the middle of its stretch, so that closing
 * takes back exactly what opening gave.
 */
final class EdgeSlashes implements EdgeLength.Stretch {
    /** A stretch shorter than this gets no slash, mm. */
    private static final double SHORTEST = 12;

    private final Piece piece;
    private final boolean acceptProtected;
    private final boolean startStays;
    private final List<Cut> cuts = new ArrayList<>();

    /** A slash from the edge across the piece; {@code share} of the whole. */
    private record Cut(Point from, Point to, Point along, double share) {}

    EdgeSlashes(Piece piece, Edge edge, boolean acceptProtected) throws Refusal {
        this.piece = piece;
        this.acceptProtected = acceptProtected;
        Curve run = edge.on(piece.outline());
        double length = run.length();
        startStays = startStays(piece, run);
        List<double[]> stretches = stretches(piece, edge, run, length);
        double whole = stretches.stream().mapToDouble(s -> s[1] - s[0]).sum();
        for (double[] stretch : stretches) {
            Point from = run.pointAtLength((stretch[0] + stretch[1]) / 2);
            Place place = run.nearest(from).place();
            Point along = run.segments().get(place.segment()).tangent(place.t());
            cuts.add(new Cut(from, across(from, along), along, (stretch[1] - stretch[0]) / whole));
        }
        if (cuts.isEmpty()) {
            throw Refusal.of("edge-too-short").with("piece", piece.name()).with("edge", edge.name());
        }
        if (startStays) {
            // The farthest from what stays first, so that the others are still where they were found.
            Collections.reverse(cuts);
        }
    }

    /** The start of the edge stays, unless a centre line lies nearer to its end. */
    private static boolean startStays(Piece piece, Curve run) {
        for (Edge other : piece.edges()) {
            if (other.role() == EdgeRole.FOLD || other.role() == EdgeRole.CENTRE) {
                Curve centre = other.on(piece.outline());
                return centre.nearest(run.start()).distance()
                        <= centre.nearest(run.end()).distance();
            }
        }
        return true;
    }

    private static List<double[]> stretches(Piece piece, Edge edge, Curve run, double length) {
        TreeSet<Double> marks = new TreeSet<>(List.of(0.0, length));
        EdgeRun on = new EdgeRun(piece, edge);
        for (Notch notch : piece.notches()) {
            if (on.holds(notch.at())) {
                marks.add(run.lengthTo(run.nearest(notch.at()).place()));
            }
        }
        List<double[]> mouths = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            if (on.holds(dart.mouth1()) && on.holds(dart.mouth2())) {
                double one = run.lengthTo(run.nearest(dart.mouth1()).place());
                double two = run.lengthTo(run.nearest(dart.mouth2()).place());
                marks.addAll(List.of(one, two));
                mouths.add(new double[] {Math.min(one, two), Math.max(one, two)});
            }
        }
        List<double[]> stretches = new ArrayList<>();
        double from = 0;
        for (double to : marks) {
            double middle = (from + to) / 2;
            boolean inMouth = mouths.stream().anyMatch(m -> m[0] < middle && middle < m[1]);
            if (to - from >= SHORTEST && !inMouth) {
                stretches.add(new double[] {from, to});
            }
            from = to;
        }
        return stretches;
    }

    /** Where a line square to the edge leaves the cloth. */
    private Point across(Point from, Point along) throws Refusal {
        boolean clockwise = piece.outline().signedArea() > 0;
        Point inwards = along.quarterTurned().times(clockwise ? 1 : -1);
        return piece.outline().crossings(from, inwards).stream()
                .filter(c -> c.along() > 1)
                .findFirst()
                .map(Crossing::point)
                .orElseThrow(() -> Refusal.of("slash-off-outline").with("piece", piece.name()));
    }

    @Override
    public Piece by(double mm) throws Refusal {
        Piece now = piece;
        for (Cut cut : cuts) {
            now = slashed(now, cut, mm).piece();
        }
        return now;
    }

    private Slashed slashed(Piece now, Cut cut, double mm) throws Refusal {
        double gap = mm * cut.share();
        Point away = startStays ? cut.along() : cut.along().times(-1);
        Point back = gap < 0 ? away.times(gap / 2) : Point.ORIGIN;
        return Slashed.of(now, cut.from().plus(back), cut.to().plus(back), away, gap, acceptProtected);
    }
}
