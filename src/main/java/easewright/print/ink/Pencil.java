package easewright.print.ink;

import easewright.geom.Box;
import easewright.geom.Chain;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Mark.Fill;
import easewright.print.ink.Mark.Stroke;
import easewright.print.ink.Mark.Writing;
import java.util.ArrayList;
import java.util.List;

/** Draws pictures, mark by mark. */
public final class Pencil {
    /** Control places of a quarter circle, as a share of the radius; 2.7e-4 of the radius off at worst. */
    private static final double QUARTER = 4 * (Math.sqrt(2) - 1) / 3;

    private final List<Mark> marks = new ArrayList<>();

    public Picture picture() {
        return new Picture(marks);
    }

    public Pencil add(Picture picture) {
        marks.addAll(picture.marks());
        return this;
    }

    public Pencil line(Point from, Point to, Pen pen) {
        return run(List.of(new Line(from, to)), pen);
    }

    public Pencil line(double x0, double y0, double x1, double y1, Pen pen) {
        return line(new Point(x0, y0), new Point(x1, y1), pen);
    }

    public Pencil run(List<Segment> run, Pen pen) {
        marks.add(new Stroke(run, false, pen));
        return this;
    }

    /** A closed line. */
    public Pencil around(Outline outline, Pen pen) {
        marks.add(new Stroke(outline.segments(), true, pen));
        return this;
    }

    public Pencil along(Chain chain, Pen pen) {
        return run(chain.segments(), pen);
    }

    public Pencil box(Box box, Pen pen) {
        return around(rectangle(box), pen);
    }

    public Pencil fill(Outline outline, Tone tone) {
        marks.add(new Fill(outline.segments(), tone));
        return this;
    }

    public Pencil fill(Box box, Tone tone) {
        return fill(rectangle(box), tone);
    }

    /** A filled triangle whose tip lies at {@code tip} and points along {@code direction}. */
    public Pencil arrowHead(Point tip, Point direction, double length, Tone tone) {
        Point along = direction.unit();
        Point back = tip.minus(along.times(length));
        Point side = along.quarterTurned().times(length / 3);
        return fill(Outline.polygon(List.of(tip, back.plus(side), back.minus(side))), tone);
    }

    public Pencil write(String text, double x, double y, double size, Tone tone) {
        return write(text, new Point(x, y), size, Anchor.START, 0, false, tone);
    }

    public Pencil writeBold(String text, double x, double y, double size, Tone tone) {
        return write(text, new Point(x, y), size, Anchor.START, 0, true, tone);
    }

    public Pencil write(String text, Point at, double size, Anchor anchor, double turn, boolean bold, Tone tone) {
        if (!text.isBlank()) {
            marks.add(new Writing(text, at, size, anchor, turn, bold, tone));
        }
        return this;
    }

    public static Outline rectangle(Box box) {
        return Outline.polygon(List.of(
                new Point(box.minX(), box.minY()),
                new Point(box.maxX(), box.minY()),
                new Point(box.maxX(), box.maxY()),
                new Point(box.minX(), box.maxY())));
    }

    /** A circle of four cubics. */
    public static Outline circle(Point centre, double radius) {
        Point[] ends = {
            new Point(radius, 0),
            new Point(0, radius),
            new Point(-radius, 0),
            new Point(0, -radius),
            new Point(radius, 0)
        };
        List<Segment> quarters = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Point from = ends[i];
            Point to = ends[i + 1];
            quarters.add(new Cubic(
                    centre.plus(from),
                    centre.plus(from).plus(to.times(QUARTER)),
                    centre.plus(to).plus(from.times(QUARTER)),
                    centre.plus(to)));
        }
        return new Outline(quarters);
    }
}
