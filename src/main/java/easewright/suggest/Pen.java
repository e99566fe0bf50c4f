package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a pen drew in one go, and the runs in it between sharp bends.
 *
 * @param rider id of the drawn element, as a piece would take it along
 * @param runs  each without a sharp bend, joined end to start
 */
record Pen(String rider, List<Curve> runs, boolean closed) {
    /** A bend sharper than this ends a run, degrees. */
    private static final double SHARP = 18;

    Pen {
        runs = List.copyOf(runs);
    }

    /** All strokes of a drawn line. */
    static List<Pen> of(Rider rider) {
        List<Pen> pens = new ArrayList<>();
        List<Segment> joined = new ArrayList<>();
        for (Segment segment : rider.segments()) {
            if (!joined.isEmpty() && !joined.get(joined.size() - 1).end().equals(segment.start())) {
                pens.add(pen(rider.id(), joined));
                joined = new ArrayList<>();
            }
            joined.add(segment);
        }
        if (!joined.isEmpty()) {
            pens.add(pen(rider.id(), joined));
        }
        return pens;
    }

    /** The cutting line around a piece that is drawn by its stitching line, where there is one. */
    static Optional<Outline> cuttingLine(Piece piece) {
        return piece.drawn() == LineKind.CUTTING
                ? Optional.empty()
                : piece.riders().stream()
                        .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                        .filter(r -> of(r).size() == 1 && of(r).get(0).closed())
                        .map(r -> new Outline(r.segments()))
                        .findFirst();
    }

    private static Pen pen(String id, List<Segment> joined) {
        List<Curve> runs = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        for (Segment segment : joined) {
            if (!run.isEmpty() && bend(run.get(run.size() - 1), segment) > SHARP) {
                runs.add(new Curve(run));
                run = new ArrayList<>();
            }
            run.add(segment);
        }
        runs.add(new Curve(run));
        Point start = joined.get(0).start();
        boolean closed =
                joined.size() > 1 && joined.get(joined.size() - 1).end().equals(start);
        return new Pen(id, runs, closed);
    }

    private static double bend(Segment a, Segment b) {
        if (a.length() == 0 || b.length() == 0) {
            return 0;
        }
        return Turns.degrees(a.tangent(1), b.tangent(0));
    }

    /** The straight line that this is, if it is nothing else. */
    boolean isLine() {
        return runs.size() == 1 && !closed && isStraight(runs.get(0));
    }

    static boolean isStraight(Curve run) {
        double chord = run.start().distance(run.end());
        return chord > 0 && run.length() < 1.002 * chord;
    }

    static Line chord(Curve run) {
        return new Line(run.start(), run.end());
    }

    List<Segment> segments() {
        return runs.stream().flatMap(r -> r.segments().stream()).toList();
    }
}
