package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Two lengths that are told beside each other, and what they differ by. */
class AgreeingTest {
    private static final Pattern APART =
            Pattern.compile("one side measures (.+), the other (.+): (.+) apart, which counts as the same");

    private static String said(double first, double second, LengthUnit unit) {
        return Words.english(unit)
                .of("reason.about-length", Map.of("first", first, "second", second, "apart", Math.abs(first - second)));
    }

    /** In sixteenths these would be 2 11/16 and 2 13/16, told as 1/16 apart. */
    @Test
    void sidesAreToldFinelyEnoughForTheirDifference() {
        double first = 2.715 * 25.4;
        assertThat(said(first, first + 0.093 * 25.4, LengthUnit.INCH).replace('\u00a0', ' '))
                .startsWith("one side measures 2 23/32 in, the other 2 13/16 in: 3/32 in apart");
        assertThat(said(254, 254 + 25.4 / 8, LengthUnit.INCH).replace('\u00a0', ' '))
                .as("no finer than needed")
                .startsWith("one side measures 10 in, the other 10 1/8 in: 1/8 in apart");
    }

    @Test
    void theShownSidesDifferByWhatIsShownAndNearlyByTheTruth() throws Unreadable {
        Random random = new Random(31);
        for (int i = 0; i < 2000; i++) {
            LengthUnit unit = LengthUnit.values()[random.nextInt(3)];
            double first = 20 + random.nextDouble() * 700;
            double second = first + 0.6 + random.nextDouble() * 6;
            String said = said(first, second, unit);
            Matcher parts = APART.matcher(said);
            assertThat(parts.matches()).as(said).isTrue();
            double one = Lengths.parse(parts.group(1), unit);
            double other = Lengths.parse(parts.group(2), unit);
            double apart = Lengths.parse(parts.group(3), unit);
            assertThat(other - one).as(said).isCloseTo(apart, within(1e-6));
            assertThat(apart).as(said).isCloseTo(second - first, within(25.4 / 64 + 1e-6));
        }
    }

    @Test
    void ofSeveralSizesTheRangesAreTold() {
        Map<String, Object> values =
                Map.of("first", new Span(500, 520), "second", new Span(501, 521), "apart", new Span(1, 1));
        assertThat(Words.english(LengthUnit.CM)
                        .of("reason.about-length", values)
                        .replace('\u00a0', ' '))
                .startsWith("one side measures 50 cm to 52 cm, the other 50.1 cm to 52.1 cm: 0.1 cm apart");
        double first = 2.715 * 25.4;
        double second = first + 0.093 * 25.4;
        Map<String, Object> alike = Map.of(
                "first", new Span(first, first), "second", new Span(second, second), "apart", new Span(2.3, 2.3));
        assertThat(Words.english(LengthUnit.INCH).of("reason.about-length", alike))
                .contains("3/32\u00a0in apart");
    }
}
