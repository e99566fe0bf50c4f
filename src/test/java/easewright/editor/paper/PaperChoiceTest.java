package easewright.editor.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.paper.PaperChoice.Surface;
import easewright.print.pdf.PdfBook;
import easewright.print.sheet.Paper;
import easewright.print.sheet.PrintProblem;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PaperChoiceTest {
    /** What stands in the fields at first is what is printed, and not a rounding of it. */
    @Test
    void theFirstLengthsAreWholeInTheUnitTheyAreShownIn() {
        PaperChoice inches = PaperChoice.first(true);
        assertThat(DoubleStream.of(inches.margin(), inches.overlap(), inches.clothWidth())
                        .map(mm -> mm / 25.4 * 16))
                .allSatisfy(sixteenths -> assertThat(sixteenths).isCloseTo(Math.rint(sixteenths), within(1e-9)));
        assertThat(Words.english(LengthUnit.INCH).length(inches.margin())).isEqualTo("3/8\u00a0in");
        PaperChoice cm = PaperChoice.first(false);
        assertThat(Words.english(LengthUnit.CM).length(cm.margin())).isEqualTo("1\u00a0cm");
        assertThat(cm.margin()).isEqualTo(10);
    }

    /** A report has a paper of its own, which follows the sheets that pieces are joined of. */
    @Test
    void aReportIsOnA4OrLetter() {
        PaperChoice first = PaperChoice.first(false);
        assertThat(paper(first)).isEqualTo(Paper.A4);
        assertThat(paper(PaperChoice.first(true))).isEqualTo(Paper.LETTER);
        PaperChoice letter = first.withSurface(Surface.LETTER);
        assertThat(paper(letter)).isEqualTo(Paper.LETTER);
        assertThat(paper(letter.withSurface(Surface.A0))).isEqualTo(Paper.LETTER);
        assertThat(paper(letter.withSurface(Surface.A3))).isEqualTo(Paper.LETTER);
        assertThat(letter.withSurface(Surface.A3).joined()).isTrue();
        assertThat(letter.withSurface(Surface.A1).joined()).isFalse();
        assertThat(letter.withSurface(Surface.PROJECTOR).joined()).isFalse();
        PaperChoice own = letter.withReportOn(Surface.A4);
        assertThat(paper(own)).isEqualTo(Paper.A4);
        assertThat(own.surface()).isEqualTo(Surface.LETTER);
        assertThatThrownBy(() -> first.withReportOn(Surface.ROLL)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Paper paper(PaperChoice choice) {
        return choice.reportOrder("test", LocalDate.of(2026, 5, 17)).paper();
    }

    private static Desk nest() throws Exception {
        Path file = Path.of("sample-pieces/skirt-sizes.svg");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(file), Optional.of(file), "skirt-sizes.svg")));
        session.chooseSize("12");
        return session.desk();
    }

    private static PaperPages pages(Desk desk, PaperChoice choice) throws Exception {
        return PaperPages.of(desk, choice, LocalDate.of(2026, 11, 26));
    }

    /** Two wearers of two sizes: each has pages of her own, and none of the third. */
    @Test
    void ofANestOnlyTheSizesWantedArePrintedAndReported() throws Exception {
        Desk desk = nest();
        PaperChoice one = PaperChoice.first(false).withSizes(Set.of("12")).withSurface(Surface.A0);
        assertThat(written(pages(desk, one))).contains("Front 12").doesNotContain("Front 10", "Front 14");
        PaperChoice report = one.withReport(true);
        String page = new String(pages(desk, report).html().orElseThrow(), StandardCharsets.UTF_8);
        assertThat(page).contains("hip").doesNotContain("(10)", "(14)", "Front 10", "Front 14");
        String two = new String(pages(desk, report.withSize("14", true)).html().orElseThrow(), StandardCharsets.UTF_8);
        assertThat(two).contains("size 12", "size 14").doesNotContain("size 10", "Front 10");
        assertThat(pages(desk, report).leaves().size())
                .isLessThan(pages(desk, report.withSizes(Set.of("10", "12", "14")))
                        .leaves()
                        .size());
        assertThatThrownBy(() -> pages(desk, one.withSize("12", false)))
                .isInstanceOfSatisfying(
                        PrintProblem.class, p -> assertThat(p.code()).isEqualTo("print-no-size-chosen"));
    }

    /** Whoever measured the square on the table is not told on paper that nothing was measured. */
    @Test
    void aReportLooksAtTheScaleAsProvedByNow() throws Exception {
        SvgFile svg = SvgFile.read("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 900 700">
                <path id="f" d="M 45 137 L 255 137 L 295 640 L 45 640 Z" fill="none" stroke="#000"/>
                <rect id="square" x="600" y="100" width="50" height="50" fill="none" stroke="#000"/>
                <text x="600" y="170" font-size="14">5 cm</text>
                </svg>
                """.getBytes(StandardCharsets.UTF_8), "panel.svg");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(svg, Optional.empty(), "panel.svg")));
        assertThat(report(session)).contains("does not say how large", "as things stand");
        session.edit(svg.atScale(session.desk().pattern(), 1, true));
        assertThat(report(session)).doesNotContain("how large", "as things stand", "trusted");
        session.undo();
        assertThat(report(session)).contains("does not say how large");
    }

    private static String report(Session session) throws Exception {
        PaperChoice report = PaperChoice.first(false).withReport(true);
        return new String(pages(session.desk(), report).html().orElseThrow(), StandardCharsets.UTF_8);
    }

    private static String written(PaperPages pages) throws Exception {
        byte[] pdf = PdfBook.of(pages.leaves(), pages.title(), pages.date(), share -> {});
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aFileOfSomeSizesIsCalledByThem() throws Exception {
        Desk desk = nest();
        PaperChoice first = PaperChoice.first(false);
        assertThat(PaperPages.name(desk, first.withSizes(Set.of("12")))).isEqualTo("skirt-sizes 12");
        assertThat(PaperPages.name(desk, first.withSizes(Set.of("14", "10")))).isEqualTo("skirt-sizes 10 14");
        assertThat(PaperPages.name(desk, first.withSizes(Set.of("10", "12", "14"))))
                .isEqualTo("skirt-sizes");
    }

    /** A slash would name a folder, and some systems take none of the other signs in the name of a file. */
    @Test
    void whatNoFileMayBeCalledIsReplacedInItsName() throws Exception {
        Desk desk = nest();
        Map<String, String> odd = Map.of("10", "38/40", "12", "a\\b:c*d?e\"f<g>h|i", "14", "14");
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(desk.file().orElseThrow()));
        session.edit(desk.pattern()
                .withPieces(desk.pattern().pieces().stream()
                        .map(p -> p.toBuilder().size(p.size().map(odd::get)).build())
                        .toList()));
        PaperChoice two = PaperChoice.first(false).withSizes(Set.of("38/40", "a\\b:c*d?e\"f<g>h|i"));
        assertThat(PaperPages.name(session.desk(), two)).isEqualTo("skirt-sizes 38-40 a-b-c-d-e-f-g-h-i");
    }
}
