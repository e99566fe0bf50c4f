package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import java.util.ArrayList;
import java.util.List;

/** An arrow down to the top of a piece that lies upside down, with the word beside it. */
final class TopArrow {
    private static final double LENGTH = 12;
    private static final double LETTERS = 5;
    /** Room that the arrow and its word take across, mm. */
    private static final double WIDE = 24;

    private static final double STEP = 3;

    private TopArrow() {}

    /**
     * Draws it where the lower end of the piece is wide enough for it.
     *
     * @param corners of the piece on the sheet
     * @return stretches that nothing else should be written across, as pairs of ends
     */
    static List<Point[]> draw(Pencil pencil, List<Point> corners, String word) {
        Box box = Box.around(corners);
        Point tip = new Point(box.centre().x(), box.maxY() - STEP);
        for (double y = box.maxY() - STEP; y > box.centre().y(); y -= STEP) {
            Point middle = middle(corners, y - LENGTH / 2);
            if (middle != null) {
                tip = new Point(middle.x() - WIDE / 4, y);
                break;
            }
        }
        Point tail = tip.minus(new Point(0, LENGTH));
        Point beside = tip.plus(new Point(3, -LENGTH / 2 + LETTERS * 0.35));
        pencil.line(tail, tip, Pen.GRAIN).arrowHead(tip, new Point(0, 1), 5, Tone.BLACK);
        pencil.write(word, beside, LETTERS, Anchor.START, 0, true, Tone.BLACK);
        return List.of(new Point[] {tail, tip}, new Point[] {beside, beside.plus(new Point(WIDE / 2, 0))});
    }

    /** Of the widest part of the piece at a height; null where that is too narrow. */
    private static Point middle(List<Point> corners, double y) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if (a.y() > y != b.y() > y) {
                crossings.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
            }
        }
        double[] xs = crossings.stream().mapToDouble(x -> x).sorted().toArray();
        Point best = null;
        double widest = WIDE;
        for (int i = 0; i + 1 < xs.length; i += 2) {
            if (xs[i + 1] - xs[i] >= widest) {
                widest = xs[i + 1] - xs[i];
                best = new Point((xs[i] + xs[i + 1]) / 2, y);
            }
        }
        return best;
    }
}
