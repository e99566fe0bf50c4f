package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Scale;
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
 * Once its scale is proved, a file states its size in units of paper, so that other programs open it at true size. What
 * width, height and viewBox mean: SVG 1.1, 7.2 to 7.8.
 */
class TrueSizeTest {
    private static final String SHAPES =
            "<path id='a' d='M10 10h30v40h-30z'/>\n<rect id='b' x='20' y='60' width='9' height='9'/>";
    private static final String OURS = "<svg xmlns='http://www.w3.org/2000/svg'";

    private static SvgFile file(String root, String shapes) throws SvgProblem {
        return read((OURS + " " + root + ">\n" + shapes + "\n</svg>\n").getBytes(StandardCharsets.UTF_8));
    }

    private static SvgFile read(byte[] bytes) throws SvgProblem {
        return SvgFile.read(bytes, "page.svg");
    }

    private static Pattern proved(SvgFile file, double mmPerUnit) throws SvgProblem {
        List<Piece> pieces = List.of(
                Piece.bare("a", file.drawn().outline("a").orElseThrow()),
                Piece.bare("b", file.drawn().outline("b").orElseThrow()));
        return file.atScale(file.pattern().withPieces(pieces), mmPerUnit, false);
    }

    private static String root(byte[] written) {
        Matcher root =
                java.util.regex.Pattern.compile("<svg[^>]*>").matcher(new String(written, StandardCharsets.UTF_8));
        assertThat(root.find()).isTrue();
        return root.group();
    }

    private static List<String> codes(SvgFile.Written written) {
        return written.consequences().stream().map(Finding::code).toList();
    }

    private static String besidesRootAndMarks(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8)
                .replaceFirst("<svg[^>]*>", "")
                .replaceFirst("(?s) *<metadata.*?</metadata>\n", "");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "viewBox='0 0 100 80'|0.5|50mm|40mm|0 0 100 80",
                "width='100%' height='100%' viewBox='0 0 100 80'|2|200mm|160mm|0 0 100 80",
                "width='auto' viewBox='0 0 100 80'|2|200mm|160mm|0 0 100 80",
                "viewBox='-5 -6 100 80'|0.5|50mm|40mm|-5 -6 100 80",
                "width='378' height='302'|0.5|189mm|151mm|0 0 378 302",
                "width='378px' height='302px' viewBox='0 0 378 302'|0.5|189mm|151mm|0 0 378 302",
                "width='378' viewBox='0 0 189 100'|1|189mm|100mm|0 0 189 100",
                // Without a viewBox a size on paper says how much is seen, not how large a unit is.
                "width='254mm' height='127mm'|0.5|480mm|240mm|0 0 960 480",
                "width='10in' height='5in'|0.5|18.8976378in|9.4488189in|0 0 960 480",
                // A size on paper that a line proved wrong.
                "width='100mm' height='80mm' viewBox='0 0 100 80'|1.25|125mm|100mm|0 0 100 80",
                // And one that it proved right.
                "width='100mm' height='80mm' viewBox='0 0 100 80'|1|100mm|80mm|0 0 100 80",
                // Nothing says how large the page is: what is drawn, and 20 mm beside it.
                "id='x'|1|60mm|89mm|0 0 60 89",
                "width='100%'|1|60mm|89mm|0 0 60 89",
                "height='100'|1|60mm|100mm|0 0 60 100",
            })
    void aProvedScaleIsStatedAsTheSizeOfThePage(
            String root, double mmPerUnit, String width, String height, String viewBox) throws Exception {
        SvgFile file = file(root, SHAPES);
        SvgFile.Written written = file.writing(proved(file, mmPerUnit));
        RootPage page = page(written.bytes());
        assertThat(page.width()).hasValue(width);
        assertThat(page.height()).hasValue(height);
        assertThat(page.viewBox()).hasValue(viewBox);
        boolean stays = page.equals(page(file.bytes()));
        assertThat(codes(written)).isEqualTo(stays ? List.of() : List.of("page-sized"));
        assertThat(besidesRootAndMarks(written.bytes())).isEqualTo(besidesRootAndMarks(file.bytes()));
    }

    private static RootPage page(byte[] bytes) throws SvgProblem {
        return RootPage.of(SourceText.of(bytes, "page.svg").tag(0)).orElseThrow();
    }

    @Test
    void theRestOfTheRootStaysAsItStands() throws Exception {
        SvgFile file = file("class=\"x\"  width = '100%'\n version='1.1'", SHAPES);
        assertThat(root(file.write(proved(file, 1))))
                .isEqualTo("<svg height=\"89mm\" viewBox=\"0 0 60 89\" xmlns='http://www.w3.org/2000/svg'"
                        + " class=\"x\"  width = '60mm'\n version='1.1'>");
    }

    /** Roots as editors write them: reopened, every place is the same to the last bit, and by the page alone within 1e-7. */
    @Test
    void reopenedItMeasuresTheSameWithoutBeingAsked() throws Exception {
        Random random = new Random(20261126);
        List<String> roots = List.of(
                "width='210mm' height='297mm' viewBox='0 0 744.09448 1052.3622'",
                "width='744.09448' height='1052.3622'",
                "width='595.28' height='841.89' viewBox='0 0 595.28 841.89'",
                "width='100%' height='100%' viewBox='0 0 8267.72 11692.9'",
                "viewBox='3.3 4.7 91.3 70.1'",
                "width='900' height='300' viewBox='0 0 90 70'",
                "width='300' height='900' viewBox='0 0 90 70' preserveAspectRatio='xMaxYMax meet'",
                "width='300' height='400' viewBox='2 1 90 70' preserveAspectRatio='xMidYMid slice'",
                "width='300' height='400' viewBox='0 0 90 70' preserveAspectRatio='none'",
                "width='33.3' viewBox='0 0 91.3 77.7'",
                "height='33.3pt' viewBox='0 0 91.3 77.7'",
                "width='30em' height='20ex'",
                "id='x'");
        int asked = 0;
        for (String root : roots) {
            for (int i = 0; i < 12; i++) {
                SvgFile file = file(root, SHAPES);
                double mmPerUnit = i == 0 ? 25.4 / 72 : i == 1 ? 25.4 / 96 : Math.exp(4 * random.nextDouble() - 2);
                Pattern proved = proved(file, mmPerUnit);
                SvgFile.Written written = file.writing(proved);
                String what = root + " at " + mmPerUnit + ": " + root(written.bytes());
                assertThat(codes(written)).as(what).containsExactly("page-sized");
                SvgFile again = read(written.bytes());
                assertThat(again.pattern().pieces()).as(what).isEqualTo(proved.pieces());
                assertThat(again.pattern().scale()).as(what).isEqualTo(proved.scale());
                assertThat(again.findings()).as(what).extracting(Finding::code).doesNotContain("scale-unproved");
                byte[] alone = new String(written.bytes(), StandardCharsets.UTF_8)
                        .replaceFirst("(?s) *<metadata.*?</metadata>\n", "")
                        .getBytes(StandardCharsets.UTF_8);
                Drawing byOthers = read(alone).drawing();
                assertThat(byOthers.scale().proof()).as(what).isEqualTo(Scale.Proof.PHYSICAL_SIZE);
                assertThat(byOthers.scale().mmPerUnitX() / mmPerUnit).as(what).isCloseTo(1, within(1e-7));
                // Saved once more, nothing else is to be said of it.
                SvgFile.Written more = again.writing(again.pattern().withGarment("skirt"));
                assertThat(codes(more)).as(what).isEmpty();
                assertThat(root(more.bytes())).as(what).isEqualTo(root(written.bytes()));
                asked++;
            }
        }
        assertThat(asked).isEqualTo(156);
    }

    @Test
    void thePageGrowsForCopiesAfterItGotItsSize() throws Exception {
        SvgFile file = file("viewBox='0 0 100 80'", SHAPES);
        Pattern pattern = proved(file, 2);
        Piece first = pattern.piece("a").orElseThrow();
        PieceCopy copy = new PieceCopy(
                p -> p.plus(new easewright.geom.Point(400, 0)), s -> s.transformed(Affine.translation(400, 0)), false);
        Piece left = first.toBuilder().name("Front left").side(Side.LEFT).build();
        Piece right = copy.of(left, PieceCopy.ending(Side.RIGHT)).toBuilder()
                .name("Front right")
                .side(Side.RIGHT)
                .build();
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        pieces.set(pieces.indexOf(first), left);
        pieces.add(1, right);
        SvgFile.Written written = file.writing(pattern.withPieces(pieces));
        assertThat(codes(written)).containsExactly("page-sized", "page-grown");
        assertThat(root(written.bytes()))
                .contains("width=\"500mm\" height=\"160mm\"")
                .contains("viewBox='0 0 250 80'");
        SvgFile again = read(written.bytes());
        SvgFile.Written back = again.writing(again.pattern().withPieces(pattern.pieces()));
        assertThat(root(back.bytes()))
                .contains("width=\"200mm\" height=\"160mm\"")
                .contains("viewBox='0 0 100 80'");
    }

    /** A ground may go by the page; where anything else does, the size stays unsaid, and that is told. */
    @Test
    void whatWouldMoveKeepsItsPlace() throws Exception {
        for (String root : List.of(
                "style='width:100%;height:100%' viewBox='0 0 100 80'",
                "viewBox='0 0 0 0'", "viewBox='&#48; 0 100 80'")) {
            SvgFile file = file(root, SHAPES);
            Pattern proved = proved(file, 2);
            SvgFile.Written written = file.writing(proved);
            assertThat(root(written.bytes())).as(root).isEqualTo(root(file.bytes()));
            assertThat(codes(written)).as(root).containsExactly("page-not-sized");
            assertThat(read(written.bytes()).pattern().pieces()).as(root).isEqualTo(proved.pieces());
        }
        SvgFile text = file("id='x'", SHAPES + "<text x='50%' y='50%'>10 cm</text>");
        assertThat(codes(text.writing(proved(text, 2)))).containsExactly("page-not-sized");
    }

    /** Somebody scaled the page since: the line that was measured is believed, and the difference told. */
    @Test
    void aPageThatSaysOtherwiseIsTold() throws Exception {
        SvgFile file = file("viewBox='0 0 100 80'", SHAPES);
        Pattern proved = proved(file, 2);
        String written = new String(file.write(proved), StandardCharsets.UTF_8);
        SvgFile scaled = read(written.replace("width=\"200mm\" height=\"160mm\"", "width=\"100mm\" height=\"80mm\"")
                .getBytes(StandardCharsets.UTF_8));
        assertThat(scaled.findings())
                .filteredOn(f -> f.code().equals("scale-page-differs"))
                .singleElement()
                .satisfies(
                        f -> assertThat((double) f.values().get("of.percent")).isCloseTo(50, within(1e-6)));
        assertThat(scaled.pattern().pieces()).isEqualTo(proved.pieces());
        // Measured again it is as it is now, and what was said of it is settled.
        Pattern anew = scaled.atScale(scaled.pattern(), 1, false);
        assertThat(scaled.findings(anew)).extracting(Finding::code).doesNotContain("scale-page-differs");
        // Saved with the old line, the page is put right.
        byte[] right = scaled.write(scaled.pattern().withGarment("skirt"));
        assertThat(read(right).findings()).extracting(Finding::code).doesNotContain("scale-page-differs");
        assertThat(root(right)).contains("width=\"200mm\"");
    }

    @Test
    void anUnprovedScaleStatesNothing() throws Exception {
        SvgFile file = file("viewBox='0 0 100 80'", SHAPES);
        SvgFile.Written written = file.writing(file.pattern().withGarment("skirt"));
        assertThat(root(written.bytes())).isEqualTo(root(file.bytes()));
    }
}
