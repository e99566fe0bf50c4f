package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A changed seam bowed a little more or less between its fixed point and the level. The taper is solved anew, so to speak:
 * at both ends of the stretch place and direction stay as they are.
 */
final class SeamBow {
    /** A turn smaller than this is rounding, radians. */
    private static final double STRAIGHT = 1e-6;

    private static final int LOOKS = 16;

    private final Piece piece;
    private final Shift shift;

    private SeamBow(Piece piece, Shift shift) {
        this.piece = piece;
        this.shift = shift;
    }

    /**
     * On one of the two stretches on which a change dies away; empty where it does not.
     *
     * @param moved   the run that the change moves
     * @param shorter the shorter of both, else the longer
     * @param changed whether the piece has the run as it is after the change, else as it was
     */
    static Optional<SeamBow> on(Piece piece, Moved moved, boolean shorter, boolean changed) {
        return stretch(moved, shorter, changed).map(stretch -> bow(piece, stretch.run(), stretch.along()));
    }

    /**
     * Where the seam has to be parted before the change is made, so that a bow can be laid on it afterwards: a taper over
     * two segments is not quite what it is over one, and would not come back.
     */
    static Optional<Point> parting(Moved moved, boolean shorter) {
        return stretch(moved, shorter, false)
                .map(stretch -> stretch.run().segments())
                .filter(run -> run.size() == 1)
                .map(run -> run.get(0).at(0.5));
    }

    /** A run, and the direction in which the change moves it. */
    private record Stretch(Curve run, Point along) {}

    private static Optional<Stretch> stretch(Moved moved, boolean shorter, boolean changed) {
        List<Segment> was = moved.before().segments();
        List<Segment> is = moved.after().segments();
        int n = is.size();
        int peak = 0;
        double most = 0;
        for (int i = 1; i < n; i++) {
            double by = was.get(i).start().distance(is.get(i).start());
            if (by > most) {
                most = by;
                peak = i;
            }
        }
        if (peak == 0) {
            return Optional.empty();
        }
        Point along = is.get(peak).start().minus(was.get(peak).start()).unit();
        List<Segment> now = changed ? is : was;
        Curve first = new Curve(now.subList(0, peak));
        Curve second = new Curve(now.subList(peak, n));
        return Optional.of(new Stretch(first.length() > second.length() != shorter ? first : second, along));
    }

    private static SeamBow bow(Piece piece, Curve stretch, Point along) {
        Outline outline = piece.outline();
        for (Segment s : stretch.segments()) {
            outline = outline.splitAt(SlashPlaces.near(outline, s.start()));
            outline = outline.splitAt(SlashPlaces.near(outline, s.end()));
        }
        int from = SlashPlaces.near(outline, stretch.start()).segment();
        int to = SlashPlaces.near(outline, stretch.end()).segment();
        Point square = along.quarterTurned();
        List<Integer> run = new ArrayList<>();
        int n = outline.segments().size();
        double whole = 0;
        for (int i = from; i != to; i = (i + 1) % n) {
            run.add(i);
            whole += rise(outline, i, square);
        }
        double[][] weights = new double[n][];
        double done = 0;
        for (int k : run) {
            double before = done / whole;
            done += rise(outline, k, square);
            weights[k] = weights(outline.segments().get(k), before, Math.min(1, done / whole), whole, square);
        }
        return new SeamBow(piece, new Shift(outline, along, weights));
    }

    private static double rise(Outline outline, int i, Point square) {
        Segment s = outline.segments().get(i);
        return Math.abs(square.dot(s.end().minus(s.start())));
    }

    /** The Hermite cubic in the segment's own parameter with the values and slopes of 16τ²(1 − τ)² at its ends. */
    private static double[] weights(Segment s, double before, double after, double whole, Point square) {
        Point c1 = s instanceof Cubic c ? c.control1() : s.start().towards(s.end(), 1 / 3.0);
        Point c2 = s instanceof Cubic c ? c.control2() : s.start().towards(s.end(), 2 / 3.0);
        double sign = Math.signum(square.dot(s.end().minus(s.start())));
        double in = slope(before) * sign * square.dot(c1.minus(s.start())) / whole;
        double out = slope(after) * sign * square.dot(s.end().minus(c2)) / whole;
        return new double[] {value(before), value(before) + in, value(after) - out, value(after)};
    }

    private static double value(double t) {
        return 16 * t * t * (1 - t) * (1 - t);
    }

    private static double slope(double t) {
        return 32 * t * (1 - t) * (1 - 2 * t);
    }

    Piece by(double mm) {
        return Carry.along(piece, shift, mm);
    }

    List<Moved> moved(double mm) {
        return shift.moved(piece.id(), mm);
    }

    /** How often an edge turns from bending one way to bending the other. */
    static int inflections(Pattern pattern, EdgeRef ref) {
        Piece piece = pattern.piece(ref.piece()).orElseThrow();
        return inflections(piece.edge(ref.edge()).orElseThrow().on(piece.outline()));
    }

    /** The same of any line. */
    static int inflections(Curve line) {
        int count = 0;
        double bend = 0;
        Point last = null;
        for (Segment s : line.segments()) {
            for (int i = 0; i <= LOOKS; i++) {
                Point now = s.tangent(i / (double) LOOKS);
                double turn = last == null ? 0 : Math.atan2(last.cross(now), last.dot(now));
                if (Math.abs(turn) > STRAIGHT) {
                    count += turn * bend < 0 ? 1 : 0;
                    bend = turn;
                }
                last = now;
            }
        }
        return count;
    }
}
