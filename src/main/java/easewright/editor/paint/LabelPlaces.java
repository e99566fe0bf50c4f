package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where the label of a level might stand, whatever else is on the table: each list the best first. All in pixels; a place
 * is the middle of the label there.
 *
 * @param chosen whether the level is at work: its ends have grips, which the label keeps off
 * @param width  of the label
 * @param seen   what is seen of the level
 * @param off    the way off the paper, up or down, from a level along the edge of its piece
 */
record LabelPlaces(boolean chosen, double width, double height, Line seen, Optional<Point> off) {
    /** How far from the middle of its line a label may stand, as parts of what there is, the best first. */
    private static final double[] PARTS = {0.25, 0.5, 0.75, 1};

    /** Along a line beside which it stands. */
    private static final double[] ALONG = {
        0.5, 0.39, 0.61, 0.28, 0.72, 0.33, 0.67, 0.305, 0.695, 0.44, 0.56, 0.22, 0.78, 0.17, 0.83
    };

    /** The same where it stands close to its line, which comes last: between a dart and a seam there may be just room. */
    private static final double CLOSER = 0.025;

    private static final double FARTHEST = 0.34;

    /** Between a label and what it keeps off. */
    private static final double EDGE = 6;

    /** So much farther off the paper a label may stand, clear of the cutting line. */
    private static final double OUTWARD = 24;

    /** How far beside its line, as parts of what is just clear of a level one. */
    private static final double[] FARTHER = {1, 1.4, 1.9};

    /** How much farther off the end of its line, clear of the cutting line. */
    private static final double[] BEYOND = {0, 9, 18};

    /** How much farther off the end of its line it may stand on a leader, and how far above or below, as parts of its height. */
    private static final double[] LED = {6, 22, 44, 72};

    private static final double[] STEPS = {-1.2, 1.2, -2.4, 2.4, -3.6, 3.6};

    /**
     * How far beyond the end of its line the middle of a label may lie that stands well above or below it, as parts of its
     * width: a leader straight down from the end would run along the seam; so it may only in a hollow such as an armhole.
     */
    private static final double[] UNDER = {0.5, 0.8, -0.5, -0.8, 0.2};

    /** A longer leader is not followed by the eye. */
    private static final double LONGEST = 120;

    /** Just off the paper from a level along its edge, or on its line, the best first. */
    List<Point> onLine() {
        List<Point> middles = new ArrayList<>(offPaper());
        double roomy = seen.length() - width - 2 * EDGE;
        if (roomy > 0) {
            middles.addAll(along(roomy / 2));
        }
        return middles;
    }

    /** Just off the paper from a level along its edge, the nearest first. */
    List<Point> offPaper() {
        return off.map(this::offPaper).orElse(List.of());
    }

    /** Beyond either end of its line. */
    List<Point> offEnds() {
        double just = reach();
        List<Point> middles = new ArrayList<>();
        for (double beyond : BEYOND) {
            Point out = along().times(just + beyond);
            middles.add(seen.end().plus(out));
            middles.add(seen.start().minus(out));
        }
        if (chosen) {
            // In the hollow of an armhole there may be room where there is none beside its level.
            Point out = along().times(just);
            for (double down : new double[] {-height - EDGE, height + EDGE}) {
                middles.add(seen.end().plus(out).plus(new Point(0, down)));
                middles.add(seen.start().minus(out).plus(new Point(0, down)));
            }
        }
        return middles;
    }

    /** Beyond the ends of its line, and well above and below them, the nearest first: a leader tells where it belongs. */
    List<Point> onLeader() {
        List<Led> places = new ArrayList<>();
        for (double beyond : LED) {
            addAtEnds(reach() + beyond, 0, places);
        }
        for (double step : STEPS) {
            for (double under : UNDER) {
                addAtEnds(under * width + Math.signum(under) * EDGE, step * height, places);
            }
        }
        places.sort(Comparator.comparingDouble(Led::length));
        List<Point> middles = new ArrayList<>(places.size());
        places.forEach(led -> middles.add(led.middle()));
        return middles;
    }

    /** A place at the end of a leader of some length. */
    private record Led(Point middle, double length) {}

    private void addAtEnds(double beyond, double down, List<Led> places) {
        Point out = along().times(beyond);
        add(seen.end().plus(out).plus(new Point(0, down)), places);
        add(seen.start().minus(out).plus(new Point(0, down)), places);
    }

    private void add(Point middle, List<Led> places) {
        Point foot = seen.at(seen.nearest(middle));
        double length = LabelRoom.around(middle, width, height).distance(foot);
        if (length <= LONGEST) {
            places.add(new Led(middle, length));
        }
    }

    private double reach() {
        return width / 2 + EDGE + (chosen ? LevelPainter.GRIP / 2 : 0);
    }

    /** Below its line and above it. */
    List<Point> besideLine() {
        Point down = off.orElse(new Point(0, 1));
        double just = chosen ? (height + LevelPainter.GRIP) / 2 + 1 : height / 2 + 4;
        List<Point> middles = new ArrayList<>(2 * ALONG.length * (FARTHER.length + 1));
        for (double away : FARTHER) {
            addBeside(down.times(just * away), middles);
        }
        if (chosen) {
            // Nearer than grips allow, where none are.
            Point near = down.times(height / 2 + 4);
            for (double along = 0; along < FARTHEST; along += CLOSER) {
                addBeside(near, 0.5 - along, middles);
                addBeside(near, 0.5 + along, middles);
            }
        }
        return middles;
    }

    private void addBeside(Point off, List<Point> middles) {
        for (double part : ALONG) {
            addBeside(off, part, middles);
        }
    }

    private void addBeside(Point off, double part, List<Point> middles) {
        middles.add(seen.at(part).plus(off));
        middles.add(seen.at(part).minus(off));
    }

    private Point along() {
        return seen.end().minus(seen.start()).unit();
    }

    /** On the line, its middle first, then by turns to either side as far as the label stays on it. */
    private List<Point> along(double reach) {
        Point middle = seen.at(0.5);
        Point along = along();
        List<Point> middles = new ArrayList<>(List.of(middle));
        for (double part : PARTS) {
            middles.add(middle.minus(along.times(reach * part)));
            middles.add(middle.plus(along.times(reach * part)));
        }
        return middles;
    }

    /** Just off the paper, the nearest place first. */
    private List<Point> offPaper(Point out) {
        Point run = seen.end().minus(seen.start());
        double slope = Math.abs(run.y()) / Math.max(Math.abs(run.x()), 1e-9);
        double clear = height / 2 + EDGE + Math.min(slope, 1) * width / 2;
        Point middle = seen.at(0.5);
        List<Point> middles = new ArrayList<>();
        for (double more = 0; more <= OUTWARD; more += EDGE) {
            middles.add(middle.plus(out.times(clear + more)));
        }
        return middles;
    }
}
