package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.BodiceDraft;
import easewright.draft.SampleBodies;
import easewright.draft.SkirtDraft;
import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a change of one side of the garment asks of what is sewn to it there. */
class MatchOnOneSideTest {
    private static final Pattern SKIRT =
            new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
    private static final Pattern BODICE =
            new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();

    private static Alteration on(Side side, Alteration change) {
        return new Within(new Scope(Optional.empty(), side), change);
    }

    private static MateWalk walk(Pattern pattern, String mate) {
        return Measures.of(pattern).mate(mate).orElseThrow();
    }

    /** The band is one piece for both sides: it becomes shorter by what the waist lost on the left. */
    @Test
    void theWaistbandIsOfferedShorterByWhatOneSideLost() throws Refusal {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern after = on(side, SeamChange.at("waist", -15)).apply(SKIRT).pattern();
            List<Coupled.Offer> offers = Coupled.offers(SKIRT, after);
            assertThat(offers).hasSize(1);
            assertThat(offers.get(0).alterations()).singleElement().isInstanceOfSatisfying(EdgeLength.class, band -> {
                assertThat(band.edge()).isEqualTo(EdgeRef.of("skirt-band", "seam"));
                assertThat(band.amount()).isCloseTo(-15, within(1e-6));
            });
            assertThat(walk(offers.get(0).result(), "waistband").drift())
                    .isCloseTo(walk(SKIRT, "waistband").drift(), within(1e-3));
        }
    }

    /** Of two sleeves that are cut alike the left one alone follows the left armhole, and the right one fits as before. */
    @Test
    void theSleeveOfThatSideFollowsItsArmhole() throws Refusal {
        Pattern after = on(Side.LEFT, EdgeLength.atEnds(EdgeRef.of("bodice-front", "armhole"), 6))
                .apply(BODICE)
                .pattern();
        Coupled.Offer offer = Coupled.offers(BODICE, after).stream()
                .filter(o -> o.mate().name().equals("sleeve in armhole left"))
                .findFirst()
                .orElseThrow();
        Pattern made = offer.result();
        assertThat(Cloths.sewn(made, "bodice-sleeve-left", "cap") - Cloths.sewn(BODICE, "bodice-sleeve", "cap"))
                .isCloseTo(6, within(1e-6));
        assertThat(Cloths.sewn(made, "bodice-sleeve", "cap")).isEqualTo(Cloths.sewn(BODICE, "bodice-sleeve", "cap"));
        assertThat(Measures.of(made).mates())
                .extracting(w -> w.mate().name())
                .as("no left armhole takes a right sleeve")
                .filteredOn(name -> name.startsWith("sleeve in armhole"))
                .containsExactlyInAnyOrder("sleeve in armhole left", "sleeve in armhole right");
        for (String seam : List.of("sleeve in armhole left", "sleeve in armhole right")) {
            assertThat(walk(made, seam).drift()).isCloseTo(0, within(1e-3));
            for (Side side : Side.values()) {
                Mate mate = walk(made, seam).mate();
                long others = List.of(mate.first(), mate.second()).stream()
                        .flatMap(List::stream)
                        .map(r -> made.piece(r.piece()).map(Piece::side).orElseThrow())
                        .filter(s -> s == side && seam.endsWith(Settings.name(side.other())))
                        .count();
                assertThat(side == Side.BOTH ? 0 : others).as(seam).isZero();
            }
        }
        assertThat(Coupled.offers(List.of(BODICE, after, made)))
                .extracting(o -> o.mate().name())
                .doesNotContain("sleeve in armhole left");
    }

    /** The front widened on the left alone: the back follows there, is parted for it, and on the right all stays. */
    @Test
    void theOtherPieceOfASeamIsMatchedOnThatSideOnly() throws Refusal {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern after = on(
                            side, SeamChange.at("hip", 40).withShares(new Share(EdgeRef.of("skirt-front", "side"), 1)))
                    .apply(SKIRT)
                    .pattern();
            String here = "side seam " + Settings.name(side);
            String there = "side seam " + Settings.name(side.other());
            GarmentMeasures is = Measures.of(after);
            MateWalk off = is.mate(here).orElseThrow();
            assertThat(Math.abs(off.drift())).isGreaterThan(Cutting.WORKS);
            List<SeamMatch.Choice> choices = SeamMatch.of(after, Measures.of(SKIRT), is, off);
            assertThat(choices).hasSize(2);
            SeamMatch.Choice other = choices.get(0);
            assertThat(other.edge()).as("what was not changed first").isEqualTo(EdgeRef.of("skirt-back", "side"));
            assertThat(other.side()).isEqualTo(side);
            assertThat(other.atHem()).isTrue();
            Pattern made = other.change().apply(after).pattern();
            assertThat(walk(made, here).drift()).isCloseTo(0, within(1e-6));
            assertThat(walk(made, there)).satisfies(w -> {
                assertThat(w.first()).isCloseTo(walk(after, there).first(), within(1e-9));
                assertThat(w.second()).isCloseTo(walk(after, there).second(), within(1e-9));
            });
            assertThat(Measures.of(made).mates())
                    .extracting(w -> w.mate().name())
                    .filteredOn(n -> n.startsWith("side seam"))
                    .containsExactlyInAnyOrder(here, there);
            assertThat(choices.get(1).side())
                    .as("a left piece is changed as it is")
                    .isEqualTo(Side.BOTH);
        }
    }
}
