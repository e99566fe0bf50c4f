package easewright.evidence;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import easewright.topology.Meeting;
import easewright.topology.Validity;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.analysis.solvers.LaguerreSolver;
import org.apache.commons.math3.complex.Complex;

/** Where levels meet outlines, and what is inside, by other engines. */
class LevelsTest extends Topic {
    private static final Source AREA = Source.calculated("java.awt.geom.Area, within a strip of 0.0001 mm");
    private static final Source COMMONS = Source.calculated("Apache Commons Geometry 1.0, 4096 chords");
    private static final Source ROOTS = Source.calculated("Apache Commons Math 3.6.1, LaguerreSolver");
    private static final Source FORM = Source.calculated("closed form");
    private static final Level HIP = Level.of("hip", LevelKind.HIP);
    private static final double STRIP = 1e-4;

    @Override
    String title() {
        return "Levels across outlines";
    }

    @Override
    String words() {
        return "Widths at levels, crossings with curves, what lies inside, and where an outline meets itself.";
    }

    @Override
    List<Check> checks() throws Exception {
        List<Check> checks = new ArrayList<>();
        for (String id : List.of("half-skirt", "kite", "oval", "turned", "patch")) {
            Outline outline = Drawn.outline(Drawn.shapes().shape(id).orElseThrow());
            double top = outline.box().minY();
            double height = outline.box().height();
            for (double share : new double[] {0.31, 0.72}) {
                double y = top + share * height;
                String subject = String.format(java.util.Locale.ROOT, "%s, %.0f %% down", id, 100 * share);
                double got = width(outline, y);
                checks.add(Check.number(
                        "width of " + subject,
                        AREA,
                        "mm",
                        Awt.width(new Area(Awt.path(outline.segments())), y, STRIP),
                        got,
                        1e-3));
                double[] meetings = Commons.meetings(outline, y);
                checks.add(Check.number(
                        "width of " + subject, COMMONS, "mm", meetings[meetings.length - 1] - meetings[0], got, 1e-4));
            }
        }
        checks.addAll(crossings());
        checks.add(inside());
        checks.addAll(selfMeetings());
        return checks;
    }

    private static double width(Outline outline, double y) {
        Point middle = new Point(outline.box().centre().x(), y);
        Piece piece = Piece.bare("p", outline)
                .withLevels(List.of(new LevelMark(
                        "hip",
                        Optional.of(middle),
                        Optional.empty(),
                        0,
                        true,
                        0,
                        LevelMark.Span.ALL,
                        Optional.empty())));
        LevelWidth width = Measures.width(piece, HIP).orElseThrow();
        return width.spans().get(width.spans().size() - 1).to().x()
                - width.spans().get(0).from().x();
    }

    /** Three crossings of an S with a level, as roots of its polynomial. */
    private static List<Check> crossings() {
        Cubic s = (Cubic) Sketch.curve("0,0 (20,90 60,-80) 90,14").segments().get(0);
        double y = 8;
        double[] power = {
            s.start().y() - y,
            3 * (s.control1().y() - s.start().y()),
            3 * (s.start().y() - 2 * s.control1().y() + s.control2().y()),
            s.end().y()
                    - 3 * s.control2().y()
                    + 3 * s.control1().y()
                    - s.start().y()
        };
        double[] roots = java.util.Arrays.stream(new LaguerreSolver(1e-14).solveAllComplex(power, 0.4))
                .filter(z -> Math.abs(z.getImaginary()) < 1e-9)
                .mapToDouble(Complex::getReal)
                .filter(t -> t >= 0 && t <= 1)
                .sorted()
                .toArray();
        List<Double> found = s.crossings(new Point(0, y), new Point(1, 0));
        List<Check> checks = new ArrayList<>();
        checks.add(Check.words("crossings of an S with a level", ROOTS, "" + roots.length, "" + found.size()));
        for (int i = 0; i < roots.length; i++) {
            checks.add(Check.number("parameter of crossing " + (i + 1), ROOTS, "", roots[i], found.get(i), 1e-10));
        }
        return checks;
    }

    private static Check inside() {
        Outline blob = Sketch.randomBlob(new Random(3), 9, 100);
        Path2D path = Awt.path(blob.segments());
        Random random = new Random(17);
        int alike = 0;
        for (int i = 0; i < 2000; i++) {
            Point p = Sketch.randomPoint(random, 280).minus(new Point(140, 140));
            alike += path.contains(p.x(), p.y()) == blob.contains(p) ? 1 : 0;
        }
        return Check.words(
                "2000 random places, inside a smooth outline or not (seeds 3, 17)",
                Source.calculated("java.awt.geom.Path2D.contains"),
                "2000 alike",
                alike + " alike");
    }

    /** A bow tie, and the cubic that crosses itself on its axis at (½, 3/16 · height …): solved by hand below. */
    private static List<Check> selfMeetings() {
        List<Meeting> tie = Validity.meetings(Sketch.outline("0,0 100,60 100,0 0,60"));
        // x(t) = 3t(1−t)²·2 − 3t²(1−t) + t³ and y(t) = 3t(1−t): equal for t and 1−t, so x(t) = ½ there:
        // 10t³ − 15t² + 6t = ½ has t = ½ and t² − t + 1/10 = 0, where y = 3/10.
        List<Meeting> loop = Validity.meetings(Sketch.outline("0,0 (2,1 -1,1) 1,0 0.5,-1"));
        return List.of(
                Check.words("a bow tie meets itself", FORM, "once", tie.size() == 1 ? "once" : tie.size() + " times"),
                Check.number(
                        "x of the meeting", FORM, "mm", 50, tie.get(0).point().x(), 1e-9),
                Check.number(
                        "y of the meeting", FORM, "mm", 30, tie.get(0).point().y(), 1e-9),
                Check.words(
                        "a looped cubic meets itself",
                        FORM,
                        "once",
                        loop.size() == 1 ? "once" : loop.size() + " times"),
                Check.number(
                        "x of the meeting", FORM, "mm", 0.5, loop.get(0).point().x(), 1e-9),
                Check.number(
                        "y of the meeting", FORM, "mm", 0.3, loop.get(0).point().y(), 1e-9));
    }
}
