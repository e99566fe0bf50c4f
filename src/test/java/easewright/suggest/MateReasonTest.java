package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Two sides of a seam are said to measure the same only where a tape would say so too. */
class MateReasonTest {
    /** Of the side seam of a plain skirt whose back is drawn so much longer at the hem, mm. */
    private static String reason(double longer) throws Exception {
        String sheet = String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' width='1200mm' height='900mm' viewBox='0 0 1200 900'>"
                        + "<path d='M50,100 L250,100 L290,700 L50,700 Z'/>"
                        + "<text x='100' y='400' font-size='14'>Skirt front, cut 1 on fold</text>"
                        + "<path d='M900,100 L700,100 L660,%1$.3f L900,%1$.3f Z'/>"
                        + "<text x='740' y='400' font-size='14'>Skirt back, cut 2</text></svg>",
                700 + longer);
        Words words = Words.english(LengthUnit.INCH);
        return Suggestions.of(SuggestionsTest.sheet(sheet), Set.of()).all().stream()
                .filter(MateSuggestion.class::isInstance)
                .map(s -> ((MateSuggestion) s).reason())
                .map(r -> words.of("reason." + r.code(), r.values()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameIsTheSame() throws Exception {
        assertThat(reason(0)).isEqualTo("both sides measure 23\u00a011/16\u00a0in");
    }

    /** As the pages Seams and True say it of the same seam. */
    @Test
    void whatTheyDifferByIsJudgedAsOnTheOtherPages() throws Exception {
        assertThat(reason(1.4)).endsWith("too little to matter");
        Words words = Words.english(LengthUnit.INCH);
        for (double works : new double[] {1.6, 2.6, 2.9}) {
            assertThat(reason(works) + ".").as("%s mm", works).endsWith(words.of("editor.seam.works"));
        }
        for (String line : List.of("finding.mate-drift", "editor.follow.works", "editor.follow.text.works")) {
            assertThat(words.of(line)).contains(words.of("editor.seam.works"));
        }
        assertThat(words.of("finding.mate-drift.why")).contains("Threads 200");
        assertThat(reason(3.2)).doesNotContain("accept");
    }

    /** The legs of a dart that slants are not of one length: drawn like that they do not fold. */
    @Test
    void legsOfADartThatDifferAreToldWithTheirLengths() throws Exception {
        assertThat(dart(150)).isEqualTo("two lines of equal length that meet");
        assertThat(dart(170))
                .startsWith("two lines that meet, 10.44 cm and 10.05 cm long: 0.39 cm apart")
                .doesNotContain("equal");
    }

    /** Why a dart of 20 mm in a straight waist is taken for one, its point so far to the right. */
    private static String dart(int point) throws Exception {
        String sheet = "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='900mm' viewBox='0 0 600 900'>"
                + "<path d='M50,100 L250,100 L290,700 L50,700 Z'/><path fill='none' d='M140,100 L" + point
                + ",200 L160,100'/><text x='100' y='400' font-size='14'>Skirt front, cut 1 on fold</text></svg>";
        Words words = Words.english(LengthUnit.CM);
        return Suggestions.of(SuggestionsTest.sheet(sheet), Set.of()).all().stream()
                .filter(DartSuggestion.class::isInstance)
                .map(s -> ((DartSuggestion) s).reason())
                .map(r -> words.of("reason." + r.code(), r.values()).replace('\u00a0', ' '))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void sidesApartAreToldWithWhatTheyDifferBy() throws Exception {
        assertThat(reason(1.6))
                .startsWith("one side measures 23\u00a011/16\u00a0in, the other 23\u00a03/4\u00a0in")
                .contains("1/16\u00a0in apart");
        assertThat(reason(0.5))
                .as("both the same to 1/16 in, which is not told as none")
                .contains(": less than 1/16 in apart")
                .doesNotContain("both sides");
        assertThat(reason(5)).contains("To ease in, or to make equal?");
    }
}
