package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** How two sides of a seam miss each other is told in what is longer, what is eased in and what is left over. */
class MisfitTest {
    private static final Pattern LEFT = Pattern.compile(
            "Seam .+ does not fit: (.+) on Back, (.+) on Front\\. It is (.+) longer on (?:Back|Front); (.+) is to be eased in,"
                    + " (.+) is (too much|missing)\\. Change one side\\.");

    private static Finding off(double first, double second, double ease) {
        return Finding.of("mate-mismatch", Severity.FAULT, "")
                .with("mate", "side seam")
                .with("one", List.of("Back"))
                .with("other", List.of("Front"))
                .with("first", first)
                .with("second", second)
                .with("ease.signed", ease)
                .with("drift.signed", first - second - ease);
    }

    private static String said(double first, double second, double ease) {
        return Words.english(LengthUnit.CM).of(off(first, second, ease)).replace('\u00a0', ' ');
    }

    @Test
    void whatIsLongerWhatIsMeantAndWhatIsLeft() {
        assertThat(said(614, 600, 0)).contains("61.4 cm on Back, 60 cm on Front. It is 1.4 cm longer on Back. Change");
        assertThat(said(600, 614, 0)).contains(". It is 1.4 cm longer on Front. Change");
        assertThat(said(614, 600, 10))
                .contains(". It is 1.4 cm longer on Back; 1 cm is to be eased in, 0.4 cm is too much. Change");
        assertThat(said(606, 600, 10))
                .contains(". It is 0.6 cm longer on Back; 1 cm is to be eased in, 0.4 cm is missing. Change");
        assertThat(said(600, 614, -10))
                .contains(". It is 1.4 cm longer on Front; 1 cm is to be eased in, 0.4 cm is too much. Change");
        assertThat(said(600, 600, 10))
                .contains(
                        ". It is equally long on both sides; on Back it should be 1 cm longer, to be eased in. Change");
        assertThat(said(600, 606, 10))
                .contains(". It is 0.6 cm longer on Front, but should be 1 cm longer on Back, to be eased in. Change");
    }

    @Test
    void allPiecesOfTheLongerSideAreNamed() {
        Finding several = off(614, 600, 0).with("one", List.of("Back", "Yoke"));
        assertThat(Words.english(LengthUnit.CM).of(several)).contains(". It is 1.4\u00a0cm longer on Back and Yoke. ");
    }

    /** What is to be eased in and what is left over come to what one side is longer by, with every figure as it is shown. */
    @Test
    void whatIsToldAddsUp() throws Unreadable {
        Random random = new Random(61);
        int told = 0;
        for (int i = 0; i < 2000; i++) {
            LengthUnit unit = LengthUnit.values()[random.nextInt(3)];
            double second = 100 + 600 * random.nextDouble();
            double ease = (random.nextBoolean() ? 1 : -1) * (3 + 12 * random.nextDouble());
            double first = second + ease * (0.2 + 2 * random.nextDouble());
            if (Math.abs(first - second - ease) < 2) {
                continue;
            }
            String said = Words.english(unit).of(off(first, second, ease));
            if (unit == LengthUnit.INCH && said.contains(" equally long ")) {
                assertThat(Math.abs(first - second)).as(said).isLessThan(25.4 / 16);
                continue;
            }
            Matcher parts = LEFT.matcher(said);
            assertThat(parts.matches()).as(said).isTrue();
            double one = Lengths.parse(parts.group(1), unit);
            double other = Lengths.parse(parts.group(2), unit);
            double more = Lengths.parse(parts.group(3), unit);
            double eased = Lengths.parse(parts.group(4), unit);
            double left = Lengths.parse(parts.group(5), unit);
            boolean much = parts.group(6).equals("too much");
            assertThat(Math.abs(one - other)).as(said).isCloseTo(more, within(1e-6));
            assertThat(more - eased).as(said).isCloseTo(much ? left : -left, within(1e-6));
            assertThat(much).as(said).isEqualTo(Math.abs(first - second) > Math.abs(ease));
            told++;
        }
        assertThat(told).isGreaterThan(1000);
    }

    @Test
    void ofSeveralSizesItIsToldWhichSideIsTooLong() {
        Words words = Words.english(LengthUnit.CM);
        Map<String, Object> values = Map.of(
                "mate", "side seam",
                "one", List.of("Back"),
                "other", List.of("Front"),
                "first", new Span(610, 630),
                "second", new Span(600, 618),
                "ease.signed", new Span(0, 0),
                "drift.signed", new Span(10, 12));
        assertThat(words.of("finding.mate-drift", values).replace('\u00a0', ' '))
                .contains(". It is 1 cm to 1.2 cm too long on Back. ");
        Map<String, Object> either = new HashMap<>(values);
        either.put("drift.signed", new Span(-4, 12));
        assertThat(words.of("finding.mate-drift", either).replace('\u00a0', ' '))
                .contains(". It is too long on one side or the other, by up to 1.2 cm. ");
    }
}
