package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Words about a level in one row or two on a plate. All in pixels. */
final class LevelLabel {
    /** A label much wider than its level says nothing of where it lies: the level has at least this share of its width. */
    private static final double LEAST_SHARE = 0.6;

    /** A label this near to its line needs no leader. */
    private static final double TOUCHING = 4;

    private static final double DOT = 2;

    private static final double PITCH = 14;

    private static final Font AT_REST = Font.font(11.5);
    private static final Font AT_WORK = Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, 12.5);
    private static final Font COMPACT = AT_REST;

    private final List<String> rows;
    private final boolean chosen;
    private final boolean compact;
    private final double length;
    private final Line seen;
    private final LabelPlaces places;
    private final double width;
    private final double height;

    /**
     * @param chosen  of the level at work
     * @param compact in smaller letters, with less air around them
     * @param length of the whole level
     * @param seen   what is seen of it
     * @param off    the way off the paper, up or down, from a level along the edge of its piece
     */
    LevelLabel(List<String> rows, boolean chosen, boolean compact, double length, Line seen, Optional<Point> off) {
        this.rows = List.copyOf(rows);
        this.chosen = chosen;
        this.compact = compact;
        this.length = length;
        this.seen = seen;
        double longest =
                rows.stream().mapToDouble(row -> Ruler.width(row, font())).max().orElse(0);
        width = longest + (compact ? 8 : 14);
        height = (chosen && !compact ? 22 : 18) + (rows.size() - 1) * pitch();
        places = new LabelPlaces(chosen, width, height, seen, off);
    }

    private double pitch() {
        return compact ? PITCH - 1 : PITCH;
    }

    private Font font() {
        return compact ? COMPACT : chosen ? AT_WORK : AT_REST;
    }

    List<String> rows() {
        return rows;
    }

    /** Of what is seen of its level. */
    Point middle() {
        return seen.at(0.5);
    }

    boolean isAtWork() {
        return chosen;
    }

    boolean isCompact() {
        return compact;
    }

    /** The same words in smaller letters, which fit wherever this stands. */
    LevelLabel inSmallLetters() {
        return new LevelLabel(rows, chosen, true, length, seen, places.off());
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    boolean fitsItsLevel() {
        return length > width * LEAST_SHARE;
    }

    /** Where they might stand. */
    LabelPlaces places() {
        return places;
    }

    /** From its line to the plate with this middle; empty where they touch. */
    Optional<Line> leader(Point middle) {
        Point foot = seen.at(seen.nearest(middle));
        // Its corners are round: what leads to a corner of the box would end in the air beside the plate.
        double round = round() / 2;
        double x = between(middle.x(), width / 2 - round, foot.x());
        double y = between(middle.y(), height / 2 - round, foot.y());
        Point inner = new Point(x, y);
        double away = foot.distance(inner);
        if (away - round <= TOUCHING) {
            return Optional.empty();
        }
        return Optional.of(new Line(foot, inner.plus(foot.minus(inner).times(round / away))));
    }

    private static double between(double middle, double reach, double at) {
        return Math.max(middle - reach, Math.min(middle + reach, at));
    }

    /** How wide and high its corners are rounded. */
    private double round() {
        return height - (rows.size() - 1) * pitch();
    }

    /** Draws the plate with its words, and what leads to it. */
    void write(GraphicsContext gc, Ink ink, Point at) {
        leader(at).ifPresent(lead -> {
            gc.setLineDashes();
            gc.setStroke(ink.level());
            gc.setLineWidth(chosen ? 1.6 : 1);
            gc.strokeLine(
                    lead.start().x(),
                    lead.start().y(),
                    lead.end().x(),
                    lead.end().y());
            gc.setFill(ink.level());
            gc.fillOval(lead.start().x() - DOT, lead.start().y() - DOT, 2 * DOT, 2 * DOT);
        });
        plate(gc, ink, at);
        gc.setFont(font());
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setTextBaseline(VPos.CENTER);
        gc.setFill(chosen ? ink.levelText() : ink.level());
        for (int i = 0; i < rows.size(); i++) {
            gc.fillText(rows.get(i), at.x(), at.y() + (i - (rows.size() - 1) / 2.0) * pitch());
        }
    }

    private void plate(GraphicsContext gc, Ink ink, Point middle) {
        double left = middle.x() - width / 2;
        double top = middle.y() - height / 2;
        double round = round();
        gc.setFill(chosen ? ink.level() : ink.paper());
        gc.fillRoundRect(left, top, width, height, round, round);
        if (!chosen) {
            gc.setStroke(ink.level());
            gc.setLineWidth(1);
            gc.strokeRoundRect(left, top, width, height, round, round);
        }
    }
}
