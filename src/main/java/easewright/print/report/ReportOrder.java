package easewright.print.report;

import easewright.print.sheet.Paper;
import java.time.LocalDate;
import java.util.List;

/**
 * What a report is to be about.
 *
 * @param name       what to call the pattern
 * @param date       of the report
 * @param clothWidth usable width of the cloth, mm
 * @param oneWay     all pieces lie the same way up on the cloth
 * @param paper      of its sheets, where it is set as sheets: one of {@link #PAPERS}
 */
public record ReportOrder(String name, LocalDate date, double clothWidth, boolean oneWay, Paper paper) {
    /** A usual width of cloth for clothes, mm (common practice). */
    public static final double CLOTH_WIDTH = 1400;

    /** What a report is set on as sheets: what lies in a folder. */
    public static final List<Paper> PAPERS = List.of(Paper.A4, Paper.LETTER);

    /** With cloth of the usual width, on A4. */
    public static ReportOrder of(String name, LocalDate date) {
        return new ReportOrder(name, date, CLOTH_WIDTH, false, Paper.A4);
    }

    public ReportOrder onCloth(double widthMm, boolean sameWay) {
        return new ReportOrder(name, date, widthMm, sameWay, paper);
    }

    public ReportOrder on(Paper sheets) {
        return new ReportOrder(name, date, clothWidth, oneWay, sheets);
    }
}
