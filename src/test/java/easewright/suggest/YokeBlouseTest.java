package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.check.Checks;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A blouse whose back hangs from a yoke, with cuffs, drawn bare. Our own invention. */
class YokeBlouseTest {
    private static String svg() throws Exception {
        return Files.readString(Path.of("src/test/resources/bare/yoke-blouse.svg"));
    }

    private static Pattern outcome(String svg) throws Exception {
        return Suggestions.of(SuggestionsTest.sheet(svg), Set.of()).outcome();
    }

    private static Piece piece(Pattern pattern, String name) {
        return pattern.piece(name).orElseThrow();
    }

    @Test
    void theBackBelowTheYokeHasAnArmholeAndNoLeg() throws Exception {
        Pattern blouse = outcome(svg());
        assertThat(piece(blouse, "Blouse back").edges())
                .extracting(Edge::name)
                .containsExactly("yoke seam", "armhole", "side", "hem", "fold");
        assertThat(piece(blouse, "Blouse back").edges())
                .extracting(Edge::role)
                .containsExactly(EdgeRole.SEAM, EdgeRole.ARMHOLE, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD);
    }

    @Test
    void theYokeHasNeckShoulderArmholeAndSeam() throws Exception {
        assertThat(piece(outcome(svg()), "Yoke").edges())
                .extracting(Edge::name)
                .containsExactly("neck", "shoulder", "armhole", "yoke seam", "fold");
    }

    /** What lies at the chest is neither waist nor hip. */
    @Test
    void onlyTheWristIsALevel() throws Exception {
        assertThat(outcome(svg()).levels()).extracting("name").containsExactly("wrist");
    }

    @Test
    void itsSeamsAreFound() throws Exception {
        assertThat(outcome(svg()).mates())
                .extracting(Mate::name)
                .containsExactlyInAnyOrder(
                        "shoulder", "sleeve in armhole", "side seam", "sleeve seam", "yoke seam", "cuff");
    }

    /** A waistband cut twice on the fold is one that is faced by another: one of them goes round. */
    @Test
    void aWaistbandOfTwoLayersGoesRoundOnce() throws Exception {
        String skirt = """
                <svg xmlns='http://www.w3.org/2000/svg' width='1200mm' height='900mm' viewBox='0 0 1200 900'>
                <path d='M 50 60 C 110 60 150 56 220 50 C 236 120 262 190 268 250 L 290 700 L 50 700 Z'/>
                <text x='110' y='400' font-size='14'>Skirt front<tspan x='110' dy='18'>cut 1 on fold</tspan></text>
                <path d='M 400 60 C 460 60 500 56 570 50 C 586 120 612 190 618 250 L 640 700 L 400 700 Z'/>
                <text x='460' y='400' font-size='14'>Skirt back<tspan x='460' dy='18'>cut 1 on fold</tspan></text>
                <path d='M 760 100 H 1102 V 150 H 760 Z'/>
                <text x='800' y='130' font-size='14'>Waistband, cut 2 on fold</text></svg>
                """;
        assertThat(outcome(skirt).mates())
                .filteredOn(m -> m.name().equals("waistband"))
                .singleElement()
                .satisfies(m -> assertThat(m.second()).extracting("times").containsExactly(2));
    }

    /** A sleeve that is made narrower at the wrist no longer fits its cuff, which is said. */
    @Test
    void aCuffThatNoLongerFitsIsTold() throws Exception {
        Pattern blouse = outcome(svg());
        Pattern narrower = outcome(svg().replace("1008 670 L 762 670", "998 670 L 772 670"));
        Pattern changed = blouse.withPiece(piece(narrower, "Sleeve"));
        assertThat(Measures.of(blouse).mates())
                .filteredOn(w -> w.mate().name().equals("cuff"))
                .singleElement()
                .satisfies(w -> assertThat(w.drift()).isCloseTo(0, within(0.1)));
        assertThat(Checks.of(changed, Measures.of(changed), EaseTables.none()))
                .filteredOn(f -> f.code().equals("mate-mismatch")
                        && "cuff".equals(f.values().get("mate")))
                .singleElement()
                .satisfies(
                        f -> assertThat((Double) f.values().get("drift.signed")).isCloseTo(-20, within(0.1)));
    }

    /** The pieces of no garment that is named: the sleeve beside the back, or its fold, says what it is. */
    @ParameterizedTest
    @ValueSource(strings = {"Back", "Back with yoke", "Shirt back", "Bodice back"})
    void whateverTheBackIsCalled(String name) throws Exception {
        String called = svg().replace("Blouse front", "Front").replace("Blouse back", name);
        assertThat(piece(outcome(called), name).edges())
                .extracting(Edge::name)
                .contains("yoke seam", "armhole", "side", "fold");
    }

    /** Nothing being written of how often it is cut, it is no leg of two. */
    @Test
    void theBackIsNoLegThoughNoCountIsWritten() throws Exception {
        String unsaid = svg().replace("cut 1 on fold", "");
        Piece back = piece(outcome(unsaid), "Blouse back");
        assertThat(back.onFold()).isTrue();
        assertThat(back.edges()).extracting(Edge::name).contains("yoke seam", "armhole", "side", "fold");
    }

    /** Drawn whole, the back has two armholes, and the yoke two shoulders. */
    @Test
    void wholePieces() throws Exception {
        String whole = svg().replaceAll(
                        "<path id=\"b\"[^>]*>",
                        "<path id='b' d='M 402 193 L 578 193 C 574 228 586 260 638 274 "
                                + "L 621 454 L 634 644 L 346 644 L 359 454 L 342 274 C 394 260 406 228 402 193 Z'/>")
                .replaceAll(
                        "<path id=\"y\"[^>]*>",
                        "<path id='y' d='M 414 62 C 424 79 466 79 476 62 L 596 102 C 585 130 580 160 "
                                + "578 193 L 312 193 C 310 160 305 130 294 102 Z'/>")
                .replace("cut 1 on fold", "cut 1")
                .replace("Yoke, cut 2 on fold", "Yoke, cut 2");
        Pattern blouse = outcome(whole);
        assertThat(piece(blouse, "Blouse back").edges())
                .extracting(Edge::role)
                .containsExactly(
                        EdgeRole.SEAM, EdgeRole.ARMHOLE, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.SEAM, EdgeRole.ARMHOLE);
        assertThat(piece(blouse, "Yoke").edges())
                .extracting(Edge::role)
                .containsExactly(
                        EdgeRole.NECK,
                        EdgeRole.SHOULDER,
                        EdgeRole.ARMHOLE,
                        EdgeRole.SEAM,
                        EdgeRole.ARMHOLE,
                        EdgeRole.SHOULDER);
    }

    /** Trousers stay trousers, also beside a blouse. */
    @Test
    void trousersBesideABlouse() throws Exception {
        String leg =
                "<path fill='none' stroke='#000' d='M 90 700 L 250 700 C 262 770 270 820 330 860 L 290 1500 L 70 1500 Z'/>"
                        + "<text font-size='14' x='110' y='900'>Trouser front</text></svg>";
        String both = svg().replace("</svg>", leg).replace("720", "1600");
        assertThat(piece(outcome(both), "Trouser front").edges())
                .extracting(Edge::role)
                .contains(EdgeRole.WAIST, EdgeRole.CROTCH);
    }

    @ParameterizedTest
    @CsvSource({
        "Blouse back,,ABOVE_WAIST",
        "Shirt back,Shirt and shorts,ABOVE_WAIST",
        "Back,Pyjama trousers,BELOW_WAIST",
        "Back,Shirt and shorts,UNSAID",
        "Short sleeve,,UNSAID",
        "Leggings front,,BELOW_WAIST"
    })
    void whatWordsSayOfTheBody(String name, String garment, Worn worn) {
        assertThat(Worn.said(name, garment == null ? "" : garment, List.of())).isEqualTo(worn);
    }
}
