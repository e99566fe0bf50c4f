package easewright.print.report;

import static easewright.print.report.ReportPages.LEADING;
import static easewright.print.report.ReportPages.MARGIN;
import static easewright.print.report.ReportPages.QUIET;
import static easewright.print.report.ReportPages.TEXT;

import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.report.Part.Grid;
import easewright.text.Lengths;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The rows of one table, set across a column of the report. All lengths in mm. */
final class GridRows {
    private static final double NARROWEST = 8;
    private static final double BETWEEN = 3;

    private final Grid grid;
    private final double width;
    private final double[] widths;

    /**
     * @param width of the table
     */
    GridRows(Grid grid, double width) {
        this.grid = grid;
        this.width = width;
        this.widths = widths(grid, width);
    }

    /**
     * Columns as wide as their widest cell wants; where the page is narrower those give way that can be broken between
     * words, and all alike only where that is not enough.
     */
    private static double[] widths(Grid grid, double width) {
        double[] widths = new double[grid.head().size()];
        double[] least = new double[widths.length];
        for (int c = 0; c < widths.length; c++) {
            least[c] = widestWord(grid, c) + BETWEEN;
            double widest = least[c] - BETWEEN;
            for (List<String> row : grid.rows()) {
                widest = Math.max(widest, Lettering.of(false).width(row.get(c), TEXT));
            }
            widths[c] = widest + BETWEEN;
        }
        double wanted = Arrays.stream(widths).sum();
        double needed = Arrays.stream(least).sum();
        boolean breaks = wanted > width && needed < width;
        double share = breaks ? (width - needed) / (wanted - needed) : width / wanted;
        for (int c = 0; c < widths.length; c++) {
            widths[c] = breaks ? least[c] + share * (widths[c] - least[c]) : share * widths[c];
        }
        return widths;
    }

    private static double widestWord(Grid grid, int column) {
        double widest = NARROWEST;
        for (String word : grid.head().get(column).split(" ")) {
            widest = Math.max(widest, Lettering.of(true).width(word, QUIET));
        }
        for (List<String> row : grid.rows()) {
            for (String word : Lengths.together(row.get(column)).split(" ")) {
                widest = Math.max(widest, Lettering.of(false).width(word, TEXT));
            }
        }
        return widest;
    }

    /** How many there are below the head. */
    int count() {
        return grid.rows().size();
    }

    double headHeight() {
        return height(cells(grid.head(), true), true);
    }

    double height(int row) {
        return height(cells(grid.rows().get(row), false), false);
    }

    /**
     * Draws the head.
     *
     * @param top where it begins
     * @return how high it is
     */
    double head(Pencil pencil, double top) {
        return draw(grid.head(), true, pencil, top);
    }

    /**
     * Draws a row.
     *
     * @param top where it begins
     * @return how high it is
     */
    double row(int row, Pencil pencil, double top) {
        return draw(grid.rows().get(row), false, pencil, top);
    }

    private List<List<String>> cells(List<String> texts, boolean head) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < texts.size(); c++) {
            cells.add(Lettering.of(head).wrapped(texts.get(c), size(head), widths[c] - 2));
        }
        return cells;
    }

    private static double size(boolean head) {
        return head ? QUIET : TEXT;
    }

    private static int lines(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1);
    }

    private static double height(List<List<String>> cells, boolean head) {
        return lines(cells) * size(head) * LEADING + 2;
    }

    private double draw(List<String> texts, boolean head, Pencil pencil, double top) {
        double size = size(head);
        List<List<String>> cells = cells(texts, head);
        int most = lines(cells);
        double x = MARGIN;
        for (int c = 0; c < cells.size(); c++) {
            boolean figure = c >= grid.figures();
            List<String> cell = cells.get(c);
            double base = top + (head ? (most - cell.size()) * size * LEADING : 0);
            for (String line : cell) {
                base += size * LEADING;
                Point at = new Point(figure ? x + widths[c] : x, base);
                pencil.write(
                        line, at, size, figure ? Anchor.END : Anchor.START, 0, head, head ? Tone.DARK : Tone.BLACK);
            }
            x += widths[c];
        }
        double height = height(cells, head);
        pencil.line(MARGIN, top + height, MARGIN + width, top + height, Pen.RULE);
        return height;
    }
}
