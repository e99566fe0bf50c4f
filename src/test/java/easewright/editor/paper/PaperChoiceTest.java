package easewright.editor.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import easewright.text.Words;
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
}
