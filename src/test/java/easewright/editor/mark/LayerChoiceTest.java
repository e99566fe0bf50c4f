package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.draft.Samples;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LayerChoiceTest {
    /** Two sizes that are seen and one that is not, words in a layer of their own, and a test square in none. */
    static final String NEST = "<svg xmlns='http://www.w3.org/2000/svg' "
            + "xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' width='800mm' height='600mm' "
            + "viewBox='0 0 800 600'>"
            + size("s36", "36", "", 200)
            + size("s38", "38", "", 208)
            + size("s40", "40", " style='display:none'", 216)
            + "<g id='words' inkscape:groupmode='layer' inkscape:label='Words'>"
            + "<text x='150' y='200' font-size='14'>Front</text></g>"
            + "<path id='square' d='M700,20 h50 v50 h-50z'/></svg>";

    /** The same in layers that say in words that they are sizes: of two, neither is a line of the other. */
    static final String SIZES = NEST.replaceAll("label='(\\d\\d)'", "label='Size $1'");

    private static String size(String id, String name, String style, int wide) {
        return "<g id='" + id + "' inkscape:groupmode='layer' inkscape:label='" + name + "'" + style
                + "><path id='front-" + id + "' d='M100,100 h" + wide + " v300 h-" + wide + "z'/></g>";
    }

    static LayerChoice.Outcome choose(Bare bare, String... keys) throws Exception {
        LayerChoice.Outcome read = LayerChoice.reading(
                bare.session.desk().file().orElseThrow().svg(),
                bare.session.desk().history().upToPresent(),
                Set.of(keys));
        bare.session.reread(read.svg(), read.pattern());
        return read;
    }

    private static List<String> ids(Bare bare) {
        return bare.session.desk().pattern().pieces().stream().map(Piece::id).toList();
    }

    @Test
    void theSizesAreOfferedAndWordsAreNot() throws Exception {
        Bare bare = Bare.of(NEST);
        LayerChoice choice = LayerChoice.of(bare.session.desk(), bare.marker.sheet());
        assertThat(choice.rows()).extracting(LayerChoice.Row::name).containsExactly("36", "38", "40");
        assertThat(choice.read()).containsExactlyInAnyOrder("s36", "s38");
        Bare two = Bare.twoPieces();
        assertThat(LayerChoice.of(two.session.desk(), two.marker.sheet()).rows())
                .isEmpty();
    }

    @Test
    void oneSizeIsKeptWithTheWordsAndWhatLiesInNoLayer() throws Exception {
        Bare bare = Bare.of(NEST);
        SvgFile read = choose(bare, "s40").svg();
        assertThat(ids(bare)).containsExactlyInAnyOrder("square", "front-s40");
        assertThat(read.texts()).hasSize(1);
        assertThat(LayerChoice.of(bare.session.desk(), bare.marker.sheet()).read())
                .containsExactly("s40");
        assertThat(bare.marker.suggesting().named().pieces())
                .extracting(Piece::name)
                .contains("Front");
        byte[] saved = read.write(bare.session.desk().pattern());
        assertThat(SvgFile.read(saved, "again.svg").pattern().pieces())
                .extracting(Piece::id)
                .containsExactlyInAnyOrder("square", "front-s40");
    }

    /** Saved with one size, opened again on another day: the marks of the others are there when they are asked for. */
    @Test
    void marksOfLayersThatAreSwitchedOffAreInTheFile() throws Exception {
        Bare bare = Bare.of(NEST);
        choose(bare, "s36", "s38");
        bare.marker.tryTo(p -> EdgeEdits.split(p, "front-s38", new Point(308, 250)));
        bare.marker.tryTo(p -> PieceEdits.notch(p, "front-s38", new Point(308, 300)));
        bare.marker.tryTo(p -> PieceEdits.rename(p, "front-s38", "Front 38"));
        Piece marked = bare.piece("front-s38");
        choose(bare, "s40");
        assertThat(ids(bare)).doesNotContain("front-s38");
        bare.marker.tryTo(p -> PieceEdits.grain(p, "front-s40", new Point(200, 150), new Point(200, 350)));
        Piece present = bare.piece("front-s40");
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        String saved = new String(file.write(bare.session.desk().pattern()), StandardCharsets.UTF_8);
        assertThat(saved).containsOnlyOnce("<resting>").contains("Front 38");

        Bare again = Bare.of(saved);
        assertThat(again.svg.findings()).extracting(Finding::code).doesNotContain("shape-unmarked", "mark-unknown");
        assertThat(ids(again)).containsExactlyInAnyOrderElementsOf(ids(bare));
        assertThat(again.piece("front-s40")).isEqualTo(present);
        // Saving something else leaves them there.
        again.marker.tryTo(p -> PieceEdits.notch(p, "front-s40", new Point(316, 200)));
        Bare third = Bare.of(new String(again.svg.write(again.session.desk().pattern()), StandardCharsets.UTF_8));
        choose(third, "s38");
        Piece back = third.piece("front-s38");
        assertThat(back.name()).isEqualTo("Front 38");
        assertThat(back.edges()).isEqualTo(marked.edges());
        assertThat(back.notches()).isEqualTo(marked.notches());
        SvgFile now = third.session.desk().file().orElseThrow().svg();
        SvgFile other = SvgFile.read(now.write(third.session.desk().pattern()), "other.svg");
        assertThat(other.pattern()).isEqualTo(third.session.desk().pattern());
        assertThat(other.resting().orElseThrow().pieces())
                .as("now the other one rests")
                .extracting(Piece::id)
                .containsExactly("front-s40");
    }

    /** A line that nobody marked leaves nothing in the file. */
    @Test
    void bareLayersLeaveNoTrace() throws Exception {
        Bare bare = Bare.of(NEST);
        choose(bare, "s40");
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        assertThat(new String(file.write(bare.session.desk().pattern()), StandardCharsets.UTF_8))
                .doesNotContain("resting");
    }

    /** What the nest holds is no part of what the piece is called, in words or by its label. */
    @Test
    void theRunOfSizesIsNoPartOfTheName() throws Exception {
        Bare bare = Bare.of(NEST.replace(">Front<", ">Front 36-38-40<"));
        choose(bare, "s38");
        assertThat(bare.marker
                        .suggesting()
                        .named()
                        .piece("front-s38")
                        .orElseThrow()
                        .name())
                .isEqualTo("Front");
        Bare labelled = Bare.of(NEST.replace("id='front-s38'", "id='front-s38' inkscape:label='Back 36/38/40'")
                .replace("<text", "<desc")
                .replace("</text", "</desc"));
        choose(labelled, "s38");
        assertThat(labelled.piece("front-s38").name()).isEqualTo("Back");
    }

    @Test
    void marksStayOnPiecesThatStayAndUndoBringsBackTheOthers() throws Exception {
        Bare bare = Bare.of(NEST);
        bare.marker.tryTo(p -> PieceEdits.notch(p, "front-s38", new Point(308, 250)));
        Pattern before = bare.session.desk().pattern();
        // Size 36 lies inside size 38 and rode along with it.
        assertThat(bare.piece("front-s38").riders()).extracting(Rider::id).containsExactly("front-s36");
        choose(bare, "s38");
        assertThat(bare.piece("front-s38").notches()).hasSize(1);
        assertThat(bare.piece("front-s38").riders()).isEmpty();
        bare.session.undo();
        assertThat(bare.session.desk().pattern()).isEqualTo(before);
        assertThat(LayerChoice.of(bare.session.desk(), bare.marker.sheet()).read())
                .containsExactlyInAnyOrder("s36", "s38");
        choose(bare, "s36");
        assertThat(ids(bare)).containsExactlyInAnyOrder("square", "front-s36");
        bare.session.undo();
        bare.session.undo();
        Pattern untouched = bare.session.desk().pattern();
        choose(bare, "s36");
        choose(bare, "s36", "s38");
        assertThat(ids(bare))
                .containsExactlyInAnyOrderElementsOf(
                        untouched.pieces().stream().map(Piece::id).toList());
    }

    @Test
    void theSquareThatTellsTheScaleStaysWhicheverSizeIsWanted() throws Exception {
        String square = "<g id='more' inkscape:groupmode='layer' inkscape:label='More'>"
                + "<path id='gauge' d='M600,400 h100 v100 h-100z'/><text x='620' y='450' font-size='9'>4 inch square</text></g>";
        Bare bare = Bare.of(NEST.replace("</svg>", square + "</svg>"));
        LayerChoice choice = LayerChoice.of(bare.session.desk(), bare.marker.sheet());
        assertThat(choice.rows())
                .filteredOn(LayerChoice.Row::gauge)
                .extracting(LayerChoice.Row::name)
                .containsExactly("More");
        assertThat(choice.only("s36")).containsExactlyInAnyOrder("s36", "more");
        choose(bare, choice.only("s36").toArray(String[]::new));
        assertThat(ids(bare)).containsExactlyInAnyOrder("square", "front-s36", "gauge");
        assertThat(ScaleView.of(bare.session.desk(), bare.marker.sheet()).offers())
                .as("the square is 100 mm and should be 101.6")
                .isNotEmpty();
    }

    @Test
    void aNewScaleIsKept() throws Exception {
        Bare bare = Bare.of(NEST);
        bare.scale(2, false);
        choose(bare, "s40");
        assertThat(bare.piece("front-s40").outline().box().width()).isEqualTo(432);
        assertThat(bare.marker.sheet().captions().get(0).middle().y()).isGreaterThan(300);
    }

    @Test
    void aPieceOfAChangeIsNotTakenAway() throws Exception {
        Bare bare = Bare.of(NEST);
        Pattern changed = bare.session.desk().pattern().withChanges(List.of(new ChangeNote("lengthen", Map.of())));
        bare.session.edit(changed);
        assertThat(LayerChoice.of(bare.session.desk(), bare.marker.sheet()).locked())
                .isNotEmpty();
        assertThatThrownBy(() -> choose(bare, "s36"))
                .isInstanceOfSatisfying(
                        MarkRefused.class, e -> assertThat(e.code()).isEqualTo("piece-in-changes"));
    }

    /** The sample skirt in three sizes, each in a layer, with all its marks and its seams. */
    private static Bare threeSizes(List<String> layers) throws Exception {
        String svg = Samples.files().get("skirt-sizes.svg");
        for (String size : List.of("14", "12", "10")) {
            int at = svg.lastIndexOf("<g font-family", svg.indexOf("<path id=\"skirt-back-" + size));
            String layer = "<g xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' id='size" + size
                    + "' inkscape:groupmode='layer' inkscape:label='Size " + size + "'>";
            svg = svg.substring(0, at) + (size.equals("10") ? "" : "</g>") + layer + svg.substring(at);
        }
        svg = svg.replace("</svg>", "</g></svg>");
        Bare bare = Bare.of(svg);
        LayerChoice.of(bare.session.desk(), bare.marker.sheet()).rows().forEach(r -> layers.add(r.key()));
        return bare;
    }

    @Test
    void aSizeThatIsSwitchedOnAgainIsMarkedAsItWas() throws Exception {
        List<String> layers = new ArrayList<>();
        Bare bare = threeSizes(layers);
        assertThat(layers).hasSize(3);
        choose(bare, layers.toArray(String[]::new));
        Pattern marked = bare.session.desk().pattern();
        assertThat(marked.pieces()).hasSizeGreaterThan(3).allMatch(EarlierMarks::isMarked);
        assertThat(marked.mates()).isNotEmpty();
        assertThat(choose(bare, layers.get(1)).gone()).hasSizeGreaterThan(1);
        assertThat(bare.session.desk().pattern().pieces().size())
                .isLessThan(marked.pieces().size());
        choose(bare, layers.get(2));
        choose(bare, layers.toArray(String[]::new));
        assertThat(bare.session.desk().pattern()).isEqualTo(marked);
        // One after the other, the last first.
        choose(bare, layers.get(2));
        choose(bare, layers.get(2), layers.get(0));
        choose(bare, layers.toArray(String[]::new));
        assertThat(bare.session.desk().pattern()).isEqualTo(marked);
    }

    @Test
    void aSeamThatWasTakenAwayDoesNotComeBackAndALevelDoes() throws Exception {
        List<String> layers = new ArrayList<>();
        Bare bare = threeSizes(layers);
        Pattern all = bare.session.desk().pattern();
        String seam = all.mates().get(0).name();
        bare.marker.tryTo(p -> MateEdits.remove(p, seam));
        Pattern marked = bare.session.desk().pattern();
        choose(bare, layers.get(1));
        bare.session.edit(bare.session.desk().pattern().withLevels(List.of()));
        choose(bare, layers.get(0), layers.get(2));
        choose(bare, layers.toArray(String[]::new));
        assertThat(bare.session.desk().pattern().mates()).isEqualTo(marked.mates());
        assertThat(bare.session.desk().pattern().levels()).isEqualTo(marked.levels());
    }

    @Test
    void whereMarksCannotComeBackItIsSaid() throws Exception {
        Bare bare = Bare.of(NEST);
        choose(bare, "s36");
        Pattern now = bare.session.desk().pattern();
        // A size as it was while its line was another one.
        Piece longer = Bare.of(NEST.replace("v300", "v310")).piece("front-s38");
        Pattern then = PieceEdits.notch(now.withPieces(List.of(longer)), "front-s38", new Point(308, 250));
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        LayerChoice.Outcome read = LayerChoice.reading(file, List.of(then, now), Set.of("s36", "s38"));
        bare.session.reread(read.svg(), read.pattern());
        assertThat(bare.piece("front-s38").notches()).isEmpty();
        assertThat(read.bare()).containsExactly(bare.piece("front-s38").name());
    }
}
