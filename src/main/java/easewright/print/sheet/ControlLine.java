package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Picture;
import easewright.print.ink.Tone;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Map;

/**
 * A long straight line of stated length, across or down: a test square proves one sheet, this proves the joining.
 *
 * @param length mm
 */
record ControlLine(Point from, boolean down, double length) {
    private static final double TICK = 2.5;
    private static final double WRITING = 5.5;

    /** The longest line of whole centimetres, or inches, that ends before {@code end}. */
    static ControlLine of(Point from, boolean down, double end, LengthUnit unit) {
        double room = end - (down ? from.y() : from.x());
        // Tenths of a millimetre are whole numbers, so that no length is a rounded one.
        int step = unit == LengthUnit.INCH ? 254 : 100;
        double steps = Math.max(1, Math.floor(room * 10 / step + 1e-9));
        return new ControlLine(from, down, steps * step / 10);
    }

    Point to() {
        return down ? from.plus(new Point(0, length)) : from.plus(new Point(length, 0));
    }

    /** What it takes with its writing. */
    Box box() {
        Point end = to();
        return down
                ? new Box(from.x() - WRITING, from.y() - 1, end.x() + TICK + 1, end.y() + 1)
                : new Box(from.x() - 1, from.y() - WRITING, end.x() + 1, end.y() + TICK + 1);
    }

    double distance(Point place) {
        return Box.around(List.of(from, to())).distance(place);
    }

    /** @param joined whether it runs over several sheets */
    Picture picture(Words words, boolean joined) {
        Point along = to().minus(from).unit();
        Point side = along.quarterTurned().times(TICK);
        Pencil pencil = new Pencil().line(from, to(), Pen.CONTROL);
        for (Point end : List.of(from, to())) {
            pencil.line(end.minus(side), end.plus(side), Pen.CONTROL);
        }
        pencil.arrowHead(from, along.times(-1), 3, Tone.BLACK).arrowHead(to(), along, 3, Tone.BLACK);
        Point reading = down ? along.times(-1) : along;
        Point start = down ? to() : from;
        Point at = start.plus(reading.times(6)).plus(reading.quarterTurned().times(-1.1));
        String text = words.of(joined ? "print.control" : "print.control-one", Map.of("length", length));
        double turn = Math.atan2(reading.y(), reading.x());
        return pencil.write(text, at, 3.2, Anchor.START, turn, false, Tone.DARK).picture();
    }
}
