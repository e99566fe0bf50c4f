package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Widths that are told beside the girth that they are the sum of. */
class AddingTest {
    private static List<String> said(Adding adding) {
        return adding.said().stream().map(s -> s.replace('\u00a0', ' ')).toList();
    }

    private static Adding of(double sum, LengthUnit unit, double... each) {
        int[] twice = new int[each.length];
        java.util.Arrays.fill(twice, 2);
        return Words.english(unit).adding(each, twice, Lengths.shown(sum, unit));
    }

    /** Each by itself, 26.95 and 25.45 cm come to 104.8, and 10 5/8 and 10 1/16 in to 41 3/8. */
    @Test
    void whoAddsThemFindsTheGirth() {
        assertThat(said(of(1048.78, LengthUnit.CM, 269.69, 254.7))).containsExactly("26.95 cm", "25.5 cm");
        assertThat(said(of(41.31 * 25.4, LengthUnit.INCH, 10.6 * 25.4, 10.055 * 25.4)))
                .as("no halves of a sixteenth but where they have to be")
                .containsExactly("10 19/32 in", "10 1/16 in");
        assertThat(said(of(1048.52, LengthUnit.CM, 269.68, 254.58)))
                .as("an odd half of a millimetre in pieces cut twice: no figure with three places")
                .containsExactly("26.95 cm", "25.45 cm");
        assertThat(said(of(770, LengthUnit.CM, 192.5, 192.5))).containsExactly("19.25 cm", "19.25 cm");
    }

    @Test
    void equalOnesAreToldAlikeWhereThatAddsUp() {
        assertThat(said(of(30.3125 * 25.4, LengthUnit.INCH, 7.578125 * 25.4, 7.578125 * 25.4)))
                .as("no 64ths, and what adds up rather than what is alike")
                .containsExactlyInAnyOrder("7 19/32 in", "7 9/16 in");
        assertThat(said(of(795, LengthUnit.CM, 198.74, 198.74))).containsExactlyInAnyOrder("19.85 cm", "19.9 cm");
        Adding four = of(770.5, LengthUnit.CM, 192.625, 192.625);
        assertThat(said(four)).containsExactly("19.25 cm", "19.25 cm");
        assertThat(four.addsUp()).isFalse();
    }

    @Test
    void noneIsToldFartherThanOneStepFromTheTruth() throws Unreadable {
        Random random = new Random(192);
        int odd = 0;
        int sums = 0;
        for (int turn = 0; turn < 3000; turn++) {
            LengthUnit unit = LengthUnit.values()[random.nextInt(3)];
            double[] each = new double[1 + random.nextInt(6)];
            int[] times = new int[each.length];
            double sum = 0;
            for (int i = 0; i < each.length; i++) {
                each[i] = 40 + random.nextInt(4000) / 10.0 + random.nextDouble();
                times[i] = 1 + random.nextInt(2);
                sum += each[i] * times[i];
            }
            Adding adding = Words.english(unit).adding(each, times, Lengths.shown(sum, unit));
            double told = 0;
            for (int i = 0; i < each.length; i++) {
                double mm = Lengths.parse(adding.said().get(i), unit);
                assertThat(mm).isCloseTo(each[i], within(Lengths.step(sum, unit) + 1e-6));
                told += mm * times[i];
            }
            double off = Math.abs(told - Lengths.shown(sum, unit));
            assertThat(off).isLessThan(Lengths.step(sum, unit) + 1e-6);
            assertThat(adding.addsUp()).isEqualTo(off < 1e-6);
            assertThat(adding.said()).noneMatch(s -> s.matches(".*(/64|\\.\\d{3}).*"));
            odd += adding.said().stream().anyMatch(s -> s.contains("/32")) ? 1 : 0;
            sums += adding.addsUp() ? 1 : 0;
        }
        assertThat(odd).as("few are told in finer parts").isLessThan(1000);
        assertThat(sums).as("nearly all come to their sum").isGreaterThan(2600);
    }

    /** What three equal parts cannot come to is told as nearly as it can be. */
    @Test
    void threeEqualPartsAreToldAsNearlyAsTheyCan() {
        Adding three = Words.english(LengthUnit.CM).adding(new double[] {245.6}, new int[] {3}, 737);
        assertThat(said(three)).containsExactly("24.55 cm");
        assertThat(three.addsUp()).isFalse();
    }
}
