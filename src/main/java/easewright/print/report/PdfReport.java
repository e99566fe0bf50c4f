package easewright.print.report;

import easewright.geom.Point;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.pdf.PdfBook;
import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * Sets a report as sheets of paper, without breaking lines, tables or figures apart. So that no page stays half empty,
 * pictures are taken smaller where that brings them onto the page, or else a later section that fits comes first.
 */
public final class PdfReport {
    private static final double FOOT = 12;
    private static final double QUIET = 2.9;

    private final ReportContent content;
    private final double width;
    private final ReportPages pages;

    private PdfReport(ReportContent content) {
        this.content = content;
        width = content.order().paper().width() - 2 * ReportPages.MARGIN;
        pages = new ReportPages(width, content.order().paper().height() - ReportPages.MARGIN - FOOT);
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
        pages.title(content.title(), content.byline());
        List<List<Part>> waiting = sections();
        while (!waiting.isEmpty()) {
            List<Part> next = waiting.get(0);
            Optional<List<Part>> fitting = fitting(next);
            if (fitting.isPresent() || pages.isFresh()) {
                fitting.orElse(next).forEach(pages::set);
                waiting.remove(0);
            } else {
                Optional<List<Part>> other = waiting.stream()
                        .skip(1)
                        .filter(s -> s.get(0) instanceof Heading heading && heading.movable())
                        .filter(s -> pages.height(s) <= pages.left())
                        .findFirst();
                other.ifPresentOrElse(
                        s -> {
                            s.forEach(pages::set);
                            waiting.remove(s);
                        },
                        pages::turnPage);
            }
        }
        return leaves();
    }

    /** Each from its heading to the next. */
    private List<List<Part>> sections() {
        List<List<Part>> sections = new ArrayList<>();
        for (Part part : content.parts()) {
            if (part instanceof Heading || sections.isEmpty()) {
                sections.add(new ArrayList<>());
            }
            sections.get(sections.size() - 1).add(part);
        }
        return sections;
    }

    /** The section in its largest form that can be begun on this page, whole where a smaller form makes it so. */
    private Optional<List<Part>> fitting(List<Part> section) {
        int forms = section.stream()
                .mapToInt(p -> p instanceof Figures figures ? figures.smaller().size() + 1 : 1)
                .max()
                .orElse(1);
        for (int form = 0; form < forms; form++) {
            List<Part> smaller = form(section, form);
            if (pages.height(smaller) <= pages.left()) {
                return Optional.of(smaller);
            }
        }
        return Optional.of(section).filter(s -> pages.height(pages.opening(s)) <= pages.left());
    }

    private static List<Part> form(List<Part> section, int form) {
        List<Part> parts = new ArrayList<>();
        for (Part part : section) {
            if (part instanceof Figures figures
                    && form > 0
                    && !figures.smaller().isEmpty()) {
                List<List<Figure>> smaller = figures.smaller();
                parts.add(new Figures(smaller.get(Math.min(form, smaller.size()) - 1)));
            } else {
                parts.add(part);
            }
        }
        return parts;
    }

    private List<Leaf> leaves() {
        List<Leaf> leaves = new ArrayList<>();
        double foot = content.order().paper().height() - ReportPages.MARGIN;
        List<Pencil> all = pages.pages();
        for (int i = 0; i < all.size(); i++) {
            String number = (i + 1) + " / " + all.size();
            String name = Lettering.of(false).fitted(content.title(), QUIET, width * 0.8);
            Point right = new Point(ReportPages.MARGIN + width, foot);
            all.get(i)
                    .write(name, ReportPages.MARGIN, foot, QUIET, Tone.MID)
                    .write(number, right, QUIET, Anchor.END, 0, false, Tone.MID);
            leaves.add(new Leaf(
                    content.order().paper().width(),
                    content.order().paper().height(),
                    List.of(Layer.of(all.get(i).picture()))));
        }
        return leaves;
    }
}
