package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "24 mm|24",
                "+24mm|24",
                "−15 mm|-15",
                "–15 mm|-15",
                "-1/2 in|-12.7",
                "3,5 cm|35",
                "3.5cm|35",
                ".5 cm|5",
                "2. cm|20",
                "1.5|15",
                "1 1/2 in|38.1",
                "1-1/2 inches|38.1",
                "5/8 in|15.875",
                "1½\"|38.1",
                "½ in|12.7",
                "1 ⅜ ″|34.925",
                "5⁄8 in|15.875",
                "1 m|1000",
                "0.25 m|250",
                "2 CM|20",
                "12 in.|304.8",
                "5/8|6.25",
                "0|0",
                "\u00a024\u00a0mm|24",
            })
    void readsWhatPeopleWrite(String text, double mm) throws Unreadable {
        assertThat(Lengths.parse(text, LengthUnit.CM)).isCloseTo(mm, within(1e-9));
    }

    @Test
    void takesTheAssumedUnitWhereNoneIsWritten() throws Unreadable {
        assertThat(Lengths.parse("5/8", LengthUnit.INCH)).isEqualTo(15.875);
        assertThat(Lengths.parse("1.5", LengthUnit.MM)).isEqualTo(1.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wide|length-not-a-number",
                "12 34 mm|length-not-a-number",
                "--3 mm|length-not-a-number",
                "1e9 mm|length-not-a-number",
                "NaN|length-not-a-number",
                "3 1.5 in|length-not-a-number",
                "1.2.3|length-not-a-number",
                "24 parsec|length-unit-unknown",
                "1,234 mm|length-comma-unclear",
                "3/0 in|length-fraction-by-zero",
                "101 m|length-too-large",
                "99999999999999999999999999 mm|length-too-large",
                "''|length-empty",
            })
    void saysWhatIsWrong(String text, String code) {
        assertThatThrownBy(() -> Lengths.parse(text, LengthUnit.CM)).isInstanceOfSatisfying(Unreadable.class, e -> {
            assertThat(e.code()).isEqualTo(code);
            assertThat(Words.english(LengthUnit.CM).problem(e.code(), e.values()))
                    .doesNotContain("{")
                    .doesNotStartWith("problem.")
                    .containsPattern("(Write|Use|Check)");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24|MM|24 mm",
                "24.04|MM|24 mm",
                "24|CM|2.4 cm",
                "-15|CM|−1.5 cm",
                "980|CM|98 cm",
                "1049.864|CM|105 cm",
                "269.4|CM|26.95 cm",
                "-269.45|CM|−26.95 cm",
                "192.5|CM|19.25 cm",
                "192.7|CM|19.25 cm",
                "192.8|CM|19.3 cm",
                "999.9|CM|100 cm",
                "9.96|CM|1 cm",
                "6.25|CM|0.63 cm",
                "0.6|CM|0.06 cm",
                "38.1|INCH|1 1/2 in",
                "15.875|INCH|5/8 in",
                "-6.35|INCH|−1/4 in",
                "25.3|INCH|1 in",
                "0.8|INCH|1/16 in",
                "0.7|INCH|0 in",
                "0|INCH|0 in",
                "-0.01|MM|0 mm",
                "1000000|MM|1000000 mm",
            })
    void showsInTheUnit(double mm, LengthUnit unit, String text) {
        assertThat(Lengths.format(mm, unit).replace('\u00a0', ' ')).isEqualTo(text);
    }

    @Test
    void whatIsShownReadsBackWithinTheRounding() throws Unreadable {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double mm = (random.nextDouble() - 0.5) * 4000;
            for (LengthUnit unit : LengthUnit.values()) {
                double rounding = switch (unit) {
                    case MM -> 0.05;
                    case CM -> Math.abs(mm) < 10 ? 0.05 : 0.25;
                    case INCH -> 25.4 / 32;
                };
                assertThat(Lengths.parse(Lengths.format(mm, unit), unit)).isCloseTo(mm, within(rounding + 1e-9));
                assertThat(Lengths.parse(Lengths.signed(mm, unit), unit)).isCloseTo(mm, within(rounding + 1e-9));
            }
        }
    }

    /** "The largest amount that works is …" must work when it is typed as it stands. */
    @Test
    void limitsAreShownRoundedTowardsNothing() throws Unreadable {
        Random random = new Random(8);
        for (int i = 0; i < 2000; i++) {
            double mm = (random.nextDouble() - 0.5) * 400;
            for (LengthUnit unit : LengthUnit.values()) {
                String shown = Words.english(unit)
                        .problem("girth-not-met", Map.of("piece", "Front", "level", "hip", "largest", mm));
                Matcher amount = Pattern.compile("works here is (.*?)\\.( |$)").matcher(shown);
                assertThat(amount.find()).as(shown).isTrue();
                double step = switch (unit) {
                    case MM -> 0.1;
                    case CM -> Math.abs(mm) < 10 ? 0.1 : 0.5;
                    case INCH -> 25.4 / 16;
                };
                double read = Lengths.parse(amount.group(1), unit);
                if (Math.abs(mm) >= step) {
                    assertThat(Math.abs(read)).as(shown).isLessThanOrEqualTo(Math.abs(mm) + 1e-7);
                    assertThat(Math.abs(mm) - Math.abs(read)).as(shown).isLessThan(step);
                }
            }
        }
    }

    @Test
    void smallLengthsAreToldInTheUnitThatWasChosen() {
        assertThat(Lengths.format(0.5, LengthUnit.CM)).isEqualTo("0.05\u00a0cm");
        assertThat(Lengths.signed(-0.3, LengthUnit.CM)).isEqualTo("\u22120.03\u00a0cm");
        assertThat(Lengths.format(0.01, LengthUnit.CM)).isEqualTo("0\u00a0cm");
        assertThat(Lengths.format(1, LengthUnit.CM)).isEqualTo("0.1\u00a0cm");
        assertThat(Lengths.format(0.5, LengthUnit.MM)).isEqualTo("0.5\u00a0mm");
    }

    /** Who has chosen inches reads first how an inch is typed. */
    @Test
    void theExamplesBeginInTheUnit() {
        for (String code : new String[] {"length-empty", "length-not-a-number"}) {
            assertThat(Words.english(LengthUnit.INCH).problem(code, Map.of("text", "ninety")))
                    .contains("such as 1\u00a01/2\u00a0in, 5/8\u00a0in, 24\u00a0mm or 3.5\u00a0cm.");
            assertThat(Words.english(LengthUnit.CM).problem(code, Map.of("text", "ninety")))
                    .contains("such as 24\u00a0mm, 3.5\u00a0cm, ");
        }
    }

    @Test
    void lengthsInANoteOfASourceAreRetoldInTheUnit() {
        Words cm = Words.english(LengthUnit.CM);
        assertThat(cm.retold("3 in below the waist, seated")).isEqualTo("7.6\u00a0cm below the waist, seated");
        assertThat(cm.retold("also given as 3/4 to 1 in")).isEqualTo("also given as 1.9\u00a0to\u00a02.5\u00a0cm");
        assertThat(cm.retold("1 1/2 in or 2 in all")).isEqualTo("3.8\u00a0cm or 5.1\u00a0cm all");
        assertThat(cm.retold("total of a fitted garment, 2 inside")).isEqualTo("total of a fitted garment, 2 inside");
        assertThat(Words.english(LengthUnit.INCH).retold("from 5 cm")).isEqualTo("from 1\u00a015/16\u00a0in");
    }

    @Test
    void equalPartsAreShownSoThatTheyAddUp() {
        Words words = Words.english(LengthUnit.CM);
        assertThat(words.of("editor.here.each", Map.of("seams", 4, "amount.signed", 25 / 4.0)))
                .contains("+0.625\u00a0cm each")
                .doesNotContain("about");
        assertThat(words.of("editor.here.each", Map.of("seams", 3, "amount.signed", 25 / 3.0)))
                .contains("about +0.83\u00a0cm each");
        assertThat(Words.english(LengthUnit.INCH)
                        .of("editor.here.each", Map.of("seams", 4, "amount.signed", -15.875 / 4)))
                .contains("\u22125/32\u00a0in each");
        assertThat(Lengths.part(25 / 4.0, LengthUnit.MM)).contains("+6.25\u00a0mm");
    }

    @Test
    void aLengthSaysItsUnitOrNot() {
        for (String bare : new String[] {"24", "+24", "1 1/2", "1½", "−3,5"}) {
            assertThat(Lengths.saysItsUnit(bare)).as(bare).isFalse();
        }
        for (String told : new String[] {"24mm", "1 1/2 in", "1½\"", "0", "0.0", "nonsense", ""}) {
            assertThat(Lengths.saysItsUnit(told)).as(told).isTrue();
        }
    }
}
