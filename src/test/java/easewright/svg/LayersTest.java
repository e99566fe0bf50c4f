package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A nest of sizes, one to a layer. */
class LayersTest {
    private static final String HEAD = "<svg xmlns='http://www.w3.org/2000/svg' "
            + "xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' width='400mm' height='400mm' "
            + "viewBox='0 0 400 400'>";

    private static final String NEST = HEAD
            + "<g inkscape:groupmode='layer' id='s36' inkscape:label='Size 36'><path id='a36' d='M0 0H90V80H0Z'/></g>"
            + "<g inkscape:groupmode='layer' id='s38' style='display:none' inkscape:label='Size 38'>"
            + "<path id='a38' d='M0 0H94V94H0Z'/><path id='off' display='none' d='M0 0H200V200H0Z'/></g>"
            + "<g inkscape:groupmode='layer' id='words' inkscape:label='Words'><path d='M300 300H310'/></g></svg>";

    private static SvgFile read(String svg, String... layers) throws SvgProblem {
        return SvgFile.read(
                svg.getBytes(StandardCharsets.UTF_8), "nest.svg", ReadOptions.AS_FILED.withLayers(Set.of(layers)));
    }

    private static List<String> pieces(SvgFile file) {
        return file.pattern().pieces().stream().map(Piece::id).toList();
    }

    @Test
    void layersAreListedHiddenOnesToo() throws SvgProblem {
        SvgFile file = read(NEST);
        assertThat(file.drawing().layers())
                .containsExactly(
                        new Layer("s36", "Size 36", 1, true, ""),
                        new Layer("s38", "Size 38", 2, false, ""),
                        new Layer("words", "Words", 0, true, ""));
        assertThat(pieces(file)).containsExactly("a36");
        assertThat(file.findings()).extracting(Finding::code).containsExactly("layers-to-choose");
    }

    @Test
    void theLayerAskedForIsReadAloneEvenIfHidden() throws SvgProblem {
        SvgFile file = read(NEST, "s38");
        assertThat(pieces(file)).containsExactly("a38");
        assertThat(file.drawing().shapes()).extracting(DrawnShape::id).containsExactly("a38");
        assertThat(file.findings()).isEmpty();
        assertThat(pieces(read(NEST, "s36", "s38"))).containsExactlyInAnyOrder("a36", "a38");
    }

    /** Marks refer to what is drawn, shown or not: a piece does not vanish when its layer is switched off. */
    @Test
    void marksOnAHiddenLayerHold() throws SvgProblem {
        SvgFile file = read(NEST, "s38");
        byte[] written = file.write(SvgFileTest.moved(file.pattern(), 1, new Point(2, 0)));
        assertThat(SvgFileTest.text(written))
                .contains("d='M0 0L96 0 L94 94H0Z'")
                .contains("<path id='a36' d='M0 0H90V80H0Z'/>");
        SvgFile again = SvgFile.read(written, "again");
        assertThat(pieces(again)).containsExactly("a38");
        assertThat(again.findings()).extracting(Finding::code).containsExactly("shape-unmarked");
    }

    /** Said once is enough, also of an outline that has no id of its own and stands behind one that is drawn anew. */
    @Test
    void whatIsNoPieceIsNotAskedAboutAgain() throws SvgProblem {
        SvgFile file = read(
                "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'>"
                        + "<path id='a' d='M0 0H90V80H0Z'/><path d='M100 0H190V80H100Z'/><path d='M200 0H290V80H200Z'/></svg>");
        List<Piece> pieces = file.pattern().pieces();
        assertThat(pieces).hasSize(3);
        Pattern one = file.pattern().withPieces(pieces.subList(0, 1));
        assertThat(SvgFile.read(file.write(one), "one").findings())
                .extracting(Finding::code)
                .containsExactly("shape-unmarked", "shape-unmarked");
        SvgFile said = SvgFile.read(file.write(one.withNoPiece(pieces.get(2).id())), "said");
        assertThat(said.findings())
                .extracting(Finding::code, Finding::piece)
                .containsExactly(tuple("shape-unmarked", pieces.get(1).name()));
        assertThat(said.pattern().noPieces()).containsExactly(pieces.get(2).id());
        Pattern all = said.pattern().withPieces(pieces);
        assertThat(all.noPieces()).as("a piece all the same").isEmpty();
        assertThat(SvgFile.read(said.write(all), "all").findings()).isEmpty();
    }

    @Test
    void withoutAnEditorsLayersTheGroupsSideBySideAreTaken() throws SvgProblem {
        String plain = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'>"
                + "<g><g id='Gr_x00F6__x00DF_e_40'><g id='inner'><rect width='50' height='50'/></g></g>"
                + "<g><rect x='60' width='50' height='50'/></g><g id='B'><rect x='120' width='50' height='50'/></g></g></svg>";
        assertThat(read(plain).drawing().layers()).extracting(Layer::name).containsExactly("Gr\u00f6\u00dfe_40", "B");
    }
}
