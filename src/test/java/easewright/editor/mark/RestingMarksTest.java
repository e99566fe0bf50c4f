package easewright.editor.mark;

import static easewright.editor.mark.LayerChoiceTest.choose;
import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;

/** Whatever was said of pieces in layers that are switched off is in the file, and there again when they are. */
class RestingMarksTest {
    /** Two layers side by side, one with a stitching line inside its cutting line, and one that is hidden. */
    private static final String SIDE_BY_SIDE = "<svg xmlns='http://www.w3.org/2000/svg' "
            + "xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' width='900mm' height='600mm' "
            + "viewBox='0 0 900 600'>"
            + "<g id='one' inkscape:groupmode='layer' inkscape:label='One'>"
            + "<path id='cut' d='M100,100 h200 v300 h-200z'/><path id='sewn' d='M110,110 h180 v280 h-180z'/></g>"
            + "<g id='two' inkscape:groupmode='layer' inkscape:label='Two'>"
            + "<path id='other' d='M500,100 h200 v300 h-200z'/></g>"
            + "<g id='three' inkscape:groupmode='layer' inkscape:label='Three' style='display:none'>"
            + "<path id='third' d='M500,100 h150 v300 h-150z'/></g></svg>";

    /** What is written is read anew, by a table that knows nothing of what was done before. */
    private static Bare saved(Bare bare) throws Exception {
        String text = written(bare);
        String block = text.substring(text.indexOf("<marks"), text.indexOf("</marks>") + 8);
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(Path.of("docs/easewright-marks-1.xsd").toFile())
                .newValidator()
                .validate(new StreamSource(new StringReader(block)));
        return Bare.of(text);
    }

    private static String written(Bare bare) throws Exception {
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        return new String(file.write(bare.session.desk().pattern()), StandardCharsets.UTF_8);
    }

    private static Bare withNotchAt38() throws Exception {
        Bare bare = Bare.of(LayerChoiceTest.NEST);
        choose(bare, "s38");
        bare.marker.tryTo(p -> PieceEdits.notch(p, "front-s38", new Point(308, 250)));
        bare.marker.tryTo(p -> PieceEdits.line(p, "front-s38", LineKind.CUTTING, OptionalDouble.of(15)));
        return bare;
    }

    private static void hasItsNotch(Bare bare, double scale) {
        Piece back = bare.piece("front-s38");
        assertThat(back.outline().box().width()).isEqualTo(208 * scale);
        assertThat(back.notches())
                .singleElement()
                .satisfies(n -> assertThat(n.at().distance(new Point(308 * scale, 250 * scale)))
                        .isLessThan(1e-9));
        assertThat(back.allowance()).as("a length stated in numbers").isEqualTo(15);
    }

    @Test
    void whatRestsIsSavedAtTheScaleThatIsSetThen() throws Exception {
        Bare bare = withNotchAt38();
        choose(bare, "s40");
        bare.scale(2, false);
        Bare again = saved(bare);
        choose(again, "s38");
        hasItsNotch(again, 2);
    }

    @Test
    void whatRestsInAFileOutlastsAScaleAndALayer() throws Exception {
        Bare bare = withNotchAt38();
        choose(bare, "s40");
        Bare again = saved(bare);
        again.scale(2, false);
        choose(again, "s36");
        Bare third = saved(again);
        choose(third, "s38");
        hasItsNotch(third, 2);
    }

    @Test
    void marksComeBackAtTheScaleThatIsSetMeanwhile() throws Exception {
        Bare bare = withNotchAt38();
        choose(bare, "s36");
        bare.scale(2, false);
        assertThat(choose(bare, "s36", "s38").bare()).isEmpty();
        hasItsNotch(bare, 2);
    }

    /** A layer switched on or off, and that taken back: what is saved then holds the marks that rest again. */
    @Test
    void whatIsTakenBackRestsAgain() throws Exception {
        Bare bare = withNotchAt38();
        choose(bare, "s40");
        Bare again = saved(bare);
        choose(again, "s38");
        again.marker.tryTo(p -> PieceEdits.rename(p, "front-s38", "Front 38"));
        again.session.undo();
        again.session.undo();
        assertThat(ids(again)).contains("front-s40").doesNotContain("front-s38");
        Bare third = saved(again);
        choose(third, "s38");
        hasItsNotch(third, 1);
        again.session.redo();
        assertThat(isShown(again, "front-s38")).isTrue();
        assertThat(isShown(again, "front-s40")).isFalse();
        // What comes after that is as it is read there.
        again.marker.tryTo(p -> PieceEdits.rename(p, "front-s38", "Thirty-eight"));
        assertThat(isShown(again, "front-s38")).isTrue();
        Bare fourth = saved(again);
        hasItsNotch(fourth, 1);
        assertThat(fourth.piece("front-s38").name()).isEqualTo("Thirty-eight");
    }

    private static boolean isShown(Bare bare, String id) {
        SvgFile svg = bare.session.desk().file().orElseThrow().svg();
        return svg.drawing().shape(id).orElseThrow().shown();
    }

    private static List<String> ids(Bare bare) {
        return bare.session.desk().pattern().pieces().stream().map(Piece::id).toList();
    }

    /** Lengths stated in numbers that were taken from the drawing go along with its scale where they rest, and back again. */
    @Test
    void lengthsStatedOfWhatRestsGoAlongWhereTheyAreAskedTo() throws Exception {
        for (boolean reopened : new boolean[] {false, true}) {
            Bare bare = withNotchAt38();
            choose(bare, "s40");
            Bare work = reopened ? saved(bare) : bare;
            work.scale(2, true);
            Bare third = saved(work);
            choose(third, "s38");
            assertThat(third.piece("front-s38").allowance()).isEqualTo(30);
            choose(work, "s38");
            assertThat(work.piece("front-s38").allowance()).isEqualTo(30);
            work.session.undo();
            work.session.undo();
            choose(work, "s38");
            assertThat(work.piece("front-s38").allowance()).isEqualTo(15);
        }
    }

    /** Of two forms at different scales the newer one counts, also where the scale is set back to the older one's. */
    @Test
    void theNewestMarksComeBackWhateverTheScaleWas() throws Exception {
        Bare bare = withNotchAt38();
        bare.scale(2, false);
        bare.marker.tryTo(p -> PieceEdits.notch(p, "front-s38", new Point(616, 700)));
        choose(bare, "s40");
        bare.scale(1, false);
        Bare again = saved(bare);
        choose(again, "s38");
        choose(bare, "s38");
        assertThat(bare.piece("front-s38").notches()).hasSize(2);
        assertThat(again.piece("front-s38").notches()).hasSize(2);
    }

    @Test
    void aNameASizeAndACountAreMarksToo() throws Exception {
        List<MarkEdit> edits = List.of(
                p -> PieceEdits.rename(p, "front-s38", "Bodice"),
                p -> PieceEdits.size(p, "front-s38", "38"),
                p -> PieceEdits.cut(p, "front-s38", "2", false),
                p -> PieceEdits.line(p, "front-s38", LineKind.CUTTING, OptionalDouble.empty()),
                p -> PieceEdits.line(p, "front-s38", LineKind.STITCHING, OptionalDouble.of(10)));
        for (MarkEdit edit : edits) {
            Bare bare = Bare.of(LayerChoiceTest.NEST);
            choose(bare, "s38");
            Piece drawn = bare.piece("front-s38");
            bare.marker.tryTo(edit);
            Piece said = bare.piece("front-s38");
            assertThat(said).isNotEqualTo(drawn);
            assertThat(choose(bare, "s40").gone()).containsExactly(said.name());
            choose(bare, "s36");
            Bare again = saved(bare);
            choose(again, "s40");
            Bare third = saved(again);
            choose(third, "s38");
            assertThat(third.piece("front-s38")).isEqualTo(said);
        }
    }

    /** What nobody gave is not kept: names and pieces as they are drawn, in whatever course the layers are looked at. */
    @Test
    void lookingThroughTheLayersLeavesNoTrace() throws Exception {
        for (String nest : List.of(LayerChoiceTest.NEST, LayerChoiceTest.SIZES)) {
            Bare bare = Bare.of(nest);
            for (String key : List.of("s38", "s40", "s36", "s38", "s40")) {
                assertThat(choose(bare, key).gone()).as(key).isEmpty();
            }
            bare.scale(2, false);
            choose(bare, "s36");
            assertThat(written(bare)).doesNotContain("resting");
        }
    }

    /** Also where the step that brought it back to the table is taken back. */
    @Test
    void aNameOutlastsAStepTakenBack() throws Exception {
        Bare bare = Bare.of(LayerChoiceTest.NEST);
        choose(bare, "s38");
        bare.marker.tryTo(p -> PieceEdits.rename(p, "front-s38", "Bodice"));
        choose(bare, "s40");
        choose(bare, "s38");
        bare.session.undo();
        choose(bare, "s36");
        Bare again = saved(bare);
        choose(again, "s38");
        assertThat(again.piece("front-s38").name()).isEqualTo("Bodice");
    }

    /** A piece without a name is numbered anew with each choice of layers, which is no name; a number may be one. */
    @Test
    void theNumberOfAPieceIsNoName() throws Exception {
        String svg = SIDE_BY_SIDE
                .replaceAll("id='(cut|sewn|other|third)'", "")
                .replace("label='One'", "label='Layer 1'")
                .replace("label='Two'", "label='Layer 2'");
        for (String name : List.of("", "12")) {
            Bare bare = Bare.of(svg);
            String second = bare.session.desk().pattern().pieces().get(1).id();
            assertThat(bare.piece(second).name()).isEqualTo("Piece 2");
            bare.marker.tryTo(p -> name.isEmpty() ? p : PieceEdits.rename(p, second, name));
            for (String keys : List.of("two", "one", "one two", "one")) {
                choose(bare, keys.split(" "));
            }
            assertThat(written(bare).contains("resting")).as(name).isEqualTo(!name.isEmpty());
        }
    }

    @Test
    void aLineThatChangedPlacesRestsOnce() throws Exception {
        Bare bare = Bare.of(SIDE_BY_SIDE);
        bare.marker.tryTo(p -> PieceEdits.notch(p, "cut", new Point(200, 100)));
        bare.marker.tryTo(p -> PieceEdits.rename(p, "cut", "Older"));
        bare.marker.tryTo(p -> OtherLines.changed(p, bare.other("sewn"), "cut").pattern());
        assertThat(bare.piece("sewn").riders()).extracting(Rider::id).contains("cut");
        bare.marker.tryTo(p -> PieceEdits.rename(p, "sewn", "Newer"));
        Piece newer = bare.piece("sewn");
        choose(bare, "two");
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        assertThat(file.resting().orElseThrow().pieces()).containsExactly(newer);
        Bare again = saved(bare);
        choose(again, "one", "two");
        assertThat(again.session.desk().pattern().piece("cut")).isEmpty();
        assertThat(again.piece("sewn")).isEqualTo(newer);
    }

    /** A seam that names its pieces as they are called in every size goes to rest and comes back like any other. */
    @Test
    void aSeamOfEverySizeRestsWithItsPieces() throws Exception {
        Bare bare = Bare.of(SIDE_BY_SIDE
                .replace("<path id='other'", "<path d='M100,450 h300 v40 h-300z'/><path id='other'")
                .replace("<path id='cut'", "<path d='M500,450 h300 v40 h-300z'/><path id='cut'"));
        bare.session.edit(seam(bare.session.desk().pattern()));
        Pattern marked = bare.session.desk().pattern();
        choose(bare, "three");
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        assertThat(file.resting().orElseThrow().mates()).isEqualTo(marked.mates());
        Bare again = saved(bare);
        choose(again, "one", "two");
        assertThat(again.session.desk().pattern().mates()).isEqualTo(marked.mates());
    }

    /** Two fronts and two backs, sewn alike in both sizes. */
    private static Pattern seam(Pattern pattern) {
        List<String> names = List.of("Front 12", "Back 12", "Front 14", "Back 14");
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Point corner = piece.outline().segments().get(0).start();
            String name = names.get(pieces.size());
            pieces.add(piece.toBuilder()
                    .name(name)
                    .size(Optional.of(name.substring(name.length() - 2)))
                    .edges(List.of(Edge.of("rim", EdgeRole.SEAM, corner, corner)))
                    .build());
        }
        assertThat(pieces).hasSameSizeAs(names);
        EdgeRef front = new EdgeRef("Front", "rim", 1);
        return pattern.withPieces(pieces)
                .withMates(List.of(new Mate("side", List.of(front), List.of(new EdgeRef("Back", "rim", 1)), 0)));
    }
}
