package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.measure.Cutting;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The waist or hem between two places that stay, such as a dart and a side seam, drawn in one smooth curve, as a hand
 * draws it along a curved ruler (common practice), where a truing would bend it near one end only. The curve leaves both
 * ends as the truing has it. It is drawn only where it stays near the line that was there and goes from hollow to round
 * no oftener than that did, unless its ends ask for it.
 *
 * @param choices which stretches are drawn so, and how
 */
record OneCurve(List<Choice> choices) {
    static final OneCurve NONE = new OneCurve(List.of());

    /** It lies as near to the line that was there, mm: as exactly as many sewers work (docs/sources.md 3). */
    static final double NEAR = Cutting.WORKS;

    /** So many times as far as an end was moved it may lie off, since it goes on in the direction that it has there. */
    private static final double BEGUN = 1.25;

    /** Shorter stretches are one bend as they are, mm. */
    private static final double SHORTEST = 24;

    /** Longer ones keep their line farther on: so far a curved ruler reaches (common practice). */
    private static final double LONGEST = 150;

    /**
     * The handles of the curve as shares of the way from end to end. With thirds it bends the least for its ends, and
     * about those it has no tight place; the others come nearer to what was there.
     */
    private static final List<double[]> HANDLES =
            List.of(new double[] {1 / 3.0, 0.31, 0.36, 0.4}, new double[] {0.27, 0.33, 0.42});

    /** What nobody sees is no change from hollow to round, radians. */
    private static final double SEEN = Math.toRadians(0.25);

    private static final int LOOKS = 64;

    /** The stretch of an edge by their numbers, of how many, with the handles of its curve as shares of the way. */
    private record Choice(int edge, int stretch, int of, double first, double second) {}

    OneCurve {
        choices = List.copyOf(choices);
    }

    /**
     * How what a truing has bent may be drawn.
     *
     * @param was a piece drawn by its stitching line
     * @param is  that one trued
     */
    static OneCurve of(Piece was, Piece is) {
        List<Choice> choices = new ArrayList<>();
        TruedRun.all(was, is).forEach(run -> choice(run).ifPresent(choices::add));
        return new OneCurve(choices);
    }

    private static Optional<Choice> choice(TruedRun run) {
        double length = run.is().length();
        boolean meant = length >= SHORTEST && length <= LONGEST && isWithoutCorner(run.was()) && run.isTouched();
        return meant
                ? HANDLES.stream()
                        .flatMap(handles -> nearest(run, handles).stream())
                        .findFirst()
                : Optional.empty();
    }

    /** A corner within is a form of its own. */
    private static boolean isWithoutCorner(Curve was) {
        for (int i = 1; i < was.segments().size(); i++) {
            Point in = was.segments().get(i - 1).tangent(1);
            Point out = was.segments().get(i).tangent(0);
            if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) > Truing.TRUE_WITHIN) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Choice> nearest(TruedRun run, double[] handles) {
        Optional<Choice> best = Optional.empty();
        double least = reach(run);
        for (double first : handles) {
            for (double second : handles) {
                Choice choice = new Choice(run.edge(), run.number(), run.of(), first, second);
                Curve drawn = drawn(run.is(), choice);
                double off = Apart.farthest(run.was(), drawn, least);
                if (off < least && isCalm(run, drawn)) {
                    least = off;
                    best = Optional.of(choice);
                }
            }
        }
        return best;
    }

    /**
     * How far it may lie from the line that was there, mm: by little, or by a little more than its ends were moved, since
     * it begins there.
     */
    private static double reach(TruedRun run) {
        double moved = Math.max(
                run.was().start().distance(run.is().start()),
                run.was().end().distance(run.is().end()));
        return Math.max(NEAR, BEGUN * moved);
    }

    /**
     * Whether a curve goes from hollow to round no oftener than what was there; where its ends ask for more, once, and no
     * oftener than what bends near one end only.
     */
    private static boolean isCalm(TruedRun run, Curve drawn) {
        return turns(drawn) <= Math.max(turns(run.was()), Math.min(1, turns(run.is())));
    }

    private static Curve drawn(Curve is, Choice choice) {
        double way = is.end().distance(is.start());
        Point out = is.segments().get(0).tangent(0).times(way * choice.first());
        Point in = is.segments().get(is.segments().size() - 1).tangent(1).times(way * choice.second());
        return new Curve(
                List.of(new Cubic(is.start(), is.start().plus(out), is.end().minus(in), is.end())));
    }

    /** What draws it on a piece that was trued, where that is in the same stretches. */
    List<Stroke> strokes(Piece is) {
        List<Stroke> strokes = new ArrayList<>();
        for (Choice choice : choices) {
            List<Curve> runs = TruedRun.stretches(is, choice.edge());
            if (runs.size() == choice.of()) {
                Curve run = runs.get(choice.stretch());
                strokes.add(stroke(is, run, drawn(run, choice)));
            }
        }
        return strokes;
    }

    /**
     * The farthest that a trued waist or hem lies from the line that was there, mm, where all that was trued of it is in
     * one curve from each place that stays to the next; empty where it is not.
     */
    static OptionalDouble farthest(Piece was, Piece is) {
        double most = 0;
        for (TruedRun run : TruedRun.all(was, is)) {
            double off = Apart.farthest(run.was(), run.is());
            if (off > TruedRun.UNTOUCHED && !run.isOneCurve()) {
                return OptionalDouble.empty();
            }
            most = Math.max(most, off);
        }
        return most > TruedRun.UNTOUCHED ? OptionalDouble.of(most) : OptionalDouble.empty();
    }

    /** Whether what was drawn in one curve came to lie too far from the line that was there. */
    static boolean strays(Piece was, Piece is) {
        return TruedRun.all(was, is).stream()
                .anyMatch(run -> run.isOneCurve() && Apart.isMoreThan(reach(run), run.was(), run.is()));
    }

    /** The other end of what was drawn in one curve from a place; empty where nothing was. */
    static Optional<Point> beside(Piece was, Piece is, Edge edge, Point place) {
        for (TruedRun run : TruedRun.of(was, is, is.edges().indexOf(edge))) {
            if (run.isOneCurve() && run.isTouched()) {
                Curve drawn = run.is();
                if (drawn.start().distance(place) <= Shift.ON_OUTLINE) {
                    return Optional.of(drawn.end());
                }
                if (drawn.end().distance(place) <= Shift.ON_OUTLINE) {
                    return Optional.of(drawn.start());
                }
            }
        }
        return Optional.empty();
    }

    /** How often a line goes from hollow to round or back, but for what nobody sees. */
    static int turns(Curve line) {
        double length = line.length();
        double turned = 0;
        double sign = 0;
        int turns = 0;
        Point last = null;
        for (int i = 0; i <= LOOKS; i++) {
            Point way = line.pointAtLength(length * Math.min(1, (i + 0.5) / LOOKS))
                    .minus(line.pointAtLength(length * Math.max(0, (i - 0.5) / LOOKS)));
            if (last != null) {
                turned += Math.atan2(last.cross(way), last.dot(way));
                if (Math.abs(turned) > SEEN || turned * sign > 0) {
                    turns += turned * sign < 0 ? 1 : 0;
                    sign = Math.signum(turned);
                    turned = 0;
                }
            }
            last = way;
        }
        return turns;
    }

    private static Stroke stroke(Piece is, Curve run, Curve drawn) {
        List<RunStroke.Mark> marks = new ArrayList<>();
        for (Notch notch : is.notches()) {
            if (TruedRun.lies(run, notch.at())) {
                Place place = run.nearest(notch.at()).place();
                Redraw.add(
                        marks,
                        run,
                        notch.at(),
                        drawn.pointAtLength(run.lengthTo(place) / run.length() * drawn.length()));
            }
        }
        return new RunStroke(is.id(), run.segments(), drawn.segments(), marks);
    }
}
