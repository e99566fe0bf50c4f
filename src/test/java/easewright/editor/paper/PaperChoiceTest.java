package easewright.editor.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.paper.PaperChoice.Surface;
import easewright.print.sheet.Paper;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.time.LocalDate;
import java.util.stream.DoubleStream;
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
}
