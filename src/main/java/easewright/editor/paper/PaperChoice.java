package easewright.editor.paper;

import easewright.print.Use;
import easewright.print.report.ReportOrder;
import easewright.print.sheet.Paper;
import easewright.print.sheet.PrintOrder;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is to be put on paper, and how. Immutable.
 *
 * @param report     the record of the change, in place of the pieces
 * @param sizes      the sizes that are wanted, where the pattern comes in several; for a report too
 * @param surface    what the pieces are printed on
 * @param margin     what the printer leaves blank, mm
 * @param overlap    how far joined sheets lie over each other, mm
 * @param without    ids of the pieces that are not wanted
 * @param uses       what the garment is said to be
 * @param reportOn   what a report is printed on, A4 or Letter
 * @param clothWidth usable width of the cloth, mm
 * @param oneWay     all pieces lie the same way up on the cloth
 */
public record PaperChoice(
        boolean report,
        Set<String> sizes,
        Surface surface,
        double margin,
        double overlap,
        Set<String> without,
        Set<Use> uses,
        Surface reportOn,
        double clothWidth,
        boolean oneWay) {
    /** What pieces can be printed on, in the order offered. */
    public enum Surface {
        A4,
        LETTER,
        A3,
        A1,
        A0,
        ROLL,
        PROJECTOR
    }

    /** What every printer takes, for reports too. */
    public static final List<Surface> SHEETS = List.of(Surface.A4, Surface.LETTER);

    private static final double INCH = 25.4;

    /**
     * All pieces on joined sheets of A4, or of Letter for those who measure in inches, with lengths that are whole in
     * the unit they are shown in: what is printed is what is said.
     */
    public static PaperChoice first(boolean inches) {
        return inches
                ? first(Surface.LETTER, 3 * INCH / 8, 3 * INCH / 8, 54 * INCH)
                : first(Surface.A4, PrintOrder.MARGIN, PrintOrder.OVERLAP, ReportOrder.CLOTH_WIDTH);
    }

    private static PaperChoice first(Surface surface, double margin, double overlap, double clothWidth) {
        return new PaperChoice(
                false, Set.of(), surface, margin, overlap, Set.of(), Set.of(), surface, clothWidth, false);
    }

    public PaperChoice {
        sizes = Set.copyOf(sizes);
        without = Set.copyOf(without);
        uses = Set.copyOf(uses);
        if (!SHEETS.contains(reportOn)) {
            throw new IllegalArgumentException("No report on " + reportOn);
        }
    }

    public PaperChoice withReport(boolean wanted) {
        return new PaperChoice(wanted, sizes, surface, margin, overlap, without, uses, reportOn, clothWidth, oneWay);
    }

    public PaperChoice withSizes(Set<String> wanted) {
        return new PaperChoice(report, wanted, surface, margin, overlap, without, uses, reportOn, clothWidth, oneWay);
    }

    public PaperChoice withSize(String size, boolean wanted) {
        return withSizes(with(sizes, size, wanted));
    }

    /** Who joins sheets of one paper has it in the printer for a report too. */
    public PaperChoice withSurface(Surface chosen) {
        Surface sheet = SHEETS.contains(chosen) ? chosen : reportOn;
        return new PaperChoice(report, sizes, chosen, margin, overlap, without, uses, sheet, clothWidth, oneWay);
    }

    /** @throws IllegalArgumentException if it is none of {@link #SHEETS} */
    public PaperChoice withReportOn(Surface sheet) {
        return new PaperChoice(report, sizes, surface, margin, overlap, without, uses, sheet, clothWidth, oneWay);
    }

    public PaperChoice withMargin(double mm) {
        return new PaperChoice(report, sizes, surface, mm, overlap, without, uses, reportOn, clothWidth, oneWay);
    }

    public PaperChoice withOverlap(double mm) {
        return new PaperChoice(report, sizes, surface, margin, mm, without, uses, reportOn, clothWidth, oneWay);
    }

    public PaperChoice withPiece(String id, boolean wanted) {
        Set<String> others = with(without, id, !wanted);
        return new PaperChoice(report, sizes, surface, margin, overlap, others, uses, reportOn, clothWidth, oneWay);
    }

    private static Set<String> with(Set<String> all, String one, boolean in) {
        Set<String> others = new TreeSet<>(all);
        if (in) {
            others.add(one);
        } else {
            others.remove(one);
        }
        return others;
    }

    public PaperChoice withUse(Use use, boolean is) {
        Set<Use> others = EnumSet.noneOf(Use.class);
        others.addAll(uses);
        if (is) {
            others.add(use);
        } else {
            others.remove(use);
        }
        return new PaperChoice(report, sizes, surface, margin, overlap, without, others, reportOn, clothWidth, oneWay);
    }

    public PaperChoice withCloth(double widthMm, boolean sameWay) {
        return new PaperChoice(report, sizes, surface, margin, overlap, without, uses, reportOn, widthMm, sameWay);
    }

    /** Whether sheets are joined, so that an overlap counts. */
    public boolean joined() {
        return onPaper() && Paper.valueOf(surface.name()).tiled();
    }

    /** Whether a printer's margin counts. */
    public boolean onPaper() {
        return surface != Surface.PROJECTOR;
    }

    /** @param ids of all pieces of the sizes wanted */
    PrintOrder printOrder(String name, LocalDate date, List<String> ids) {
        Paper paper = onPaper() ? Paper.valueOf(surface.name()) : Paper.A4;
        List<String> wanted = ids.stream().filter(id -> !without.contains(id)).toList();
        PrintOrder order = PrintOrder.on(paper, name, date)
                .withMargin(margin)
                .withOverlap(overlap)
                .withPieces(wanted);
        return onPaper() ? order : order.forProjector();
    }

    ReportOrder reportOrder(String name, LocalDate date) {
        return ReportOrder.of(name, date).onCloth(clothWidth, oneWay).on(Paper.valueOf(reportOn.name()));
    }
}
