package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Two lengths that are told beside each other, and what they differ by. */
class AgreeingTest {
    private static final Pattern APART =
            Pattern.compile("one side measures (.+), the other (.+): (.+) apart, too little to matter");

    private static String said(double first, double second, LengthUnit unit) {
        return Words.english(unit)
                .of("reason.about-length", Map.of("first", first, "second", second, "apart", Math.abs(first - second)));
    }

    /** Rounded each by itself these would be 2 11/16 and 2 13/16, of which 1/16 is told as 1/8. */
    @Test
    void inInchesOneLengthIsToldASixteenthBesideWhereThatAddsUp() {
        double first = 2.69 * 25.4;
        assertThat(said(first, first + 0.09 * 25.4, LengthUnit.INCH).replace('\u00a0', ' '))
                .startsWith("one side measures 2 11/16 in, the other 2 3/4 in: 1/16 in apart");
        assertThat(said(254, 254 + 25.4 / 8, LengthUnit.INCH).replace('\u00a0', ' '))
                .startsWith("one side measures 10 in, the other 10 1/8 in: 1/8 in apart");
    }

    /** The band that nobody touched is as long after the change as before, and the row adds up in sixteenths. */
    @Test
    void aRowOfASeamAddsUpBeforeAndAfterInSixteenths() throws Unreadable {
        Words words = Words.english(LengthUnit.INCH);
        assertThat(words.sidesBefore(770, 760, 10, 780, 760)).isEqualTo(row("30 5/16", "29 15/16", "+3/8", "0"));
        assertThat(words.sides(780, 760, 10)).isEqualTo(row("30 11/16", "29 15/16", "+3/8", "+3/8"));
        Random random = new Random(12);
        for (int i = 0; i < 2000; i++) {
            double same = 100 + 700 * random.nextDouble();
            double was = same + 20 * random.nextDouble();
            double is = was + 12 * random.nextDouble();
            double ease = random.nextInt(3) * 5;
            boolean first = random.nextBoolean();
            Words.Sides before =
                    first ? words.sidesBefore(same, was, ease, same, is) : words.sidesBefore(was, same, ease, is, same);
            Words.Sides after = first ? words.sides(same, is, ease) : words.sides(is, same, ease);
            addsUp(before);
            addsUp(after);
            assertThat(first ? before.first() : before.second()).isEqualTo(first ? after.first() : after.second());
            double off = first ? same - is - ease : is - same - ease;
            assertThat(after.off()).as("as it is told alone").isEqualTo(words.signed(off));
            assertThat(after.meant()).isEqualTo(words.signed(ease));
        }
    }

    private static Words.Sides row(String first, String second, String meant, String off) {
        String in = "\u00a0in";
        return new Words.Sides(
                first.replace(' ', '\u00a0') + in, second.replace(' ', '\u00a0') + in, meant + in, off + in);
    }

    private static void addsUp(Words.Sides told) throws Unreadable {
        double first = Lengths.parse(told.first(), LengthUnit.INCH);
        double second = Lengths.parse(told.second(), LengthUnit.INCH);
        double meant = Lengths.parse(told.meant(), LengthUnit.INCH);
        double off = Lengths.parse(told.off(), LengthUnit.INCH);
        assertThat(first - second).as(told.toString()).isCloseTo(meant + off, within(1e-6));
        assertThat(told.toString()).doesNotContain("/32", "/64");
    }

    /** What is more than half a sixteenth off is never told as nothing, and what is less is none or said to be so little. */
    @Test
    void whatASixteenthDoesNotShowIsSaidToBeLess() {
        assertThat(said(300, 300.7, LengthUnit.INCH)).contains(": less than 1/16 in apart");
        assertThat(said(300, 300.8, LengthUnit.INCH)).contains(": 1/16\u00a0in apart");
        assertThat(Words.english(LengthUnit.INCH).sides(300.7, 300, 0).off()).isEqualTo("0\u00a0in");
    }

    /** As a tape is read they would be 0.1 cm apart, and then told as 0.08 or 0.12 cm. */
    @Test
    void centimetresTooAreToldFinelyEnough() {
        assertThat(said(615.9, 617.1, LengthUnit.CM).replace('\u00a0', ' '))
                .startsWith("one side measures 61.59 cm, the other 61.71 cm: 0.12 cm apart");
        assertThat(said(615.9, 601.9, LengthUnit.CM).replace('\u00a0', ' '))
                .as("no finer than needed")
                .startsWith("one side measures 61.6 cm, the other 60.2 cm: 1.4 cm apart");
    }

    /** A list of edges, the page Seams, a report and a command line tell of one seam what it is told everywhere. */
    @Test
    void theSidesOfASeamAreToldAlikeEverywhere() {
        Words words = Words.english(LengthUnit.CM);
        assertThat(words.sides(615.9, 615.9, 0))
                .isEqualTo(new Words.Sides("61.6\u00a0cm", "61.6\u00a0cm", "0\u00a0cm", "0\u00a0cm"));
        assertThat(words.sides(615.9, 615.9, 0).first()).isEqualTo(words.length(615.9));
        assertThat(words.sides(615.9, 617.1, 0))
                .as("as finely as it takes")
                .isEqualTo(new Words.Sides("61.59\u00a0cm", "61.71\u00a0cm", "0\u00a0cm", "\u22120.12\u00a0cm"));
        assertThat(Words.english(LengthUnit.CM)
                        .of("editor.scale.tall", Map.of("piece", "Back", "tall", 665.6))
                        .replace('\u00a0', ' '))
                .as("as it is written on the piece")
                .contains("66.55 cm");
    }

    @Test
    void theShownSidesDifferByWhatIsShownAndNearlyByTheTruth() throws Unreadable {
        Random random = new Random(31);
        for (int i = 0; i < 2000; i++) {
            LengthUnit unit = LengthUnit.values()[random.nextInt(3)];
            double first = 20 + random.nextDouble() * 700;
            double second = first + 0.8 + random.nextDouble() * 6;
            String said = said(first, second, unit);
            Matcher parts = APART.matcher(said);
            assertThat(parts.matches()).as(said).isTrue();
            double one = Lengths.parse(parts.group(1), unit);
            double other = Lengths.parse(parts.group(2), unit);
            double apart = Lengths.parse(parts.group(3), unit);
            assertThat(other - one).as(said).isCloseTo(apart, within(1e-6));
            assertThat(apart)
                    .as(said)
                    .isCloseTo(second - first, within((unit == LengthUnit.CM && apart >= 10 ? 0.5 : 25.4 / 32) + 1e-6));
        }
    }

    private static final Pattern CHANGED =
            Pattern.compile("Seam \"side\": (?:(.+) off before|it fitted before)\\. front changed by (.+), back by"
                    + " (.+); now (?:(.+) too long on (front|back)|it fits)\\. Walk .+");

    private static String changed(double first, double second, double was, LengthUnit unit) {
        return Words.english(unit)
                .forCommands()
                .of(Finding.of("mate-drifted", Severity.CAUTION, "")
                        .with("mate", "side")
                        .with("one", List.of("front"))
                        .with("other", List.of("back"))
                        .with("first.signed", first)
                        .with("second.signed", second)
                        .with("was.signed", was)
                        .with("now.signed", was + first - second));
    }

    /** What it was off and what either side changed by come to what it is said to be off now, with every figure shown. */
    @Test
    void whatAChangeDidAddsUpAsShown() throws Unreadable {
        Random random = new Random(57);
        for (int i = 0; i < 2000; i++) {
            LengthUnit unit = LengthUnit.values()[random.nextInt(3)];
            double was = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 8 - 4;
            double first = random.nextDouble() * 40 - 20;
            double second = first + (random.nextBoolean() ? 2 : -2) * (1 + random.nextDouble() * 3);
            double now = was + first - second;
            // Less than a tape shows is said to be so, and is not reckoned with.
            if (DoubleStream.of(first, second, now, was == 0 ? 9 : was).anyMatch(mm -> Math.abs(mm) < 25.4 / 16)) {
                continue;
            }
            String said = changed(first, second, was, unit);
            Matcher parts = CHANGED.matcher(said);
            assertThat(parts.matches()).as(said).isTrue();
            double then = parts.group(1) == null ? 0 : Lengths.parse(parts.group(1), unit);
            double longer = Lengths.parse(parts.group(4), unit);
            double shown = parts.group(5).equals("front") ? longer : -longer;
            assertThat(Math.signum(was) * then
                            + Lengths.parse(parts.group(2), unit)
                            - Lengths.parse(parts.group(3), unit))
                    .as(said)
                    .isCloseTo(shown, within(1e-6));
            assertThat(shown).as(said).isCloseTo(now, within(25.4 / 32 + 1e-6));
        }
    }

    /** 5 cm is told of 4.98 cm, and 5.08 cm as it is; inches are taken from each other as they are shown. */
    @Test
    void whatIsUnderAFigureThatIsToldAsItIs() {
        assertThat(Words.english(LengthUnit.CM).under(49.8, 50.8)).isEqualTo("0.08\u00a0cm");
        assertThat(Words.english(LengthUnit.INCH).under(49.9, 50.8)).isEqualTo("1/16\u00a0in");
        assertThat(Words.english(LengthUnit.INCH).under(48.5, 50.8)).isEqualTo("1/16\u00a0in");
    }

    /** One seam, one figure: however it is reckoned, a half is rounded up, and alike alone and beside its lengths. */
    @Test
    void noiseDoesNotRoundAHalfDown() {
        for (double noise : new double[] {-3e-12, 0, 3e-12}) {
            assertThat(Lengths.format(105.75 + noise, LengthUnit.CM)).isEqualTo("10.6\u00a0cm");
            assertThat(Lengths.format(-25.75 + noise, LengthUnit.CM)).isEqualTo("\u22122.6\u00a0cm");
            assertThat(Lengths.format(25.4 / 32 + noise, LengthUnit.INCH)).isEqualTo("1/16\u00a0in");
            assertThat(said(340.25 + noise, 366, LengthUnit.CM).replace('\u00a0', ' '))
                    .startsWith("one side measures 34.03 cm, the other 36.6 cm: 2.57 cm apart");
        }
    }

    /** In sixteenths of an inch +3/16, +1/16 and +1/16 would be told, of which the last is no difference of the others. */
    @Test
    void whatAChangeDidIsToldSoThatItAddsUp() {
        assertThat(changed(0.16 * 25.4, 0.09 * 25.4, 0, LengthUnit.INCH).replace('\u00a0', ' '))
                .contains("front changed by +1/8 in, back by +1/16 in", "now 1/16 in too long on front");
        assertThat(changed(-0.25, 3, 0, LengthUnit.MM).replace('\u00a0', ' '))
                .as("halves as they are shown")
                .contains("front changed by \u22120.3 mm, back by +3 mm", "now 3.3 mm too long on back");
    }

    /** Off by 0 cm is said of no seam: it fits; and on an inch tape less than half of 1/16 in cannot be read. */
    @Test
    void whatIsOffByNothingFits() {
        assertThat(changed(4, 1, -3, LengthUnit.CM)).contains("; now it fits.").doesNotContain("0\u00a0cm off");
        assertThat(changed(4, 1, 0.04, LengthUnit.CM)).startsWith("Seam \"side\": it fitted before.");
        assertThat(changed(4, 1, 0.6, LengthUnit.INCH)).startsWith("Seam \"side\": less than 1/16 in off before.");
        assertThat(changed(4, 1, 0.6, LengthUnit.CM)).contains(": 0.06\u00a0cm off before");
    }

    @Test
    void ofSeveralSizesTheRangesAreTold() {
        Map<String, Object> values =
                Map.of("first", new Span(500, 520), "second", new Span(501, 521), "apart", new Span(1, 1));
        assertThat(Words.english(LengthUnit.CM)
                        .of("reason.about-length", values)
                        .replace('\u00a0', ' '))
                .startsWith("one side measures 50 cm to 52 cm, the other 50.1 cm to 52.1 cm: 0.1 cm apart");
        double first = 2.69 * 25.4;
        double second = first + 0.09 * 25.4;
        Map<String, Object> alike = Map.of(
                "first", new Span(first, first), "second", new Span(second, second), "apart", new Span(2.3, 2.3));
        assertThat(Words.english(LengthUnit.INCH).of("reason.about-length", alike))
                .contains("2\u00a011/16\u00a0in, the other 2\u00a03/4\u00a0in: 1/16\u00a0in apart");
    }
}
