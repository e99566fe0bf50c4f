package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What evened seams promise, on random pairs. */
class EvenSeamsPropertiesTest {
    /** Random slants, curves, amounts and tapers; each case is named by its seed. */
    @Test
    void promisesOnRandomPairs() throws Refusal {
        Worst girth = new Worst("even seams, girth, mm");
        Worst drift = new Worst("even seams, drift, mm");
        Worst back = new Worst("even seams there and back, mm");
        int refused = 0;
        int cases = RandomCloth.cases(160);
        for (long seed = 1; seed <= cases; seed++) {
            RandomCloth random = new RandomCloth(seed);
            Piece one = random.piece("front");
            Piece two = RandomCloth.mapped(random.piece("back"), Affine.translation(1000, 0));
            Pattern before = sewnAtTheSides(one, two);
            SeamChange change = SeamChange.at("level", random.between(-50, 60))
                    .withTaper(random.chance(0.5) ? Taper.SMOOTH : Taper.STRAIGHT)
                    .evened();
            change = random.chance(0.8) ? change.carriedToHem() : change;
            Pattern after;
            try {
                after = change.apply(before).pattern();
            } catch (Refusal refusal) {
                assertThat(refusal.code()).as("seed %d", seed).isNotBlank();
                refused++;
                continue;
            }
            girth.meet(seed, Math.abs(girth(after, "level") - girth(before, "level") - change.amount()));
            drift.meet(seed, Math.abs(Measures.of(after).mates().get(0).drift()));
            if (change.carryToHem()) {
                Pattern restored = change.opposite().orElseThrow().apply(after).pattern();
                for (int i = 0; i < 2; i++) {
                    Outline was = before.pieces().get(i).outline();
                    for (Segment s : restored.pieces().get(i).outline().segments()) {
                        back.meet(seed, was.nearest(s.at(0.3)).distance());
                        back.meet(seed, was.nearest(s.start()).distance());
                    }
                }
            }
        }
        assertThat(refused).isLessThan(cases / 10);
        girth.within(1e-6);
        drift.within(0.02);
        back.within(1e-6);
    }

    /** Drawn by their cutting lines: on the way to the bow that is wanted there are some that leave no stitching line. */
    @ParameterizedTest
    @CsvSource({"15, 8.1", "29, -5.9", "58, 17.1", "58, 10.3"})
    void aBowThatLeavesNoStitchingLineIsRefused(long seed, double amount) {
        Pattern before = TruingPropertiesTest.pair(seed, LineKind.CUTTING);
        SeamChange change = SeamChange.at("mid", amount).acceptingProtected().evened();
        assertThatThrownBy(() -> change.apply(before)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.code()).isEqualTo("even-not-possible");
            assertThat(refusal.values()).containsEntry("mate", "side seam");
        });
    }

    static Pattern sewnAtTheSides(Piece one, Piece two) {
        double apart = one.edge("side").orElseThrow().on(one.outline()).length()
                - two.edge("side").orElseThrow().on(two.outline()).length();
        return pattern(List.of(Level.of("level", LevelKind.HIP), Level.of("top", LevelKind.WAIST)), one, two)
                .withMates(List.of(new Mate(
                        "side seam",
                        List.of(EdgeRef.of("front", "side")),
                        List.of(EdgeRef.of("back", "side")),
                        apart)));
    }
}
