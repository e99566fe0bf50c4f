package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Facings and bands in parts are sewn to the edges that they were drawn from, and to nothing else. */
class FacingsTest {
    private static final List<String> CALLED = List.of("%s facing", "%s waist facing", "Skirt %s facing", "Facing %s");

    private static List<MateSuggestion> seams(FacedSkirts drawn) throws Exception {
        return Suggestions.of(SuggestionsTest.sheet(drawn.sheet()), Set.of()).all().stream()
                .filter(MateSuggestion.class::isInstance)
                .map(MateSuggestion.class::cast)
                .toList();
    }

    private static boolean takes(Mate mate, String word) {
        return Stream.concat(mate.first().stream(), mate.second().stream())
                .anyMatch(e -> e.piece().toLowerCase(Locale.ROOT).contains(word));
    }

    private static List<MateSuggestion> of(List<MateSuggestion> seams, Pattern pattern, String word) {
        return seams.stream()
                .filter(s -> takes(SeamNamed.of(s.mate(), pattern), word))
                .toList();
    }

    /** Edges called by the names of their pieces. */
    private static final class SeamNamed {
        static Mate of(Mate mate, Pattern pattern) {
            return new Mate(mate.name(), named(mate.first(), pattern), named(mate.second(), pattern), 0);
        }

        private static List<EdgeRef> named(List<EdgeRef> edges, Pattern pattern) {
            return edges.stream()
                    .map(e -> EdgeRef.of(pattern.piece(e.piece()).orElseThrow().name(), e.edge()))
                    .toList();
        }
    }

    private static Pattern outcome(FacedSkirts drawn) throws Exception {
        return Suggestions.of(SuggestionsTest.sheet(drawn.sheet()), Set.of()).outcome();
    }

    @Test
    void everyFacingIsSewnToItsWaistWithTheDartsClosed() throws Exception {
        Random random = new Random(20261);
        Words words = Words.english(LengthUnit.CM);
        for (int i = 0; i < 40; i++) {
            FacedSkirts drawn = new FacedSkirts(random);
            FacedSkirts.Waists waists = drawn.skirt();
            String called = CALLED.get(random.nextInt(CALLED.size()));
            drawn.facing(called.formatted("front"), "cut 1 on fold", waists.front(), 45 + 25 * random.nextDouble());
            drawn.facing(called.formatted("back"), "cut 2", waists.back(), 45 + 25 * random.nextDouble());
            // As long as a waist, and for something else.
            drawn.facing("Pocket facing", "cut 2", random.nextBoolean() ? waists.front() : waists.back(), 40);
            Pattern pattern = outcome(drawn);
            List<MateSuggestion> facings = of(seams(drawn), pattern, "facing");
            assertThat(facings)
                    .as("sheet %d, %s", i, called)
                    .extracting(s -> s.mate().name())
                    .containsExactlyInAnyOrder("waist facing (front)", "waist facing (back)");
            for (MateSuggestion seam : facings) {
                Mate named = SeamNamed.of(seam.mate(), pattern);
                String half = seam.mate().name().contains("front") ? "front" : "back";
                assertThat(named.first()).singleElement().satisfies(e -> {
                    assertThat(e.piece().toLowerCase(Locale.ROOT)).contains(half, "skirt");
                    assertThat(e.edge()).isEqualTo("waist");
                });
                assertThat(named.second().get(0).piece().toLowerCase(Locale.ROOT))
                        .contains(half, "facing");
                assertThat(seam.mate().declaredEase()).isZero();
                assertThat(words.of(
                                "reason." + seam.reason().code(), seam.reason().values()))
                        .startsWith("cut to this edge by its name, and as long with the darts folded: ");
            }
            for (MateWalk walk : Measures.of(pattern).mates()) {
                if (walk.mate().name().startsWith("waist facing")) {
                    assertThat(Math.abs(walk.drift())).as("sheet %d", i).isLessThan(0.02);
                }
            }
        }
    }

    /** A facing that is no longer as long as the waist belongs to another skirt, or is to be drawn anew: nobody knows. */
    @Test
    void whatIsNotAsLongIsNotOffered() throws Exception {
        Random random = new Random(20262);
        for (int i = 0; i < 40; i++) {
            FacedSkirts drawn = new FacedSkirts(random);
            FacedSkirts.Waists waists = drawn.skirt();
            double off = (random.nextBoolean() ? 1 : -1) * (3 + 20 * random.nextDouble());
            drawn.facing("Front facing", "cut 1 on fold", waists.front() + off, 50);
            drawn.facing("Back facing", "cut 2", waists.back() + off, 50);
            assertThat(of(seams(drawn), outcome(drawn), "facing"))
                    .as("sheet %d, %s off", i, off)
                    .isEmpty();
        }
    }

    @Test
    void aFrontIsNotFacedByTheFacingOfABack() throws Exception {
        FacedSkirts drawn = new FacedSkirts(new Random(20263));
        double front = drawn.skirt().front();
        drawn.facing("Back facing", "cut 2", front, 50);
        assertThat(of(seams(drawn), outcome(drawn), "facing")).isEmpty();
    }

    private static List<String> pieces(MateSuggestion seam, Pattern pattern) {
        Mate named = SeamNamed.of(seam.mate(), pattern);
        return Stream.concat(named.first().stream(), named.second().stream())
                .map(EdgeRef::piece)
                .toList();
    }

    /** Of two facings of one edge the one that says what it is for is taken, wherever it stands on the sheet. */
    @Test
    void anEdgeIsFacedOnce() throws Exception {
        Random random = new Random(20265);
        for (int i = 0; i < 20; i++) {
            FacedSkirts drawn = new FacedSkirts(random);
            FacedSkirts.Waists waists = drawn.skirt();
            List<String> called = random.nextBoolean()
                    ? List.of("Front facing", "Front waist facing")
                    : List.of("Front waist facing", "Front facing");
            for (String name : called) {
                drawn.facing(name, "cut 1 on fold", waists.front(), 50, 170);
            }
            drawn.facing("Back facing", "cut 2", waists.back(), 50, 170);
            Pattern pattern = outcome(drawn);
            assertThat(of(seams(drawn), pattern, "facing"))
                    .as("sheet %d", i)
                    .extracting(s -> pieces(s, pattern))
                    .containsExactlyInAnyOrder(
                            List.of("Front skirt", "Front waist facing"), List.of("Back skirt", "Back facing"));
        }
    }

    /** Two pieces that are as long as one edge by chance do not bear each other out. */
    @Test
    void twoFacingsOfOneEdgeDoNotVouchForEachOther() throws Exception {
        FacedSkirts drawn = new FacedSkirts(new Random(20266));
        double front = drawn.skirt().front();
        drawn.facing("Front facing", "cut 1 on fold", front, 50, 170);
        drawn.facing("Facing front", "cut 1 on fold", front, 60, 180);
        assertThat(of(seams(drawn), outcome(drawn), "facing")).isEmpty();
    }

    /** Of two parts that both fit the front neither is known to be the band. */
    @Test
    void twoPartsOfABandAreNotSewnToOneWaist() throws Exception {
        FacedSkirts drawn = new FacedSkirts(new Random(20267));
        double front = drawn.skirt().front();
        drawn.facing("Front waistband", "cut 1 on fold", front, 40);
        drawn.facing("Front yoke", "cut 1 on fold", front, 60);
        assertThat(seams(drawn)).allSatisfy(s -> assertThat(s.reason().code()).doesNotStartWith("cut-to-edge"));
    }

    /** A waistband in a front and a back, each drawn to its waist, and the facing of each part on its free edge. */
    @Test
    void partsOfABandAreSewnEachToItsWaist() throws Exception {
        Random random = new Random(20264);
        for (int i = 0; i < 20; i++) {
            FacedSkirts drawn = new FacedSkirts(random);
            FacedSkirts.Waists waists = drawn.skirt();
            drawn.facing("Front waistband", "cut 1 on fold", waists.front(), 40);
            drawn.facing("Back waistband", "cut 2", waists.back(), 40);
            List<MateSuggestion> bands = of(seams(drawn), outcome(drawn), "band");
            assertThat(bands)
                    .as("sheet %d", i)
                    .extracting(s -> s.mate().name())
                    .containsExactlyInAnyOrder("waistband (front)", "waistband (back)");
            FacedSkirts one = new FacedSkirts(random);
            one.facing("Front waistband", "cut 1 on fold", one.skirt().front(), 40);
            assertThat(of(seams(one), outcome(one), "band"))
                    .as("a part alone")
                    .allSatisfy(s -> assertThat(s.reason().code()).doesNotStartWith("cut-to-edge"));
        }
    }
}
