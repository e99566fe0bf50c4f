package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import java.util.ArrayList;
import java.util.List;

/** Writes a label into a piece, as large as there is room for; along a narrow piece where it does not fit across. */
final class LabelWriter {
    private static final double LEADING = 1.35;
    /** Widths of the label to try, in heights of its body text. */
    private static final double[] WIDTHS = {26, 20, 34, 15, 60};

    private static final double[] LARGE = {1, 0.85, 0.7};
    private static final double[] SMALL = {0.55, 0.45};
    private static final double CLEAR = 3;

    private final List<PieceLabel.Line> lines;
    private final List<Point> corners;
    private final List<Point[]> obstacles;
    private final List<Point[]> joins;

    /**
     * @param corners   the stitching line of the piece on the sheet
     * @param obstacles lines not to be written over, as pairs of ends
     * @param joins     where the paper is joined, not to be written across where there is room elsewhere
     */
    LabelWriter(List<PieceLabel.Line> lines, List<Point> corners, List<Point[]> obstacles, List<Point[]> joins) {
        this.lines = lines;
        this.corners = corners;
        this.obstacles = obstacles;
        this.joins = joins;
    }

    void write(Pencil pencil) {
        List<Point[]> all = new ArrayList<>(obstacles);
        all.addAll(joins);
        LabelSpot whole = new LabelSpot(corners, all, CLEAR);
        LabelSpot clear = new LabelSpot(corners, obstacles, CLEAR);
        LabelSpot over = new LabelSpot(corners, List.of(), CLEAR);
        List<PieceLabel.Line> short2 = lines.subList(0, Math.min(2, lines.size()));
        boolean done = written(pencil, whole, lines, LARGE)
                || written(pencil, whole, lines, SMALL)
                || written(pencil, clear, lines, LARGE)
                || written(pencil, clear, lines, SMALL)
                || written(pencil, over, lines, LARGE)
                || written(pencil, over, lines, SMALL)
                || written(pencil, over, short2, LARGE)
                || written(pencil, over, short2, new double[] {0.55, 0.45, 0.35, 0.25});
        if (!done) {
            Block block = block(short2, 0.25, WIDTHS[0] * body());
            draw(pencil, block, Box.around(corners).centre(), 0);
        }
    }

    private boolean written(Pencil pencil, LabelSpot spot, List<PieceLabel.Line> text, double[] scales) {
        for (double turn : new double[] {0, -Math.PI / 2}) {
            for (double scale : scales) {
                for (double width : WIDTHS) {
                    Block block = block(text, scale, width * scale * body());
                    Point at = turn == 0 ? spot.find(block.width, block.height) : spot.find(block.height, block.width);
                    if (at != null) {
                        draw(pencil, block, at, turn);
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private double body() {
        return lines.stream().mapToDouble(PieceLabel.Line::size).min().orElse(1);
    }

    private record Block(List<PieceLabel.Line> lines, double width, double height) {}

    private static Block block(List<PieceLabel.Line> text, double scale, double width) {
        List<PieceLabel.Line> wrapped = new ArrayList<>();
        double height = 0;
        double widest = 0;
        for (PieceLabel.Line line : text) {
            Lettering face = Lettering.of(line.bold());
            double size = line.size() * scale;
            for (String part : face.wrapped(line.text(), size, width)) {
                wrapped.add(new PieceLabel.Line(part, size, line.bold()));
                height += size * LEADING;
                widest = Math.max(widest, face.width(part, size));
            }
        }
        return new Block(wrapped, widest, height);
    }

    private static void draw(Pencil pencil, Block block, Point middle, double turn) {
        Point along = new Point(Math.cos(turn), Math.sin(turn));
        Point down = along.quarterTurned();
        Point base = middle.minus(down.times(block.height / 2));
        for (PieceLabel.Line line : block.lines) {
            base = base.plus(down.times(line.size() * LEADING));
            // The body of the letters stands a little above the base line.
            Point at = base.minus(down.times(line.size() * 0.35));
            pencil.write(
                    line.text(),
                    at,
                    line.size(),
                    Anchor.MIDDLE,
                    turn,
                    line.bold(),
                    line.bold() ? Tone.BLACK : Tone.DARK);
        }
    }
}
