package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.EdgeLength;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.draft.BodiceDraft;
import easewright.draft.SampleBodies;
import easewright.draft.SkirtDraft;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OffersTest {
    @Test
    void theWaistbandAfterTheWaist() throws Refusal {
        Pattern skirt = new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
        List<Finding> offers =
                Offers.of(skirt, SeamChange.at("waist", -15).apply(skirt).pattern());
        assertThat(offers).hasSize(1);
        assertThat(offers.get(0).code()).isEqualTo("fit-offer");
        assertThat(offers.get(0).values()).containsEntry("edges", List.of("Waistband/seam"));
        assertThat((Double) offers.get(0).values().get("by.signed")).isCloseTo(-15, within(1e-6));
        assertThat(Offers.of(skirt, skirt)).isEmpty();
    }

    /** C-228 (docs/sources.md 4.6, W12): what fits an armhole again also widens the sleeve, and that is said. */
    @Test
    void theSleeveAfterTheArmholeWithItsGirth() throws Refusal {
        Pattern bodice = new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();
        Pattern after = EdgeLength.atEnds(EdgeRef.of("bodice-front", "armhole"), 6)
                .apply(bodice)
                .pattern();
        assertThat(Offers.of(bodice, after))
                .anyMatch(f ->
                        f.code().equals("fit-offer") && f.values().get("edges").equals(List.of("Sleeve/cap")))
                .anyMatch(f -> f.code().equals("fit-offer-girth")
                        && f.values().get("levels").toString().contains("upper arm"));
    }

    /** Of two sleeves that are cut alike the one on the side of the change is meant, and that is said. */
    @Test
    void theSleeveOfOneSideAfterItsArmhole() throws Refusal {
        Pattern bodice = new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern after = new Within(
                            new Scope(Optional.empty(), side),
                            EdgeLength.atEnds(EdgeRef.of("bodice-front", "armhole"), 6))
                    .apply(bodice)
                    .pattern();
            assertThat(Offers.of(bodice, after))
                    .filteredOn(f -> f.values().get("edges") instanceof List<?> edges && edges.contains("Sleeve/cap"))
                    .singleElement()
                    .satisfies(f ->
                            assertThat(f.code()).isEqualTo(side == Side.LEFT ? "fit-offer-left" : "fit-offer-right"));
        }
    }
}
