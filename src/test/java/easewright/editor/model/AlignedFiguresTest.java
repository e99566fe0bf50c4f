package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AlignedFiguresTest {
    private static final String DIGIT = "\u2007";

    @Test
    void decimalsHaveAsManyPlacesAsTheLongest() {
        assertThat(AlignedFigures.of(List.of("51.6", "59", "37.94", "+2")))
                .containsExactly("51.60", "59.00", "37.94", "+2.00");
        assertThat(AlignedFigures.of(List.of("51", "7"))).containsExactly("51", "7");
    }

    @Test
    void fractionsAreFilledUpToTheLongest() {
        assertThat(AlignedFigures.of(List.of("+13/16", "+1 3/8", "+1", "the same")))
                .containsExactly("+13/16", "+1 3/8" + DIGIT + DIGIT, "+1 \u2008" + DIGIT.repeat(4), "the same");
    }

    /** All end in as many signs after the point, or after the whole number. Seed 7. */
    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void whateverIsShownStandsByItsPointOrFraction(LengthUnit unit) {
        Words words = Words.english(unit);
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            List<String> figures = DoubleStream.generate(() -> random.nextDouble() * 1200 - 600)
                    .limit(1 + random.nextInt(6))
                    .mapToObj(words::signedFigure)
                    .toList();
            List<String> aligned = AlignedFigures.of(figures);
            assertThat(aligned).hasSameSizeAs(figures);
            assertThat(aligned.stream().map(AlignedFiguresTest::behind).distinct())
                    .as("%s", aligned)
                    .hasSize(1);
            for (int k = 0; k < figures.size(); k++) {
                assertThat(aligned.get(k)).startsWith(figures.get(k));
            }
        }
    }

    /** How many signs stand behind the point, or in the fraction and what fills it up. */
    private static int behind(String figure) {
        int point = figure.indexOf('.');
        int gap = figure.indexOf(' ');
        return point >= 0
                ? figure.length() - point
                : gap >= 0 ? figure.length() - gap - 1 : figure.indexOf('/') >= 0 ? figure.length() - 1 : 0;
    }
}
