package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.text.LengthUnit;

/** A square of known size to measure both ways, with one of the other unit inside. */
final class TestSquare {
    /** Sides, mm: for users of centimetres 10 cm with 2 in inside, for users of inches 4 in with 5 cm inside. */
    static final double METRIC = 100;

    static final double INCHES = 4 * 25.4;

    private TestSquare() {}

    static double side(LengthUnit unit) {
        return unit == LengthUnit.INCH ? INCHES : METRIC;
    }

    /** The line of the bundle that says how to check a print by it. */
    static String words(LengthUnit unit) {
        return unit == LengthUnit.INCH ? "print.plan.square-inch" : "print.plan.square";
    }

    /** The square with its upper left corner at 0, 0. */
    static Picture of(LengthUnit unit) {
        boolean inch = unit == LengthUnit.INCH;
        double side = side(unit);
        double inner = inch ? 50 : 2 * 25.4;
        double step = inch ? 25.4 / 2 : 10;
        Pencil pencil = new Pencil();
        for (int i = 1; i * step < side - 1; i++) {
            double tick = i % (inch ? 2 : 5) == 0 ? 4 : 2;
            pencil.line(i * step, 0, i * step, tick, Pen.CONTROL).line(0, i * step, tick, i * step, Pen.CONTROL);
        }
        pencil.box(new Box(0, 0, side, side), Pen.CONTROL);
        pencil.box(new Box(side - inner, side - inner, side, side), Pen.CONTROL);
        label(pencil, inch ? "4 in" : "10 cm", side / 2, (side - inner) / 2, 6);
        double middle = side - inner / 2;
        label(pencil, inch ? "5 cm" : "2 in", middle, middle, 5);
        return pencil.picture();
    }

    /** A size in the middle of its square, or of the band above the one inside. */
    private static void label(Pencil pencil, String text, double x, double y, double size) {
        pencil.write(text, new Point(x, y + size / 3), size, Anchor.MIDDLE, 0, true, Tone.BLACK);
    }
}
