package easewright.evidence;

import easewright.ease.EaseTables;
import easewright.print.Cautions;
import easewright.print.Reading;
import easewright.print.pdf.PdfBook;
import easewright.print.sheet.Paper;
import easewright.print.sheet.PrintJob;
import easewright.print.sheet.PrintOrder;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Paper, and the pages of a finished print. */
class PapersTest extends Topic {
    private static final Source ISO =
            Source.calculated("ISO 216: A0 of 1 m² and √2, each half of the one before, whole mm");
    private static final Source LETTER = Source.published("8 1/2 × 11 in, docs/sources.md 6");
    private static final Source PDF = Source.calculated("1/72 in to the unit, read from the file's /MediaBox");
    private static final Pattern BOX = Pattern.compile("/MediaBox\\s*\\[\\s*[\\d.]+ [\\d.]+ ([\\d.]+) ([\\d.]+)");
    private static final LocalDate DAY = LocalDate.of(2026, 5, 17);

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "Paper";
    }

    @Override
    String words() {
        return "Sizes of paper, and the size of the first page when the front of the handbook's skirt is printed on it, as it stands in"
                + " the PDF file.";
    }

    @Override
    List<Check> checks() throws Exception {
        checks.clear();
        paper(Paper.A0, ISO, series(0));
        paper(Paper.A1, ISO, series(1));
        paper(Paper.A4, ISO, series(4));
        paper(Paper.LETTER, LETTER, new double[] {8.5 * 25.4, 11 * 25.4});
        return List.copyOf(checks);
    }

    /** Short and long side of A0, A1, …; A0 has 1 m² and sides as 1 to √2, rounded; halves lose their half millimetre. */
    private static double[] series(int number) {
        double small = Math.rint(1000 / Math.sqrt(Math.sqrt(2)));
        double large = Math.rint(1000 * Math.sqrt(Math.sqrt(2)));
        for (int i = 0; i < number; i++) {
            double half = Math.floor(large / 2);
            large = small;
            small = half;
        }
        return new double[] {small, large};
    }

    private void paper(Paper paper, Source source, double[] size) throws Exception {
        String name = paper.label();
        checks.add(Check.number(name + ", short side", source, "mm", size[0], paper.width(), 1e-9));
        checks.add(Check.number(name + ", long side", source, "mm", size[1], paper.height(), 1e-9));
        double[] page = page(paper);
        checks.add(Check.number("page on " + name + ", shorter side", PDF, "mm", size[0], page[0], 1e-3));
        checks.add(Check.number("page on " + name + ", longer side", PDF, "mm", size[1], page[1], 1e-3));
    }

    private static double[] page(Paper paper) throws Exception {
        Reading reading =
                Reading.of(new HandbookSkirt("12", 32.25 * 25.4, 40.75 * 25.4).pattern(), EaseTables.standard());
        PrintJob.Prints prints = PrintJob.of(
                PrintOrder.on(paper, "skirt", DAY).withPieces(List.of("front")),
                Optional.empty(),
                reading,
                Cautions.of(Optional.empty(), reading, Set.of()),
                Words.english(LengthUnit.CM));
        byte[] pdf = PdfBook.of(prints.leaves(), "skirt", DAY, share -> {});
        Matcher box = BOX.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        if (!box.find()) {
            throw new AssertionError("No page in the file");
        }
        double one = Double.parseDouble(box.group(1)) / 72 * 25.4;
        double other = Double.parseDouble(box.group(2)) / 72 * 25.4;
        return new double[] {Math.min(one, other), Math.max(one, other)};
    }
}
