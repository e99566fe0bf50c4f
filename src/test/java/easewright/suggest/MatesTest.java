package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Draft;
import easewright.draft.Samples;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.svg.SvgProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Where the order of the rules matters, and that it matters nowhere else. */
class MatesTest {
    private static final int SAME_NAMES = 2;
    private static final int YOKES = 4;
    private static final int CUFFS = 5;
    private static final int BANDS_IN_PARTS = 6;
    private static final int FACINGS = 7;
    private static final int WAISTBANDS = 8;
    private static final int NECK_BANDS = 9;
    private static final int WAIST_SEAMS = 10;
    private static final int SIDES_APART = 11;
    private static final int LEFT_OVER = 12;

    private static final int[][] FIRST_THINGS_FIRST = {
        {WAISTBANDS, WAIST_SEAMS},
        {BANDS_IN_PARTS, FACINGS},
        {FACINGS, WAISTBANDS},
        {SAME_NAMES, LEFT_OVER},
        {SAME_NAMES, SIDES_APART},
        {SIDES_APART, LEFT_OVER},
        {NECK_BANDS, LEFT_OVER},
        {YOKES, LEFT_OVER},
        {CUFFS, LEFT_OVER}
    };

    private int pieces;

    /** A piece of edges that go across and down in turn, each of the length, name and use that is given. */
    private Piece piece(String name, boolean onFold, Object... edges) {
        List<Point> corners = new ArrayList<>();
        List<Edge> marked = new ArrayList<>();
        double x = 2000.0 * pieces++;
        double y = 0;
        corners.add(new Point(x, y));
        for (int i = 0; i < edges.length; i += 3) {
            double mm = ((Number) edges[i + 2]).doubleValue();
            Point from = corners.get(corners.size() - 1);
            Point to = i % 2 == 0 ? from.plus(new Point(mm, 0)) : from.plus(new Point(0, mm));
            corners.add(to);
            marked.add(Edge.of((String) edges[i], (EdgeRole) edges[i + 1], from, to));
        }
        corners.add(new Point(x, corners.get(corners.size() - 1).y() + 10));
        return Piece.bare("p" + pieces, Outline.polygon(corners)).toBuilder()
                .name(name)
                .cut(1, onFold)
                .edges(marked)
                .build();
    }

    private static Sheet sheet(Piece... pieces) {
        return new Sheet(
                Pattern.bare(List.of(pieces), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE)), List.of(), List.of());
    }

    private static List<Mate> mates(Sheet sheet, List<Consumer<UnsewnEdges>> rules) {
        return Mates.find(sheet, rules).stream()
                .map(s -> ((MateSuggestion) s).mate())
                .toList();
    }

    private static List<String> names(Sheet sheet, List<Consumer<UnsewnEdges>> rules) {
        return mates(sheet, rules).stream().map(Mate::name).toList();
    }

    private static List<Consumer<UnsewnEdges>> exchanged(int one, int two) {
        List<Consumer<UnsewnEdges>> rules = new ArrayList<>(Mates.RULES);
        Collections.swap(rules, one, two);
        return rules;
    }

    @Test
    void aBandSetIntoADressLiesBetweenItsWaists() {
        Sheet dress = sheet(
                piece("Bodice front", true, "waist", EdgeRole.WAIST, 200, "shoulder", EdgeRole.SHOULDER, 120),
                piece(
                        "Skirt front",
                        true,
                        "waist",
                        EdgeRole.WAIST,
                        200,
                        "side",
                        EdgeRole.OTHER,
                        600,
                        "hem",
                        EdgeRole.HEM,
                        240),
                piece("Band", false, "waist", EdgeRole.WAIST, 400));
        assertThat(mates(dress, Mates.RULES)).singleElement().satisfies(mate -> {
            assertThat(mate.name()).isEqualTo("waistband");
            assertThat(mate.first()).singleElement().matches(e -> e.piece().equals("p2") && e.times() == 2);
        });
        assertThat(names(dress, exchanged(WAISTBANDS, WAIST_SEAMS))).containsExactly("waist seam");
    }

    /** It is cut twice and goes round the neck once. */
    @Test
    void aNeckBandThatIsLinedWithItselfGoesRound() {
        Piece band = piece("Neck band", false, "outer", EdgeRole.SEAM, 384).toBuilder()
                .cut(2, false)
                .layers(2)
                .build();
        Sheet tee = sheet(
                piece("Front", true, "neck", EdgeRole.NECK, 110, "shoulder", EdgeRole.SHOULDER, 120),
                piece("Back", true, "neck", EdgeRole.NECK, 90, "shoulder", EdgeRole.SHOULDER, 120),
                band);
        assertThat(mates(tee, Mates.RULES))
                .filteredOn(mate -> mate.name().equals("neck band"))
                .singleElement()
                .satisfies(mate -> assertThat(mate.second()).singleElement().matches(e -> e.times() == 1));
    }

    @Test
    void whatAnEdgeIsCalledSaysMoreThanItsLength() {
        Sheet top = sheet(
                piece("Front", true, "side", EdgeRole.SEAM, 500),
                piece("Back", true, "side", EdgeRole.SEAM, 508, "yoke", EdgeRole.SEAM, 502));
        assertThat(mates(top, Mates.RULES))
                .singleElement()
                .matches(mate -> mate.name().equals("side seam")
                        && mate.first().get(0).edge().equals("side"));
        assertThat(names(top, exchanged(SAME_NAMES, LEFT_OVER))).containsExactly("side and yoke");
    }

    @Test
    void aNeckBandGoesRoundTheNeckThoughSomeSeamIsAsLong() {
        Sheet tee = sheet(
                piece(
                        "Front",
                        true,
                        "neck",
                        EdgeRole.NECK,
                        110,
                        "shoulder",
                        EdgeRole.SHOULDER,
                        120,
                        "yoke",
                        EdgeRole.SEAM,
                        384),
                piece("Back", true, "neck", EdgeRole.NECK, 90, "shoulder", EdgeRole.SHOULDER, 120),
                piece(
                        "Neck band",
                        false,
                        "outer",
                        EdgeRole.SEAM,
                        384,
                        "end",
                        EdgeRole.OTHER,
                        30,
                        "inner",
                        EdgeRole.SEAM,
                        372));
        assertThat(names(tee, Mates.RULES)).containsExactly("shoulder", "neck band");
        assertThat(names(tee, exchanged(NECK_BANDS, LEFT_OVER))).containsExactly("shoulder", "yoke and outer");
    }

    private Piece skirt(String name, double waist) {
        return piece(name, true, "waist", EdgeRole.WAIST, waist, "side", EdgeRole.OTHER, 600, "hem", EdgeRole.HEM, 240);
    }

    private Piece facing(String name, EdgeRole role, double mm) {
        return piece(name, true, "seam", role, mm, "end", EdgeRole.OPENING, 50, Roles.FREE_EDGE, EdgeRole.OTHER, 212);
    }

    @Test
    void whatIsCalledAFacingGoesOnTheEdgeThatItFacesThoughSomeSeamIsAsLong() {
        Sheet faced = sheet(
                skirt("Front skirt", 200),
                facing("Front facing", EdgeRole.SEAM, 200),
                piece("Flounce", false, "top", EdgeRole.SEAM, 200.5));
        assertThat(names(faced, Mates.RULES)).containsExactly("waist facing");
        assertThat(names(
                        sheet(
                                facing("Front facing", EdgeRole.SEAM, 200),
                                piece("Flounce", false, "top", EdgeRole.SEAM, 200)),
                        Mates.RULES))
                .as("a facing alone")
                .isEmpty();
    }

    /** By its length it would go round two fronts, if each were cut once. */
    @Test
    void aWaistFacingIsNoWaistband() {
        Sheet faced = sheet(skirt("Front skirt", 200), facing("Front waist facing", EdgeRole.WAIST, 200));
        assertThat(names(faced, Mates.RULES)).containsExactly("waist facing");
        assertThat(names(faced, exchanged(FACINGS, WAISTBANDS))).containsExactly("waistband");
    }

    private Piece band(String name, double mm) {
        return piece(name, true, "seam", EdgeRole.SEAM, mm, "end", EdgeRole.OTHER, 60, "inner seam", EdgeRole.SEAM, mm);
    }

    @Test
    void theFacingOfABandInPartsGoesOnWhatTheBandLeavesFree() {
        Sheet banded = sheet(
                skirt("Front skirt", 200),
                skirt("Back skirt", 210),
                band("Front yoke", 200),
                band("Back yoke", 210),
                facing("Front facing", EdgeRole.SEAM, 200));
        assertThat(names(banded, Mates.RULES))
                .containsExactlyInAnyOrder("waistband (front)", "waistband (back)", "waist facing");
        assertThat(mates(banded, Mates.RULES))
                .filteredOn(mate -> mate.name().equals("waist facing"))
                .extracting(mate -> mate.first().get(0).edge())
                .containsExactly("inner seam");
        assertThat(names(banded, exchanged(BANDS_IN_PARTS, FACINGS))).doesNotContain("waist facing");
    }

    private Piece bodice(String name, double side, double armhole) {
        return piece(
                name,
                true,
                "armhole",
                EdgeRole.ARMHOLE,
                armhole,
                "side",
                EdgeRole.SEAM,
                side,
                "hem",
                EdgeRole.HEM,
                240);
    }

    /** Sides that no tape would call alike belong together all the same, and the difference is asked about. */
    @Test
    void sidesThatAreFarApartAreAskedAbout() {
        Sheet far = sheet(bodice("Bodice front", 235, 200), bodice("Bodice back", 210, 210));
        assertThat(Mates.find(far, Mates.RULES)).singleElement().satisfies(found -> {
            MateSuggestion seam = (MateSuggestion) found;
            assertThat(seam.mate().name()).isEqualTo("side seam");
            assertThat(seam.mate().declaredEase()).isZero();
            assertThat(seam.reason().code()).isEqualTo("sides-apart");
            assertThat((double) seam.reason().values().get("apart")).isCloseTo(25, within(1e-9));
            assertThat(seam.reason().isLikely()).isFalse();
        });
        assertThat(names(sheet(bodice("Bodice front", 330, 200), bodice("Bodice back", 210, 210)), Mates.RULES))
                .as("more than a bust dart")
                .isEmpty();
        assertThat(names(sheet(bodice("Bodice front", 235, 200), bodice("Side front", 210, 210)), Mates.RULES))
                .as("two fronts")
                .isEmpty();
        assertThat(names(
                        sheet(bodice("Front", 235, 200), bodice("Back", 210, 210), bodice("Lining back", 260, 210)),
                        Mates.RULES))
                .as("which of two")
                .isEmpty();
        assertThat(Mates.find(sheet(bodice("Front", 212, 200), bodice("Back", 210, 210)), Mates.RULES))
                .singleElement()
                .matches(found -> found.reason().isLikely());
    }

    /** What the only cap and the only armholes of a garment are apart is told. */
    @Test
    void aCapThatIsMuchLongerThanItsArmholeIsAskedAbout() {
        Piece sleeve =
                piece("Sleeve", false, "cap", EdgeRole.CAP, 510, "end", EdgeRole.OTHER, 300, "hem", EdgeRole.HEM, 300);
        Sheet full = sheet(bodice("Bodice front", 210, 200), bodice("Bodice back", 210, 210), sleeve);
        assertThat(Mates.find(full, Mates.RULES))
                .filteredOn(s -> ((MateSuggestion) s).mate().name().equals("sleeve in armhole"))
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.reason().code()).isEqualTo("cap-apart");
                    assertThat((double) found.reason().values().get("apart")).isCloseTo(100, within(1e-9));
                    assertThat(((MateSuggestion) found).mate().declaredEase()).isZero();
                });
        assertThat(names(sheet(bodice("Bodice front", 210, 100), bodice("Bodice back", 210, 110), sleeve), Mates.RULES))
                .containsExactly("side seam");
    }

    /** Any other order finds the same seams, in whole garments. */
    @Test
    void elsewhereTheOrderChangesNothing() throws SvgProblem {
        List<Sheet> sheets = new ArrayList<>();
        for (Draft draft : Samples.drafts()) {
            String bare = Samples.svg(draft.draft()).replaceFirst("(?s)<metadata>.*</metadata>", "");
            sheets.add(SuggestionsTest.sheet(bare));
        }
        sheets.add(SuggestionsTest.sheet(WaistedDress.SVG));
        Random random = new Random(20261126);
        int seams = 0;
        for (Sheet sheet : sheets) {
            Pattern outcome = Suggestions.of(sheet, Set.of()).outcome().withMates(List.of());
            Sheet marked = sheet.with(outcome);
            List<Mate> usual = mates(marked, Mates.RULES);
            seams += usual.size();
            for (int i = 0; i < 12; i++) {
                assertThat(mates(marked, anyOrder(random))).containsExactlyInAnyOrderElementsOf(usual);
            }
        }
        assertThat(seams).isGreaterThan(15);
    }

    private static List<Consumer<UnsewnEdges>> anyOrder(Random random) {
        List<Consumer<UnsewnEdges>> rules = new ArrayList<>(Mates.RULES);
        boolean kept = false;
        while (!kept) {
            Collections.shuffle(rules, random);
            kept = true;
            for (int[] pair : FIRST_THINGS_FIRST) {
                kept &= rules.indexOf(Mates.RULES.get(pair[0])) < rules.indexOf(Mates.RULES.get(pair[1]));
            }
        }
        return rules;
    }
}
