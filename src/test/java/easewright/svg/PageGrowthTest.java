package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Side;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The page of a drawing holds the copies that are drawn in it, at the very same scale. What sizes and viewBox mean:
 * SVG 1.1, 7.2 to 7.8.
 */
class PageGrowthTest {
    private static final String SHAPES =
            "<path id='a' d='M10 10h30v40h-30z'/>\n<rect id='b' x='20' y='60' width='9' height='9'/>";

    private static SvgFile file(String root, String shapes) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' " + root + ">\n" + shapes + "\n</svg>\n";
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "page.svg");
    }

    /** The two shapes as pieces, however small the scale makes them. */
    private static Pattern pieces(SvgFile file) {
        return file.pattern()
                .withPieces(List.of("a", "b").stream()
                        .map(id -> Piece.bare(id, file.drawn().outline(id).orElseThrow()))
                        .toList());
    }

    /** The first piece made a left one, with a right one that lies so much further right and down, mm. */
    private static Pattern parted(Pattern pattern, double right, double down) {
        Piece first = pattern.piece("a").orElseThrow();
        PieceCopy copy =
                new PieceCopy(p -> moved(p, right, down), s -> s.transformed(Affine.translation(right, down)), false);
        Piece left = first.toBuilder().name("Front left").side(Side.LEFT).build();
        Piece other = copy.of(left, PieceCopy.ending(Side.RIGHT)).toBuilder()
                .name("Front right")
                .side(Side.RIGHT)
                .build();
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        pieces.remove(first);
        pieces.addAll(0, List.of(left, other));
        return pattern.withPieces(pieces);
    }

    private static Point moved(Point p, double right, double down) {
        return new Point(p.x() + right, p.y() + down);
    }

    private static String root(byte[] written) {
        Matcher root =
                java.util.regex.Pattern.compile("<svg[^>]*>").matcher(new String(written, StandardCharsets.UTF_8));
        assertThat(root.find()).isTrue();
        return root.group()
                .replace("<svg xmlns='http://www.w3.org/2000/svg' ", "")
                .replace(">", "");
    }

    private static List<String> codes(SvgFile.Written written) {
        return written.consequences().stream().map(Finding::code).toList();
    }

    private static String plain(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8).replaceFirst("(?s) *<metadata.*?</metadata>\n", "");
    }

    /** What is seen of the drawing: places in user units that the viewport shows, as the viewport is stated. */
    private static boolean shows(SvgFile file, Outline outline) {
        RootPage page = RootPage.of(root(file)).orElseThrow();
        Point end = page.read()
                .toMm()
                .apply(file.drawing()
                        .rootToMm()
                        .inverse()
                        .apply(new Point(outline.box().maxX(), outline.box().maxY())));
        return !page.lacks(end.x(), end.y());
    }

    private static Tag root(SvgFile file) {
        try {
            return SourceText.of(file.bytes(), "page.svg").tag(0);
        } catch (SvgProblem e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width='100mm' height='80mm' viewBox='0 0 100 80'|200|0|width='260mm' height='80mm' viewBox='0 0 260 80'",
                "width='100mm' height='80mm' viewBox='0 0 100 80'|0|100|width='100mm' height='170mm' viewBox='0 0 100 170'",
                "height=\"8cm\" viewBox=\"0,0  100,80\" width=\" 10cm \"|200|0|height=\"8cm\" viewBox=\"0,0  260,80\" width=\" 26cm \"",
                "width='100mm' height='80mm' viewBox='0 0 100 80'|50|20|width='100mm' height='80mm' viewBox='0 0 100 80'",
                "viewBox='0 0 100 80'|53|0|viewBox='0 0 316 80'",
                "width='100%' height='100%' viewBox='0 0 100 80'|53|0|width='100%' height='100%' viewBox='0 0 316 80'",
                "width='100mm' viewBox='0 0 100 80'|200|0|width='260mm' viewBox='0 0 260 80'",
                "height='80mm' viewBox='0 0 100 80'|200|0|height='80mm' viewBox='0 0 260 80'",
                "width='378' height='302'|200|0|width='873' height='302'",
                "width='100mm' height='80mm'|200|0|width='231mm' height='80mm'",
                "width='100mm' height='80mm' viewBox='-5 -6 100 80'|200|0|width='265mm' height='80mm' viewBox='-5 -6 265 80'",
            })
    void thePageBecomesAsLargeAsIsNeeded(String root, double right, double down, String expected) throws Exception {
        SvgFile file = file(root, SHAPES);
        Pattern parted = parted(pieces(file), right, down);
        SvgFile.Written written = file.writing(parted);
        assertThat(root(written.bytes())).isEqualTo(expected);
        assertThat(codes(written)).isEqualTo(root.equals(expected) ? List.of() : List.of("page-grown"));
    }

    /** Sizes as editors write them, with rests on either side, and every way to fit: the scale is the same to the last bit. */
    @Test
    void theScaleIsTheSameWhateverTheFileStates() throws Exception {
        Random random = new Random(4711);
        List<String> roots = List.of(
                "width='210mm' height='297mm' viewBox='0 0 744.09448 1052.3622'",
                "width='744.09448' height='1052.3622'",
                "width='8.5in' height='11in' viewBox='0 0 612 792'",
                "width='595.28pt' height='841.89pt' viewBox='0 0 595.28 841.89'",
                "width='210mm' height='297mm' viewBox='0 0 21000 29700'",
                "width='8.26772in' height='11.6929in' viewBox='0 0 8267.72 11692.9'",
                "width='900mm' height='300mm' viewBox='0 0 90 70'",
                "width='300mm' height='900mm' viewBox='0 0 90 70' preserveAspectRatio='xMaxYMax meet'",
                "width='300mm' height='400mm' viewBox='0 0 90 70' preserveAspectRatio='xMidYMid slice'",
                "width='300mm' height='400mm' viewBox='0 0 90 70' preserveAspectRatio='none'",
                "width='30.7cm' height='41.3cm' viewBox='3 4 91.3 70.1' preserveAspectRatio='xMinYMin'",
                "viewBox='0 0 595.28 841.89'",
                "width='33.3cm' viewBox='0 0 91.3 77.7'",
                "height='33.3cm' viewBox='0 0 91.3 77.7'");
        for (String root : roots) {
            for (int i = 0; i < 8; i++) {
                SvgFile file = file(root, SHAPES);
                double right = i % 3 == 0 ? 0 : 3000 * random.nextDouble();
                double down = i % 3 == 1 ? 0 : 3000 * random.nextDouble();
                Pattern parted = parted(pieces(file), right, down);
                SvgFile.Written written = file.writing(parted);
                SvgFile again = SvgFile.read(written.bytes(), "again.svg");
                String what = root + " " + right + " " + down + " " + root(written.bytes());
                assertThat(codes(written)).as(what).doesNotContain("page-not-grown");
                assertThat(again.drawing().rootToMm())
                        .as(what)
                        .isEqualTo(file.drawing().rootToMm());
                assertThat(again.drawing().scale())
                        .as(what)
                        .isEqualTo(file.drawing().scale());
                assertThat(shows(again, again.pattern().pieces().get(1).outline()))
                        .as(what)
                        .isTrue();
                byte[] back = again.write(pieces(file));
                assertThat(root(back)).isEqualTo(root);
                assertThat(plain(back).replaceAll(" id='[^']*'", ""))
                        .isEqualTo(plain(file.bytes()).replaceAll(" id='[^']*'", ""));
                assertThat(new String(back, StandardCharsets.UTF_8)).doesNotContain("<page");
            }
        }
    }

    @Test
    void whatFollowsThePageMayFollowItUnlessItIsAPieceOrStandsInIt() throws Exception {
        String root = "width='100mm' height='80mm' viewBox='0 0 100 80'";
        String ground = "<rect width='100%' height='100%' fill='none'/>";
        SvgFile file = file(root, SHAPES + ground);
        SvgFile.Written written = file.writing(parted(pieces(file), 200, 0));
        assertThat(codes(written)).containsExactly("page-grown");
        assertThat(new String(written.bytes(), StandardCharsets.UTF_8)).contains(ground);

        SvgFile words = file(root, SHAPES + "<text x='50%' y='20'>Mine</text>");
        SvgFile.Written left = words.writing(parted(pieces(words), 200, 0));
        assertThat(codes(left)).containsExactly("page-not-grown");
        assertThat(left.consequences().get(0).values()).containsEntry("pieces", List.of("Front right"));
        assertThat(root(left.bytes())).isEqualTo(root);

        SvgFile inner = file(root, SHAPES + "<svg width='100%' viewBox='0 0 10 10'><path d='M1 1h3v3z'/></svg>");
        assertThat(codes(inner.writing(parted(pieces(inner), 200, 0)))).containsExactly("page-not-grown");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|53",
                "width='100%' height='100%'|53",
                "style='width:100mm;height:80mm' viewBox='0 0 100 80'|200",
                "style='width:100mm;height:80mm' width='1mm' height='1mm' viewBox='0 0 100 80'|200",
            })
    void aPageThatCannotBecomeLargerIsToldOf(String root, double right) throws Exception {
        SvgFile file = file(root, SHAPES);
        SvgFile.Written written = file.writing(parted(pieces(file), right, 0));
        assertThat(codes(written)).containsExactly("page-not-grown");
        assertThat(root(written.bytes())).isEqualTo(root(file.bytes()));
    }

    @Test
    void aPageThatSomebodyChangedSinceIsLeftAsItIs() throws Exception {
        SvgFile file = file("width='100mm' height='80mm' viewBox='0 0 100 80'", SHAPES);
        String grown = new String(file.write(parted(pieces(file), 200, 0)), StandardCharsets.UTF_8);
        String changed = grown.replace("width='260mm'", "width='300mm'").replace("0 0 260 80", "0 0 300 80");
        assertThat(changed).isNotEqualTo(grown);
        SvgFile own = SvgFile.read(changed.getBytes(StandardCharsets.UTF_8), "own.svg");
        assertThat(own.findings()).isEmpty();
        assertThat(root(own.write(pieces(file)))).isEqualTo("width='300mm' height='80mm' viewBox='0 0 300 80'");
    }

    /** Copies that move further grow the page from what it was, not from what it became. */
    @Test
    void thePageFollowsTheCopies() throws Exception {
        SvgFile file = file("width='100mm' height='80mm' viewBox='0 0 100 80'", SHAPES);
        SvgFile far = SvgFile.read(file.write(parted(pieces(file), 400, 0)), "far.svg");
        Pattern near = parted(pieces(file), 100, 0);
        SvgFile.Written written = far.writing(near);
        assertThat(root(written.bytes())).isEqualTo("width='160mm' height='80mm' viewBox='0 0 160 80'");
        assertThat(codes(written)).as("it becomes smaller").doesNotContain("page-grown");
        Segment first = SvgFile.read(written.bytes(), "near.svg")
                .pattern()
                .pieces()
                .get(1)
                .outline()
                .segments()
                .get(0);
        assertThat(first.start().x()).isEqualTo(110);
    }
}
