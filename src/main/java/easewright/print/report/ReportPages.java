package easewright.print.report;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Grid;
import easewright.print.report.Part.Heading;
import easewright.print.report.Part.Paragraph;
import easewright.print.report.Part.Points;
import java.util.ArrayList;
import java.util.List;

/** Sets parts of a report one below the other, on as many pages as that takes. */
final class ReportPages {
    static final double MARGIN = 17;
    /** Height of letters, mm. */
    static final double TEXT = 3.4;

    /** The same for what is said aside. */
    static final double QUIET = 2.9;

    /** From line to line, in heights of letters. */
    static final double LEADING = 1.42;

    /** A figure that takes more than this part of the column is as wide as the column. */
    private static final double FULL = 0.95;

    /** Between figures side by side, mm. */
    static final double GAP = 6;

    /** Of a table longer than a page, so many rows stay together at its beginning. */
    private static final int FIRST_ROWS = 3;

    private final double width;
    private final double bottom;
    private final List<Pencil> pages = new ArrayList<>();
    private Pencil pencil;
    private double y;
    private boolean measuring;

    /**
     * @param width  of the column, mm
     * @param bottom lower border of what may be set, mm from the top of the page
     */
    ReportPages(double width, double bottom) {
        this.width = width;
        this.bottom = bottom;
        turnPage();
    }

    List<Pencil> pages() {
        return List.copyOf(pages);
    }

    /** What is left of the page, mm. */
    double left() {
        return bottom - y;
    }

    boolean isFresh() {
        return y <= MARGIN;
    }

    /** Of what can be set on one page, mm. */
    double height() {
        return bottom - MARGIN;
    }

    /** What parts would take here if the page had no end, mm. */
    double height(List<Part> parts) {
        Pencil before = pencil;
        double from = y;
        pencil = new Pencil();
        measuring = true;
        parts.forEach(this::set);
        double height = y - from;
        pencil = before;
        measuring = false;
        y = from;
        return height;
    }

    void title(String title, String byline) {
        for (String line : Lettering.of(true).wrapped(title, 8, width)) {
            y += 8;
            pencil.writeBold(line, MARGIN, y, 8, Tone.BLACK);
            y += 3;
        }
        y += 3.5;
        pencil.write(byline, MARGIN, y, 3.8, Tone.DARK);
        y += 3;
        pencil.line(MARGIN, y, MARGIN + width, y, Pen.EDGE);
        y += 2;
    }

    void turnPage() {
        pencil = new Pencil();
        pages.add(pencil);
        y = MARGIN;
    }

    private void need(double height) {
        if (!measuring && height > left() && !isFresh()) {
            turnPage();
        }
    }

    /** The beginning of parts that must stand together, so that no heading and no first line stands alone. */
    List<Part> opening(List<Part> parts) {
        List<Part> opening = new ArrayList<>();
        for (Part part : parts) {
            if (part instanceof Figures figures) {
                opening.add(new Figures(firstRow(figures.figures())));
                return opening;
            }
            if (part instanceof Points points) {
                opening.add(new Points(
                        points.texts().subList(0, Math.min(2, points.texts().size())), points.numbered()));
                return opening;
            }
            if (part instanceof Grid grid && height(List.of(grid)) > height()) {
                opening.add(new Grid(
                        grid.head(),
                        grid.rows().subList(0, Math.min(FIRST_ROWS, grid.rows().size())),
                        grid.figures()));
                return opening;
            }
            opening.add(part);
            if (part instanceof Grid) {
                return opening;
            }
        }
        return opening;
    }

    /** On the next page where it does not fit on this; what is longer than a page is broken between lines or rows. */
    void set(Part part) {
        if (part instanceof Heading heading) {
            y += y > MARGIN ? 9 : 4;
            pencil.writeBold(heading.text(), MARGIN, y, 4.6, Tone.BLACK);
            y += 3;
        } else if (part instanceof Paragraph paragraph) {
            double size = paragraph.quiet() ? QUIET : TEXT;
            lines(paragraph.text(), 0, size, paragraph.quiet() ? Tone.DARK : Tone.BLACK);
            y += 1.5;
        } else if (part instanceof Points points) {
            points(points);
        } else if (part instanceof Grid grid) {
            grid(grid);
        } else if (part instanceof Figures figures) {
            figures(figures.figures());
        }
    }

    private void lines(String text, double in, double size, Tone tone) {
        for (String line : Lettering.of(false).wrapped(text, size, width - in)) {
            need(size * LEADING);
            y += size * LEADING;
            pencil.write(line, MARGIN + in, y, size, tone);
        }
    }

    private void points(Points points) {
        double in = 5;
        for (int i = 0; i < points.texts().size(); i++) {
            // The last one does not go over to a new page alone.
            int together = points.texts().size() - i == 2 ? 2 : 1;
            double high = 0;
            for (String text : points.texts().subList(i, i + together)) {
                high += Lettering.of(false).wrapped(text, TEXT, width - in).size() * TEXT * LEADING + 1.2;
            }
            need(Math.min(high, height() / 3));
            double base = y + TEXT * LEADING;
            if (points.numbered()) {
                pencil.writeBold(String.valueOf(i + 1), MARGIN, base, TEXT, Tone.BLACK);
            } else {
                pencil.fill(Pencil.circle(new Point(MARGIN + 1.4, base - TEXT * 0.33), 0.55), Tone.DARK);
            }
            lines(points.texts().get(i), in, TEXT, Tone.BLACK);
            y += 1.2;
        }
    }

    private void grid(Grid grid) {
        GridRows rows = new GridRows(grid, width);
        double high = 3 + rows.headHeight();
        for (int i = 0; i < rows.count(); i++) {
            high += rows.height(i);
        }
        if (high <= height()) {
            need(high);
        }
        y += 1;
        y += rows.head(pencil, y);
        for (int i = 0; i < rows.count(); i++) {
            if (!measuring && rows.height(i) > left()) {
                turnPage();
                y += rows.head(pencil, y);
            }
            y += rows.row(i, pencil, y);
        }
        y += 2;
    }

    private void figures(List<Figure> figures) {
        List<Figure> rest = figures;
        while (!rest.isEmpty()) {
            List<Figure> row = firstRow(rest);
            row(row);
            rest = rest.subList(row.size(), rest.size());
        }
    }

    private List<Figure> firstRow(List<Figure> figures) {
        double used = -GAP;
        int count = 0;
        while (count < figures.size()
                && (count == 0 || used + GAP + figures.get(count).width() <= width + 0.01)) {
            used += GAP + figures.get(count++).width();
        }
        return figures.subList(0, count);
    }

    /** No larger than drawn, but one as wide as the column fills it on either paper. */
    private double scale(Figure figure) {
        return figure.width() > FULL * width ? width / figure.width() : 1;
    }

    private void row(List<Figure> figures) {
        double height = 0;
        for (Figure figure : figures) {
            double scale = scale(figure);
            height =
                    Math.max(height, figure.height() * scale + (figure.caption().isEmpty() ? 0 : 5));
        }
        need(height + 2);
        y += 2;
        double x = MARGIN;
        for (Figure figure : figures) {
            double scale = scale(figure);
            double top =
                    y + height - figure.height() * scale - (figure.caption().isEmpty() ? 0 : 5);
            Affine place = Affine.translation(x, top).after(Affine.scaling(scale, scale));
            pencil.add(figure.picture().transformed(place));
            String caption = Lettering.of(false).fitted(figure.caption(), QUIET, figure.width() * scale + GAP);
            pencil.write(caption, x, y + height - 1, QUIET, Tone.DARK);
            x += figure.width() * scale + GAP;
        }
        y += height + 1;
    }
}
