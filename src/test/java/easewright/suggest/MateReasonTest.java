package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
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

    @Test
    void sidesApartAreToldWithWhatTheyDifferBy() throws Exception {
        assertThat(reason(1.6))
                .startsWith("one side measures 23\u00a011/16\u00a0in, the other 23\u00a03/4\u00a0in")
                .contains("1/16\u00a0in apart");
        assertThat(reason(0.5))
                .as("both the same to 1/16 in, so they are told more finely")
                .containsPattern("1/(32|64)\u00a0in apart")
                .doesNotContain("both sides");
        assertThat(reason(6)).contains("To ease in, or to make equal?");
    }
}
