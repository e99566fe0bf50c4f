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
    @Test
    void decimalsHaveAsManyPlacesAsTheLongest() {
        assertThat(AlignedFigures.of(List.of("51.6", "59", "37.94", "+2")))
                .containsExactly("51.60", "59.00", "37.94", "+2.00");
        assertThat(AlignedFigures.of(List.of("51", "7"))).containsExactly("51", "7");
    }

    /** A whole number filled up for a fraction beside it would stand at the figure of the column before. */
    @Test
    void inchesEndInOneLineAsTheFieldsDo() {
        assertThat(AlignedFigures.of(List.of("1\u00a0in", "1\u00a015/16\u00a0in"), 8, Words.english(LengthUnit.INCH)))
                .containsExactly("1", "1 15/16");
        assertThat(AlignedFigures.of(List.of("2.5\u00a0cm", "4\u00a0cm"), 8, Words.english(LengthUnit.CM)))
                .containsExactly("2.5", "4.0");
    }

    /** All end in as many signs after the point. Seed 7. */
    @ParameterizedTest
    @EnumSource(value = LengthUnit.class, names = "INCH", mode = EnumSource.Mode.EXCLUDE)
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

    /** How many signs stand behind the point. */
    private static int behind(String figure) {
        int point = figure.indexOf('.');
        return point >= 0 ? figure.length() - point : 0;
    }
}
