package easewright.print.sheet;

import easewright.alter.Alteration;
import easewright.alter.Refusal;
import easewright.ease.EaseTables;
import easewright.pattern.Pattern;
import easewright.print.Cautions;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.pdf.PdfBook;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** Prints of the sample garments. */
final class Prints {
    static final EaseTables TABLES = EaseTables.standard();
    static final LocalDate DAY = LocalDate.of(2026, 5, 17);

    private Prints() {}

    static Pattern sample(String id) {
        try {
            return SvgFile.read(Path.of("sample-pieces", id + ".svg")).pattern();
        } catch (SvgProblem e) {
            throw new AssertionError(e);
        }
    }

    static Pattern changed(Pattern pattern, Alteration change) {
        try {
            return change.apply(pattern).pattern();
        } catch (Refusal e) {
            throw new AssertionError(e);
        }
    }

    static PrintOrder on(Paper paper) {
        return PrintOrder.on(paper, "test", DAY);
    }

    static PrintJob.Prints of(Pattern pattern, PrintOrder order) throws PrintProblem {
        return of(pattern, order, LengthUnit.CM);
    }

    static PrintJob.Prints of(Pattern pattern, PrintOrder order, LengthUnit unit) throws PrintProblem {
        Reading now = Reading.of(pattern, TABLES);
        Optional<Reading> before = Past.of(pattern).map(p -> Reading.of(p, TABLES));
        return PrintJob.of(order, before, now, Cautions.of(before, now, Set.of()), Words.english(unit));
    }

    static byte[] pdf(PrintJob.Prints prints) {
        return PdfBook.of(prints.leaves(), "test", DAY, share -> {});
    }
}
