package easewright.print.report;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.ease.EaseTables;
import easewright.pattern.Pattern;
import easewright.print.Cautions;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.Use;
import easewright.print.ink.Leaf;
import easewright.print.ink.Mark;
import easewright.print.ink.Picture;
import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Grid;
import easewright.print.report.Part.Heading;
import easewright.print.report.Part.Paragraph;
import easewright.print.report.Part.Points;
import easewright.print.sheet.Paper;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of a report are full, and nothing that belongs together is torn apart. */
class ReportPagesTest {
    private static final EaseTables TABLES = EaseTables.standard();
    private static final LocalDate DAY = LocalDate.of(2026, 5, 17);
    private static final double MARGIN = ReportPages.MARGIN;

    private static ReportContent content(String sample, String level, Paper paper, LengthUnit unit) {
        try {
            Pattern pattern =
                    SvgFile.read(Path.of("sample-pieces", sample + ".svg")).pattern();
            Pattern changed = SeamChange.at(level, 24).apply(pattern).pattern();
            Reading now = Reading.of(changed, TABLES);
            Optional<Reading> before = Past.of(changed).map(p -> Reading.of(p, TABLES));
            return ReportContent.of(
                    ReportOrder.of(sample, DAY).on(paper),
                    before,
                    now,
                    now.findings(),
                    Cautions.of(before, now, Set.of(Use.CHILD, Use.NIGHTWEAR)),
                    Words.english(unit));
        } catch (SvgProblem | Refusal e) {
            throw new AssertionError(e);
        }
    }

    private static List<Mark.Writing> written(Leaf leaf) {
        return leaf.layers().get(0).picture().marks().stream()
                .filter(Mark.Writing.class::isInstance)
                .map(Mark.Writing.class::cast)
                .filter(w -> w.at().y() < leaf.height() - MARGIN - 1)
                .toList();
    }

    private static double lowest(Leaf leaf) {
        return written(leaf).stream().mapToDouble(w -> w.at().y()).max().orElse(0);
    }

    @ParameterizedTest
    @CsvSource({
        "skirt, hip, A4, CM",
        "skirt, hip, LETTER, INCH",
        "trousers, hip, A4, CM",
        "trousers, hip, LETTER, INCH",
        "bodice, bust, A4, CM",
        "bodice, bust, LETTER, INCH",
        "knit-top, bust, A4, CM"
    })
    void pagesAreFullAndTablesWhole(String sample, String level, Paper paper, LengthUnit unit) {
        ReportContent content = content(sample, level, paper, unit);
        List<Leaf> leaves = PdfReport.leaves(content);
        for (Leaf leaf : leaves.subList(0, leaves.size() - 1)) {
            double room = leaf.height() - 2 * MARGIN - 12;
            assertThat((lowest(leaf) - MARGIN) / room)
                    .as("page %d of %d", leaves.indexOf(leaf) + 1, leaves.size())
                    .isGreaterThan(0.78);
        }
        for (Leaf leaf : leaves) {
            Mark.Writing last = written(leaf).stream()
                    .max(Comparator.comparingDouble(w -> w.at().y()))
                    .orElseThrow();
            assertThat(headings(content)).as("last on its page").doesNotContain(last.text());
        }
        for (Part part : content.parts()) {
            if (part instanceof Grid grid) {
                assertThat(leaves).as(grid.head().toString()).anyMatch(leaf -> holds(leaf, grid));
            }
        }
    }

    private static List<String> headings(ReportContent content) {
        return content.parts().stream()
                .filter(Heading.class::isInstance)
                .map(p -> ((Heading) p).text())
                .toList();
    }

    private static boolean holds(Leaf leaf, Grid grid) {
        List<String> texts = written(leaf).stream().map(w -> plain(w.text())).toList();
        // Long cells are broken into lines, of which the first is looked for.
        return grid.rows().stream()
                .flatMap(List::stream)
                .map(ReportPagesTest::plain)
                .allMatch(cell ->
                        texts.stream().anyMatch(text -> !text.isBlank() && (cell + " ").startsWith(text + " ")));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u2007', ' ').replace('\u202f', ' ');
    }

    /** Nothing is lost or said twice, whatever order it is set in. */
    @Test
    void allSectionsAreSetOnce() {
        ReportContent content = content("skirt", "hip", Paper.LETTER, LengthUnit.INCH);
        List<String> bold = PdfReport.leaves(content).stream()
                .flatMap(leaf -> written(leaf).stream())
                .filter(w -> w.bold() && w.size() > 4.5 && w.size() < 5)
                .map(Mark.Writing::text)
                .filter(headings(content)::contains)
                .toList();
        assertThat(bold).containsExactlyInAnyOrderElementsOf(headings(content));
    }

    private static ReportContent made(List<Part> parts) {
        return new ReportContent("Report", "", parts, ReportOrder.of("Report", DAY));
    }

    private static Figure figure(double height) {
        return new Figure(new Picture(List.of()), 60, height, "figure " + height, "");
    }

    @Test
    void aTableLongerThanAPageHasItsHeadOnEachAndAShorterOneGoesOver() {
        List<List<String>> rows = IntStream.range(0, 60)
                .mapToObj(i -> List.of("row " + i, i + " mm"))
                .toList();
        List<Part> parts = List.of(new Heading("long"), new Grid(List.of("name", "length"), rows, 1));
        List<Leaf> leaves = PdfReport.leaves(made(parts));
        assertThat(leaves).hasSizeGreaterThan(1);
        for (Leaf leaf : leaves) {
            assertThat(written(leaf)).extracting(Mark.Writing::text).contains("length");
        }
        List<Part> two = List.of(
                new Heading("first"),
                new Grid(List.of("name", "length"), rows.subList(0, 22), 1),
                new Heading("second"),
                new Grid(List.of("name", "width"), rows.subList(30, 50), 1));
        List<Leaf> whole = PdfReport.leaves(made(two));
        assertThat(whole).hasSize(2);
        assertThat(written(whole.get(1))).extracting(Mark.Writing::text).contains("second", "row 30", "row 49");
    }

    /** Where a table is too wide its words are broken apart, and its figures stand whole. */
    @Test
    void noFigureIsBrokenInATableThatIsTooWide() {
        String names = "A skirt front with a yoke, a skirt back with a yoke, a godet and a gusset: ";
        String length = "77\u00a0cm\u00a0\u2192\u00a078\u00a0cm";
        List<String> row =
                List.of("waistband", names + length, names + "76\u00a0cm", "1\u00a0cm", "0\u00a0cm", "+1.25\u00a0cm");
        Grid grid = new Grid(
                List.of("Seam", "One side", "Other side", "To ease in", "Misfit before", "Misfit now"),
                List.of(row),
                1);
        List<String> written = PdfReport.leaves(made(List.of(grid))).stream()
                .flatMap(leaf -> written(leaf).stream())
                .map(Mark.Writing::text)
                .toList();
        assertThat(written).contains("waistband", "1\u00a0cm", "0\u00a0cm", "+1.25\u00a0cm");
        assertThat(written).anyMatch(line -> line.endsWith(length)).anyMatch(line -> line.endsWith("76\u00a0cm"));
    }

    @Test
    void aPictureIsTakenSmallerToFillAPageOrASectionThatMayMoveComesFirst() {
        List<String> lines = IntStream.range(0, 20).mapToObj(i -> "line " + i).toList();
        List<Part> start = List.of(new Heading("start"), new Points(lines, false));
        Figures pictures = new Figures(List.of(figure(160)), List.of(List.of(figure(120)), List.of(figure(70))));
        List<Part> smaller = joined(start, new Heading("pictures"), pictures);
        assertThat(PdfReport.leaves(made(smaller))).hasSize(1);
        assertThat(written(PdfReport.leaves(made(smaller)).get(0)))
                .extracting(Mark.Writing::text)
                .contains("figure 70.0");

        List<Part> tail = List.of(new Heading("moves", true), new Paragraph("short", false));
        List<Part> moved = joined(start, new Heading("pictures"), new Figures(List.of(figure(160))));
        moved.addAll(tail);
        List<Leaf> leaves = PdfReport.leaves(made(moved));
        assertThat(leaves).hasSize(2);
        assertThat(written(leaves.get(0))).extracting(Mark.Writing::text).contains("moves", "short");
        List<Part> fixed = joined(start, new Heading("pictures"), new Figures(List.of(figure(160))));
        fixed.addAll(List.of(new Heading("stays"), new Paragraph("short", false)));
        assertThat(written(PdfReport.leaves(made(fixed)).get(0)))
                .extracting(Mark.Writing::text)
                .doesNotContain("stays");
    }

    private static List<Part> joined(List<Part> start, Part... more) {
        List<Part> all = new ArrayList<>(start);
        all.addAll(List.of(more));
        return all;
    }
}
