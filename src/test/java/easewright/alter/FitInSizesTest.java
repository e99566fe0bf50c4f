package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What makes a seam of one size fit is told with the girths of that size, although its pieces are called as in others. */
class FitInSizesTest {
    private static final List<String> SIZES = List.of("10", "12", "14");

    private Pattern nest;

    @BeforeEach
    void readTheNest() throws Exception {
        nest = SvgFile.read(Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8), "nest.svg")
                .pattern();
    }

    private static Pattern alone(Pattern pattern, String size) {
        return PatternPart.ofSize(pattern, size).alone();
    }

    /** Every size made wider at the waist by another amount, so that no two bands miss by the same. */
    private Pattern widened() throws Refusal {
        Pattern now = nest;
        for (String size : SIZES) {
            double amount = 8 + 6 * SIZES.indexOf(size);
            now = Within.of(Optional.of(size), SeamChange.at("waist", amount))
                    .apply(now)
                    .pattern();
        }
        return now;
    }

    @Test
    void eachSizeIsOfferedWhatItWouldBeByItself() throws Exception {
        Pattern after = widened();
        assertThat(after.levels()).extracting(Level::name).contains("waist", "hip");
        List<Coupled.Offer> all = Coupled.offers(nest, after);
        assertThat(all).extracting(o -> o.size().orElseThrow()).containsExactlyElementsOf(SIZES);
        for (Coupled.Offer offer : all) {
            String size = offer.size().orElseThrow();
            Coupled.Offer own =
                    Coupled.offers(alone(nest, size), alone(after, size)).get(0);
            assertThat(offer.drift()).as(size).isCloseTo(8 + 6 * SIZES.indexOf(size), within(0.5));
            assertThat(offer.drift()).isEqualTo(own.drift());
            assertThat(offer.girths()).isEqualTo(own.girths());
        }
    }

    @Test
    void whatMatchesASeamTellsTheGirthsOfItsOwnSizeByWhateverMeasuresItIsGiven() throws Exception {
        Pattern after = widened();
        GarmentMeasures every = Measures.of(after);
        for (String size : SIZES) {
            MateWalk walk = every.inSize(size).mates().stream()
                    .filter(w -> w.mate().name().equals("side seam"))
                    .findFirst()
                    .orElseThrow();
            // As if the two sides had been drawn 4 mm apart: one side is made to fit.
            Pattern off = Within.of(
                            Optional.of(size),
                            new EdgeLength(
                                    EdgeRef.of("skirt-front-" + size, "side"),
                                    4,
                                    EdgeLength.Manner.AT_LOWER_END,
                                    false))
                    .apply(after)
                    .pattern();
            GarmentMeasures measured = Measures.of(off);
            MateWalk apart = measured.mate(walk).orElseThrow();
            assertThat(Math.abs(apart.drift() - walk.drift())).isCloseTo(4, within(0.1));
            List<SeamMatch.Choice> byAll = SeamMatch.all(off, measured, measured, apart);
            List<SeamMatch.Choice> byOne = SeamMatch.all(off, measured.inSize(size), measured.inSize(size), apart);
            assertThat(byAll).isNotEmpty().hasSameSizeAs(byOne);
            for (int i = 0; i < byAll.size(); i++) {
                assertThat(byAll.get(i).girths()).isEqualTo(byOne.get(i).girths());
                assertThat(byAll.get(i).edge()).isEqualTo(byOne.get(i).edge());
                Pattern made = byAll.get(i).altered().pattern();
                for (String other : SIZES) {
                    assertThat(alone(made, other)
                                    .pieces()
                                    .equals(alone(off, other).pieces()))
                            .isEqualTo(!other.equals(size));
                }
            }
        }
    }
}
