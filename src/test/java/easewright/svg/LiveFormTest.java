package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Side;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Inkscape draws an element with {@code sodipodi:type} by its parameters and pays no heed to {@code d}, and lays an effect
 * anew on {@code inkscape:original-d} as soon as the element is touched (tried with Inkscape 1.2: a star whose {@code d}
 * was a rectangle kept the box of the star).
 */
class LiveFormTest {
    private static final String STAR = "<path id='star' class=\"cut\" sodipodi:type='star'\n   sodipodi:sides='4'"
            + " inkscape:flatsided='true' d='M10,10 h100 v100 h-100 z'/>";
    private static final String EFFECT = "<path id='effect' inkscape:path-effect='#e' inkscape:original-d='M0,0 h9 v9'"
            + " d='M210,10 h100 v100 h-100 z' sodipodi:nodetypes='ccccc'/>";

    private static SvgFile file(String drawn) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'"
                + " xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape'"
                + " xmlns:sodipodi='http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd'>" + drawn + "</svg>";
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "live.svg");
    }

    private static Pattern widened(Pattern pattern, String id) {
        Piece piece = pattern.piece(id).orElseThrow();
        Point from = piece.outline().segments().get(0).start();
        List<Point> corners = List.of(
                from, from.plus(new Point(105, 0)), from.plus(new Point(105, 100)), from.plus(new Point(0, 100)));
        return pattern.withPiece(
                piece.toBuilder().outline(Outline.polygon(corners)).build());
    }

    private static String text(byte[] written) {
        return new String(written, StandardCharsets.UTF_8);
    }

    @Test
    void aLineThatIsDrawnAnewIsNoSuchFormAnyMore() throws SvgProblem {
        SvgFile file = file(STAR + EFFECT);
        SvgFile.Written written = file.writing(widened(widened(file.pattern(), "star"), "effect"));
        assertThat(text(written.bytes()))
                .contains(
                        "<path id='star' class=\"cut\"\n   sodipodi:sides='4' inkscape:flatsided='true' d='M10,10 L115 10")
                .contains("<path id='effect' d='M210,10 L315 10")
                .contains("sodipodi:nodetypes='ccccc'/>")
                .doesNotContain("sodipodi:type", "path-effect", "original-d");
        assertThat(written.consequences())
                .extracting(Finding::code, Finding::piece)
                .containsExactly(tuple("shape-no-longer-live", "star"), tuple("shape-no-longer-live", "effect"));
    }

    @Test
    void whereTheLineStaysItStaysOne() throws SvgProblem {
        SvgFile file = file(STAR + EFFECT);
        String written = text(file.write(widened(file.pattern(), "star").withGarment("skirt")));
        assertThat(written).contains(EFFECT);
        assertThat(text(file.write(file.pattern().withGarment("skirt")))).contains(STAR, EFFECT);
    }

    private static final String GROUP = "<g id='g' inkscape:label='Fronts'\n  inkscape:path-effect='#e'>"
            + "<g id='inner'><path id='front' d='M10,10 h100 v100 h-100 z' inkscape:original-d='M20,20 h80 v80 h-80 z'/></g>"
            + "<path id='pocket' inkscape:path-effect='#f' d='M150,150 h20 v20 h-20 z' inkscape:original-d='M0,0 z'/>"
            + "</g>";
    private static final String BESIDE = "<g inkscape:path-effect='#e'>" + EFFECT + "</g>";

    /**
     * An effect on a group is laid on every line in it: Inkscape 1.2 made a line of 140 × 100 mm, drawn anew in a group with
     * an outset of 10 mm, into one of 160 × 120 mm as soon as it was touched. A line that has {@code inkscape:original-d}
     * and no effect around it stays.
     */
    @Test
    void aGroupWithALineThatIsDrawnAnewLosesItsEffectAndLooksTheSame() throws SvgProblem {
        SvgFile file = file(GROUP + BESIDE);
        SvgFile.Written written = file.writing(widened(file.pattern(), "front"));
        assertThat(text(written.bytes()))
                .contains("<g id='g' inkscape:label='Fronts'><g id='inner'><path id='front' d='M10,10 L115 10")
                .contains("<path id='pocket' d='M150,150 h20 v20 h-20 z'/></g>")
                .contains(BESIDE);
        assertThat(written.consequences())
                .extracting(Finding::code, Finding::piece)
                .containsExactly(tuple("shape-no-longer-live", "front"), tuple("group-no-longer-live", "front"));
        SvgFile again = SvgFile.read(written.bytes(), "again.svg");
        assertThat(again.pattern().piece("pocket").orElseThrow().outline())
                .isEqualTo(file.pattern().piece("pocket").orElseThrow().outline());
    }

    /** Each is taken off once, and what stands behind the group keeps its own. */
    @Test
    void twoLinesOfOneGroupAreDrawnAnew() throws SvgProblem {
        SvgFile file = file(GROUP + BESIDE);
        String written = text(file.write(widened(widened(file.pattern(), "front"), "pocket")));
        assertThat(written)
                .contains("<g id='g' inkscape:label='Fronts'><g id='inner'><path id='front' d='M10,10 L115 10")
                .contains("<path id='pocket' d='M150,150 L255 150")
                .contains(BESIDE);
    }

    @Test
    void aGroupOfWhichNoLineIsDrawnAnewKeepsItsEffect() throws SvgProblem {
        SvgFile file = file(GROUP + BESIDE);
        assertThat(text(file.write(file.pattern().withGarment("skirt")))).contains(GROUP, BESIDE);
    }

    /** The copy for the other side would be taken for what the effect is laid on. */
    @Test
    void aCopyIsNotLaidIntoAGroupWithAnEffect() throws SvgProblem {
        SvgFile file = file(GROUP + BESIDE);
        Piece front = file.pattern().piece("front").orElseThrow();
        PieceCopy mirrored = new PieceCopy(
                p -> new Point(390 - p.x(), p.y()), s -> s.transformed(new Affine(-1, 0, 0, 1, 390, 0)), true);
        Piece left = front.toBuilder().name("front left").side(Side.LEFT).build();
        Piece right = mirrored.of(
                front.toBuilder().name("front right").side(Side.RIGHT).build(), PieceCopy.ending(Side.RIGHT));
        SvgFile.Written written = file.writing(file.pattern().withPieces(List.of(left, right)));
        assertThat(text(written.bytes())).contains("front-right").doesNotContain("'Fronts'\n");
        assertThat(written.consequences())
                .extracting(Finding::code, Finding::piece)
                .contains(tuple("group-no-longer-live", right.name()));
    }
}
