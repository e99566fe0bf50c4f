package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;

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

    private static final Set<EdgeRole> ROLES = EnumSet.of(EdgeRole.WAIST, EdgeRole.HEM);

    /** A run that lies off what was there by no more was not trued, mm. */
    private static final double UNTOUCHED = 1e-6;

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
        for (int i = 0; i < is.edges().size(); i++) {
            List<Curve> before = stretches(was, i);
            List<Curve> after = stretches(is, i);
            for (int k = 0; before.size() == after.size() && k < after.size(); k++) {
                choice(new Choice(i, k, after.size(), 0, 0), before.get(k), after.get(k))
                        .ifPresent(choices::add);
            }
        }
        return new OneCurve(choices);
    }

    private static Optional<Choice> choice(Choice place, Curve was, Curve is) {
        boolean meant = is.length() >= SHORTEST
                && is.length() <= LONGEST
                && isWithoutCorner(was)
                && isApart(was, is, UNTOUCHED);
        return meant
                ? HANDLES.stream()
                        .flatMap(handles -> nearest(place, was, is, handles).stream())
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

    private static Optional<Choice> nearest(Choice place, Curve was, Curve is, double[] handles) {
        Optional<Choice> best = Optional.empty();
        double least = reach(was, is);
        for (double first : handles) {
            for (double second : handles) {
                Choice choice = new Choice(place.edge(), place.stretch(), place.of(), first, second);
                Curve drawn = drawn(is, choice);
                double off = apart(was, drawn, least);
                if (off < least && isCalm(was, is, drawn)) {
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
    private static double reach(Curve was, Curve is) {
        double moved = Math.max(was.start().distance(is.start()), was.end().distance(is.end()));
        return Math.max(NEAR, BEGUN * moved);
    }

    /**
     * Whether a curve goes from hollow to round no oftener than what was there; where its ends ask for more, once, and no
     * oftener than what bends near one end only.
     */
    private static boolean isCalm(Curve was, Curve bent, Curve drawn) {
        return turns(drawn) <= Math.max(turns(was), Math.min(1, turns(bent)));
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
            List<Curve> runs = stretches(is, choice.edge());
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
        for (int i = 0; i < is.edges().size(); i++) {
            List<Curve> before = stretches(was, i);
            List<Curve> after = stretches(is, i);
            for (int k = 0; before.size() == after.size() && k < after.size(); k++) {
                double off = apart(before.get(k), after.get(k));
                if (off > UNTOUCHED && after.get(k).segments().size() > 1) {
                    return OptionalDouble.empty();
                }
                most = Math.max(most, off);
            }
        }
        return most > UNTOUCHED ? OptionalDouble.of(most) : OptionalDouble.empty();
    }

    /** Whether what was drawn in one curve came to lie too far from the line that was there. */
    static boolean strays(Piece was, Piece is) {
        for (int i = 0; i < is.edges().size(); i++) {
            List<Curve> before = stretches(was, i);
            List<Curve> after = stretches(is, i);
            for (int k = 0; before.size() == after.size() && k < after.size(); k++) {
                if (after.get(k).segments().size() == 1
                        && isApart(before.get(k), after.get(k), reach(before.get(k), after.get(k)))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The other end of what was drawn in one curve from a place; empty where nothing was. */
    static Optional<Point> beside(Piece was, Piece is, Edge edge, Point place) {
        int number = is.edges().indexOf(edge);
        List<Curve> before = stretches(was, number);
        List<Curve> after = stretches(is, number);
        for (int k = 0; before.size() == after.size() && k < after.size(); k++) {
            Curve run = after.get(k);
            if (run.segments().size() == 1 && isApart(before.get(k), run, UNTOUCHED)) {
                if (run.start().distance(place) <= Shift.ON_OUTLINE) {
                    return Optional.of(run.end());
                }
                if (run.end().distance(place) <= Shift.ON_OUTLINE) {
                    return Optional.of(run.start());
                }
            }
        }
        return Optional.empty();
    }

    /**
     * What lies between the ends of a waist or hem and the mouths of its darts; nothing of another edge. Where a dart
     * begins at the end of the edge or at another dart, nothing lies between.
     */
    static List<Curve> stretches(Piece piece, int number) {
        Edge edge = piece.edges().get(number);
        if (!ROLES.contains(edge.role())) {
            return List.of();
        }
        Curve line = edge.on(piece.outline());
        List<Point> ends = new ArrayList<>(List.of(line.start(), line.end()));
        for (Dart dart : piece.darts()) {
            if (lies(line, dart.mouth1()) && lies(line, dart.mouth2())) {
                ends.add(dart.mouth1());
                ends.add(dart.mouth2());
            }
        }
        ToDoubleFunction<Point> along = p -> p.equals(line.end())
                ? line.length()
                : line.lengthTo(line.nearest(p).place());
        ends.sort(Comparator.comparingDouble(along));
        List<Curve> all = new ArrayList<>();
        for (int i = 0; i < ends.size(); i += 2) {
            // From a place to itself the run of an outline is all of it.
            if (along.applyAsDouble(ends.get(i + 1)) - along.applyAsDouble(ends.get(i)) > Fewer.CRUMB) {
                Curve run = Redraw.run(piece.outline(), new Stretch(ends.get(i), ends.get(i + 1)));
                List<Segment> segments = Fewer.withoutCrumbs(run.segments());
                if (!segments.isEmpty()) {
                    all.add(new Curve(segments));
                }
            }
        }
        return all;
    }

    private static boolean lies(Curve line, Point p) {
        return line.nearest(p).distance() <= Shift.ON_OUTLINE;
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

    /** The farthest that either line lies from the other, mm. */
    static double apart(Curve one, Curve other) {
        return apart(one, other, Double.POSITIVE_INFINITY);
    }

    /** The same, or as much of it as is known by then once it is enough. */
    static double apart(Curve one, Curve other, double enough) {
        double there = off(one, other, enough);
        return there >= enough ? there : Math.max(there, off(other, one, enough));
    }

    /** Whether one of them somewhere lies farther from the other than so much, mm. */
    private static boolean isApart(Curve one, Curve other, double by) {
        return apart(one, other, Math.nextUp(by)) > by;
    }

    private static double off(Curve from, Curve to, double enough) {
        double most = 0;
        for (Segment segment : from.segments()) {
            for (double t = 0; t <= 1; t += 0.0625) {
                most = Math.max(most, to.nearest(segment.at(t)).distance());
                if (most >= enough) {
                    return most;
                }
            }
        }
        return most;
    }

    private static Stroke stroke(Piece is, Curve run, Curve drawn) {
        List<RunStroke.Mark> marks = new ArrayList<>();
        for (Notch notch : is.notches()) {
            if (lies(run, notch.at())) {
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
