package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Draws a piece anew after its stitching line was trued: the outline, where that is the stitching line itself; else the
 * cutting line, at its allowance from it and with its corners made as they were. Only the stretch that differs is drawn
 * anew, so that it can be taken back to the last bit. Lines drawn beside the outline follow.
 */
final class Redraw {
    /** The cutting line gives back the stitching line that it was drawn around within this, mm. */
    private static final double EXACT = 0.004;

    /** How far beyond a corner the line at an allowance may differ, in allowances. */
    private static final double REACH = 2;

    /** How much farther a stretch is led on where it does not end well, mm. */
    private static final double[] MORE = {0, 8, 20};

    private static final int LOOKS = 4;

    private final Piece drawn;
    private final Piece was;
    private final Piece is;
    private final Outline closedWas;
    private final Outline closedIs;

    /**
     * @param drawn as it is drawn
     * @param was   the same drawn by its stitching line
     * @param is    that one trued
     */
    private Redraw(Piece drawn, Piece was, Piece is) {
        this.drawn = drawn;
        this.was = was;
        this.is = is;
        closedWas = Crumbs.swept(LedOn.over(was).outline());
        closedIs = Crumbs.swept(LedOn.over(is).outline());
    }

    static List<Stroke> strokes(Piece drawn, Piece was, Piece is) throws Refusal {
        Redraw redraw = new Redraw(drawn, was, is);
        return drawn.drawn() == LineKind.STITCHING ? redraw.stitched() : redraw.cut();
    }

    /** The drawn line is the stitching line: the run is the trued one, and a cutting line beside it is led around it. */
    private List<Stroke> stitched() throws Refusal {
        List<Stroke> strokes = new ArrayList<>();
        for (Stretch stretch : Stretch.changed(drawn.outline(), is.outline(), 0)) {
            Curve before = run(drawn.outline(), stretch);
            Curve after = run(is.outline(), stretch);
            List<Segment> run = Fewer.withoutCrumbs(after.segments());
            strokes.add(new RunStroke(drawn.id(), before.segments(), run, marks(before)));
        }
        strokes.addAll(new Riders(drawn, strokes).strokes(this::ledAround));
        return strokes;
    }

    private List<RunStroke.Mark> marks(Curve before) {
        List<RunStroke.Mark> marks = new ArrayList<>();
        for (int i = 0; i < was.edges().size(); i++) {
            add(marks, before, was.edges().get(i).from(), is.edges().get(i).from());
            add(marks, before, was.edges().get(i).to(), is.edges().get(i).to());
        }
        for (int i = 0; i < was.notches().size(); i++) {
            add(marks, before, was.notches().get(i).at(), is.notches().get(i).at());
        }
        for (int i = 0; i < was.darts().size(); i++) {
            add(marks, before, was.darts().get(i).mouth1(), is.darts().get(i).mouth1());
            add(marks, before, was.darts().get(i).mouth2(), is.darts().get(i).mouth2());
        }
        return marks;
    }

    static void add(List<RunStroke.Mark> marks, Curve before, Point from, Point to) {
        RunStroke.Mark mark = new RunStroke.Mark(from, to);
        if (!from.equals(to) && !marks.contains(mark) && before.nearest(from).distance() <= Shift.ON_OUTLINE) {
            marks.add(mark);
        }
    }

    private List<Stroke> cut() throws Refusal {
        double widest =
                drawn.edges().stream().mapToDouble(drawn::allowanceInside).reduce(drawn.allowance(), Math::max);
        List<Stroke> strokes = new ArrayList<>();
        for (Stretch stretch : Stretch.changed(closedWas, closedIs, REACH * widest + 1)) {
            strokes.add(cut(stretch));
        }
        Piece done = drawn;
        for (Stroke stroke : strokes) {
            done = stroke.on(done);
        }
        requireExact(done);
        strokes.addAll(new Riders(drawn, strokes).strokes(this::followed));
        return strokes;
    }

    /** Where a stretch ends beside a bend of the cutting line, what lies across from its end is not sure: farther on it is. */
    private Stroke cut(Stretch stretch) throws Refusal {
        Refusal first = null;
        for (double more : MORE) {
            try {
                return new CutCorner(drawn, was, is, closedWas, closedIs, stretch.ledOn(closedIs, more)).stroke();
            } catch (Refusal refusal) {
                first = first == null ? refusal : first;
            }
        }
        throw first;
    }

    private void requireExact(Piece done) throws Refusal {
        Outline found = LedOn.over(SewnCopy.of(StitchOutline.of(done))).outline();
        for (Segment segment : closedIs.segments()) {
            for (int k = 0; k < LOOKS; k++) {
                Point p = segment.at((k + 0.5) / LOOKS);
                if (!inMouth(is, p) && found.nearest(p).distance() > EXACT) {
                    throw Refusal.of("allowance-not-redrawn").with("piece", drawn.name());
                }
            }
        }
    }

    /** A stitching line drawn inside the cutting line is the trued one. */
    private Optional<List<Segment>> followed(List<Segment> line) {
        return new Spliced(closedWas, closedIs, Spliced.LIES_ON, p -> false)
                .along(line, Stretch.changed(closedWas, closedIs, 0));
    }

    /**
     * A cutting line drawn around the outline is led around the trued one: where it lay at its allowance to the last
     * hair with nothing else touched, and where somebody drew it nearly so.
     */
    private Optional<List<Segment>> ledAround(List<Segment> line) {
        Outline own = new Outline(line);
        Piece foldedWas = was.withOutline(Crumbs.swept(FoldedOver.outline(was)));
        Piece foldedIs = is.withOutline(Crumbs.swept(FoldedOver.outline(is)));
        for (double close : new double[] {Spliced.LIES_ON, Cutting.SAME}) {
            for (boolean turnedUp : new boolean[] {true, false}) {
                Optional<Outline> old = Around.of(foldedWas, turnedUp);
                Optional<Outline> now = Around.of(foldedIs, turnedUp);
                if (old.isPresent() && now.isPresent()) {
                    boolean same = old.get().signedArea() * own.signedArea() > 0;
                    Outline from = same ? old.get() : old.get().reversed();
                    Outline to = same ? now.get() : now.get().reversed();
                    Spliced spliced = new Spliced(from, to, close, this::isOverMouth);
                    Optional<List<Segment>> led = spliced.along(line, Stretch.changed(from, to, 1));
                    if (led.isPresent()) {
                        return led;
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** What lies over the mouth of a dart is drawn in many ways: straight, in a cap, or pointed. */
    private boolean isOverMouth(Point p) {
        return was.darts().stream()
                .anyMatch(d -> d.edge().isPresent()
                        && inMouth(was, closedWas.nearest(p).point()));
    }

    /** Whether a segment is a part of the leg of a dart that is cut out. */
    static boolean isLeg(Dart dart, Segment segment) {
        Point middle = segment.at(0.5);
        return Stream.of(dart.mouth1(), dart.mouth2())
                .map(mouth -> new Line(mouth, dart.point()))
                .anyMatch(leg -> leg.at(leg.nearest(middle)).distance(middle) <= Shift.ON_OUTLINE);
    }

    static Curve run(Outline outline, Stretch stretch) {
        return outline.run(
                outline.nearest(stretch.from()).place(),
                outline.nearest(stretch.to()).place());
    }

    /** Whether a place lies within the mouth of a dart. */
    static boolean inMouth(Piece piece, Point p) {
        for (Dart dart : piece.darts()) {
            double wide = dart.intake();
            if (dart.mouth1().distance(p) <= wide && dart.mouth2().distance(p) <= wide) {
                return true;
            }
        }
        return false;
    }
}
