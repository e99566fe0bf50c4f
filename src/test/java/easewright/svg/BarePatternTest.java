package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class BarePatternTest {
    private static BarePattern of(String body) {
        return BarePattern.of(Drawn.mm(body));
    }

    @Test
    void closedShapesArePiecesAndInnerLinesRideAlong() {
        BarePattern bare = of("<path id='front' d='M0 0H200V300H0ZM50 50h30v40h-30zM10 10L20 20'/>"
                + "<path id='grain' d='M100 20V280'/><path id='pocket' d='M60 60h100v100h-100z'/>"
                + "<path id='marks' d='M10 100h5M10 110h5'/>"
                + "<rect id='back' x='300' width='200' height='300'/><path id='stray' d='M250 0V100'/>"
                + "<circle id='dot' cx='700' cy='50' r='5'/>");
        assertThat(bare.pattern().pieces()).extracting(Piece::id).containsExactly("front", "back");
        Piece front = bare.pattern().piece("front").orElseThrow();
        assertThat(Math.abs(front.outline().signedArea())).isCloseTo(60_000, within(1e-9));
        assertThat(front.riders())
                .extracting(Rider::id)
                .containsExactly("front#1", "front#2", "grain", "pocket", "marks#0", "marks#1");
        assertThat(front.riders()).extracting(Rider::kind).containsOnly(Rider.Kind.INNER);
        assertThat(bare.pattern().piece("back").orElseThrow().riders()).isEmpty();
        assertThat(bare.findings()).isEmpty();
    }

    @Test
    void smallerThanFourSquareCentimetresIsNoPiece() {
        assertThat(of("<rect id='a' width='20' height='20'/><rect id='b' x='50' width='20' height='19.9'/>")
                        .pattern()
                        .pieces())
                .extracting(Piece::id)
                .containsExactly("a");
        assertThat(of("<rect width='19' height='19'/>").findings())
                .extracting(Finding::code)
                .containsExactly("no-pieces");
    }

    @Test
    void theFrameOfThePageIsNoPiece() {
        BarePattern bare =
                of("<rect id='page' width='1000' height='500'/><rect id='a' x='50' y='50' width='90' height='90'/>");
        assertThat(bare.pattern().pieces()).extracting(Piece::id).containsExactly("a");
        assertThat(bare.findings()).extracting(Finding::code).containsExactly("page-frame-left-out");
        assertThat(of("<rect id='page' width='1000' height='500'/>").pattern().pieces())
                .hasSize(1);
    }

    @Test
    void aRectangleAroundEverythingIsTheSheet() {
        String pieces = "<rect id='a' x='50' y='50' width='90' height='90'/>"
                + "<rect id='b' x='250' y='50' width='90' height='90'/>";
        BarePattern bare = of("<rect id='sheet' x='20' y='20' width='400' height='300'/>" + pieces);
        assertThat(bare.pattern().pieces()).extracting(Piece::id).containsExactly("a", "b");
        assertThat(bare.findings()).extracting(Finding::code).containsExactly("page-frame-left-out");
        // With something outside it, it is a piece with two large lines on it.
        assertThat(of("<rect id='apron' x='20' y='20' width='400' height='300'/>" + pieces
                                + "<rect id='tie' x='500' width='30' height='300'/>")
                        .pattern()
                        .pieces())
                .extracting(Piece::id)
                .containsExactly("apron", "tie");
    }

    @Test
    void anOutlineDrawnTwiceIsOnePiece() {
        BarePattern bare = of("<path id='fill' d='M0 0H200V300H0Z'/><path id='pen' d='M0 0H200V300H0Z'/>");
        assertThat(bare.pattern().pieces()).extracting(Piece::id).containsExactly("fill");
        assertThat(bare.pattern().pieces().get(0).riders())
                .extracting(Rider::id)
                .containsExactly("pen");
    }

    @Test
    void namesArePeoplesWordsAndUnique() {
        BarePattern bare = of("<g inkscape:label='Skirt'><rect id='path123' width='50' height='50'/>"
                + "<rect id='rect9' x='60' width='50' height='50'/><rect id='yoke' x='120' width='50' height='50'/>"
                + "<rect id='r' x='180' width='50' height='50'><title>Front</title></rect></g>");
        assertThat(bare.pattern().pieces())
                .extracting(Piece::name)
                .containsExactly("Skirt", "Skirt 2", "yoke", "Front");
    }

    /** By its place among the pieces as drawn, where neither a text inside nor the file says what a piece is called. */
    @Test
    void piecesThatNobodyNamedAreNumbered() {
        BarePattern bare = of("<g id='layer1' inkscape:label='Layer 1'><path d='M0 0h200v300h-200z'/></g>"
                + "<g inkscape:label='Cutting lines'><rect id='rect12' x='300' width='100' height='100'/></g>"
                + "<rect x='500' width='100' height='100'/><text x='520' y='50'>Pocket</text>"
                + "<path id='path9' d='M700 0h100v90h-100z'/><rect id='Piece 5' x='850' width='50' height='60'/>");
        assertThat(bare.pattern().pieces())
                .extracting(Piece::name)
                .containsExactly("Piece 1", "Piece 2", "Pocket", "Piece 4", "Piece 5");
        assertThat(bare.pattern().pieces())
                .extracting(Piece::id)
                .contains("rect12", "path9", "Piece 5")
                .allMatch(id -> !id.equals("Piece 1"));
    }

    /** The name is the largest of the words that may be one, without what else stands in its line. */
    @Test
    void wordsOfLevelsAndCountsAreNoNames() {
        String half = "<rect x='%d' width='200' height='300'/><text x='%d' y='100' font-size='8'>hip</text>"
                + "<text x='%d' y='120' font-size='8'>Cut 2</text>";
        BarePattern bare = of(half.formatted(0, 50, 50) + half.formatted(300, 350, 350)
                + "<text x='320' y='150' font-size='7'>by Ada</text>"
                + "<text x='320' y='200' font-size='14'>SKIRT BACK, cut 1 on fold</text>");
        assertThat(bare.pattern().pieces()).extracting(Piece::name).containsExactly("Piece 1", "Skirt back");
    }

    /** What is drawn later before a piece changes neither its name nor what its marks refer to, once it is saved. */
    @Test
    void aSavedNumberStays() throws SvgProblem {
        SvgFile bare = file("<path d='M0 0h200v300h-200z'/><path d='M300 0h200v300h-200z'/>");
        Pattern marked = bare.pattern()
                .withPiece(
                        bare.pattern().pieces().get(1).toBuilder().cut(2, false).build());
        String saved = new String(bare.write(marked), StandardCharsets.UTF_8);
        SvgFile later = SvgFile.read(
                saved.replaceFirst("<path", "<path d='M600 0h90v80h-90z'/><path")
                        .getBytes(StandardCharsets.UTF_8),
                "b.svg");
        assertThat(later.pattern().pieces()).extracting(Piece::name).containsExactly("Piece 1", "Piece 2");
        assertThat(later.pattern()
                        .piece(marked.pieces().get(1).id())
                        .orElseThrow()
                        .times())
                .isEqualTo(2);
        assertThat(later.findings())
                .filteredOn(f -> f.code().equals("shape-unmarked"))
                .extracting(Finding::piece)
                .as("no number that a marked piece has")
                .containsExactly("Piece 3");
    }

    private static SvgFile file(String body) throws SvgProblem {
        String svg = Drawn.svg("width='1000mm' height='500mm' viewBox='0 0 1000 500'", body);
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "a.svg");
    }

    /** Of outlines that lie on each other, a line goes with that of its own group, or with the one where it begins. */
    @Test
    void aDartGoesWithTheSizeToWhichItBelongs() {
        String small = "<path id='small' d='M0 10h200v410h-200z'/>";
        String large = "<path id='large' d='M0 0h210v415h-210z'/>";
        String darts = "<path id='a' d='M90 10l8 90l8 -90'/><path id='b' d='M90 0l8 90l8 -90'/>";
        Pattern begun = of(small + large + darts).pattern();
        assertThat(begun.piece("small").orElseThrow().riders())
                .extracting(Rider::id)
                .containsExactly("a");
        assertThat(begun.piece("large").orElseThrow().riders())
                .extracting(Rider::id)
                .containsExactly("b");
        String line = "<path id='c' d='M50 50v200'/>";
        Pattern grouped = of("<g id='s'>" + small + line + "</g><g id='l'>" + large + "</g>")
                .pattern();
        assertThat(grouped.piece("small").orElseThrow().riders())
                .extracting(Rider::id)
                .containsExactly("c");
    }
}
