package easewright.print.report;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.pdf.PdfBook;
import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Grid;
import easewright.print.report.Part.Heading;
import easewright.print.report.Part.Paragraph;
import easewright.print.report.Part.Points;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;

/** Sets a report as sheets of paper, from top to bottom, without breaking lines, rows or figures apart. */
public final class PdfReport {
    private static final double MARGIN = 17;
    private static final double FOOT = 12;
    private static final double TEXT = 3.4;
    private static final double QUIET = 2.9;
    private static final double LEADING = 1.42;
    /** A figure that takes more than this part of the column is as wide as the column. */
    private static final double FULL = 0.95;

    private static final double GAP = 6;

    private final ReportContent content;
    private final double width;
    private final double bottom;
    private final List<Pencil> pages = new ArrayList<>();
    private Pencil pencil;
    private double y;

    private PdfReport(ReportContent content) {
        this.content = content;
        width = content.order().paper().width() - 2 * MARGIN;
        bottom = content.order().paper().height() - MARGIN - FOOT;
        turnPage();
    }

    /** @param progress told which share is done, 0 to 1 */
    public static byte[] of(ReportContent content, DoubleConsumer progress) {
        return PdfBook.of(leaves(content), content.title(), content.order().date(), progress);
    }

    /** The sheets. */
    public static List<Leaf> leaves(ReportContent content) {
        return new PdfReport(content).set();
    }

    private List<Leaf> set() {
        Lettering bold = Lettering.of(true);
        for (String line : bold.wrapped(content.title(), 8, width)) {
            y += 8;
            pencil.writeBold(line, MARGIN, y, 8, Tone.BLACK);
            y += 3;
        }
        y += 3.5;
        pencil.write(content.byline(), MARGIN, y, 3.8, Tone.DARK);
        y += 3;
        pencil.line(MARGIN, y, MARGIN + width, y, Pen.EDGE);
        y += 2;
        for (int i = 0; i < content.parts().size(); i++) {
            if (content.parts().get(i) instanceof Heading) {
                need(Math.min(bottom - MARGIN, 13 + opening(content.parts(), i + 1)));
            }
            part(content.parts().get(i));
        }
        return leaves();
    }

    private List<Leaf> leaves() {
        List<Leaf> leaves = new ArrayList<>();
        double foot = content.order().paper().height() - MARGIN;
        for (int i = 0; i < pages.size(); i++) {
            String number = (i + 1) + " / " + pages.size();
            String name = Lettering.of(false).fitted(content.title(), QUIET, width * 0.8);
            pages.get(i)
                    .write(name, MARGIN, foot, QUIET, Tone.MID)
                    .write(number, new Point(MARGIN + width, foot), QUIET, Anchor.END, 0, false, Tone.MID);
            leaves.add(new Leaf(
                    content.order().paper().width(),
                    content.order().paper().height(),
                    List.of(Layer.of(pages.get(i).picture()))));
        }
        return leaves;
    }

    private void turnPage() {
        pencil = new Pencil();
        pages.add(pencil);
        y = MARGIN;
    }

    private void need(double height) {
        if (y + height > bottom && y > MARGIN) {
            turnPage();
        }
    }

    /** How much must stand below a heading so that it does not stand alone: up to the first row or picture, mm. */
    private double opening(List<Part> parts, int from) {
        double height = 0;
        for (int i = from; i < parts.size(); i++) {
            if (parts.get(i) instanceof Paragraph p) {
                double size = p.quiet() ? QUIET : TEXT;
                height += Lettering.of(false).wrapped(p.text(), size, width).size() * size * LEADING + 1.5;
            } else if (parts.get(i) instanceof Figures figures) {
                return height + figures.figures().get(0).height() + 7;
            } else {
                return height + 20;
            }
        }
        return height;
    }

    private void part(Part part) {
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
            need(TEXT * LEADING * 2);
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

    /** Columns as wide as their widest cell wants, shrunk alike where the page is narrower. */
    private void grid(Grid grid) {
        int columns = grid.head().size();
        double[] widths = new double[columns];
        Lettering plain = Lettering.of(false);
        Lettering bold = Lettering.of(true);
        double sum = 0;
        for (int c = 0; c < columns; c++) {
            double widest = 8;
            for (String word : grid.head().get(c).split(" ")) {
                widest = Math.max(widest, bold.width(word, QUIET));
            }
            for (List<String> row : grid.rows()) {
                widest = Math.max(widest, plain.width(row.get(c), TEXT));
            }
            widths[c] = widest + 3;
            sum += widths[c];
        }
        double stretch = width / sum;
        for (int c = 0; c < columns; c++) {
            widths[c] *= stretch;
        }
        y += 1;
        row(grid.head(), widths, grid.figures(), true);
        for (List<String> row : grid.rows()) {
            row(row, widths, grid.figures(), false);
        }
        y += 2;
    }

    private void row(List<String> texts, double[] widths, int figures, boolean head) {
        double size = head ? QUIET : TEXT;
        Lettering face = Lettering.of(head);
        List<List<String>> cells = new ArrayList<>();
        int most = 1;
        for (int c = 0; c < texts.size(); c++) {
            List<String> wrapped = face.wrapped(texts.get(c), size, widths[c] - 2);
            cells.add(wrapped);
            most = Math.max(most, wrapped.size());
        }
        double height = most * size * LEADING + 2;
        need(height);
        double x = MARGIN;
        for (int c = 0; c < cells.size(); c++) {
            boolean figure = c >= figures;
            List<String> cell = cells.get(c);
            double base = y + (head ? (most - cell.size()) * size * LEADING : 0);
            for (String line : cell) {
                base += size * LEADING;
                Point at = new Point(figure ? x + widths[c] : x, base);
                pencil.write(
                        line, at, size, figure ? Anchor.END : Anchor.START, 0, head, head ? Tone.DARK : Tone.BLACK);
            }
            x += widths[c];
        }
        y += height;
        pencil.line(MARGIN, y, MARGIN + width, y, Pen.RULE);
    }

    private void figures(List<Figure> figures) {
        List<Figure> row = new ArrayList<>();
        double used = 0;
        for (Figure figure : figures) {
            double wide = figure.width() + (row.isEmpty() ? 0 : GAP);
            if (!row.isEmpty() && used + wide > width + 0.01) {
                row(row);
                row.clear();
                used = 0;
                wide = figure.width();
            }
            row.add(figure);
            used += wide;
        }
        row(row);
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
