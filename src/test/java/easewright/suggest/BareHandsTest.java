package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.svg.ReadOptions;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * From a bare drawing to the girth of the hip, with all suggestions taken and nothing else done than a test says. Our own
 * drawings, made as different hands and programs make them; their girths are known by construction.
 */
class BareHandsTest {
    private static SvgFile read(String name) throws SvgProblem {
        return SvgFile.read(Path.of("src/test/resources/bare", name + ".svg"));
    }

    private static Suggestions suggestions(SvgFile file) {
        Pattern pattern = file.pattern();
        return Suggestions.of(
                new Sheet(pattern, file.loose(pattern), file.texts(), file.layerNames(pattern)), Set.of());
    }

    /** All marks made, and the file as it would be saved read back without a fault. */
    private static Pattern marked(SvgFile file) throws SvgProblem {
        Pattern outcome = suggestions(file).outcome();
        SvgFile saved = SvgFile.read(file.write(outcome), "saved.svg");
        assertThat(saved.pattern()).isEqualTo(outcome);
        assertThat(saved.findings()).extracting(Finding::severity).doesNotContain(Severity.FAULT);
        return outcome;
    }

    private static double girth(Pattern pattern, String level) {
        return Measures.of(pattern).girth(level).orElseThrow().finished();
    }

    private static Pattern withHip(Pattern pattern, Point... places) {
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        for (int i = 0; i < places.length; i++) {
            pieces.set(i, pieces.get(i).withLevels(List.of(LevelMark.through("hip", places[i]))));
        }
        return pattern.withLevels(List.of(Level.of("hip", LevelKind.HIP))).withPieces(pieces);
    }

    private static List<String> names(Pattern pattern) {
        return pattern.pieces().stream().map(Piece::name).toList();
    }

    /** Cutting lines, stitching lines, marks and words on layers of their own, groups moved and turned. */
    @Test
    void layersAndTransforms() throws SvgProblem {
        Pattern pattern = marked(read("layers"));
        assertThat(names(pattern)).containsExactly("Skirt FRONT", "Skirt BACK", "Waistband");
        assertThat(pattern.pieces()).extracting(Piece::allowance).containsOnly(15.0);
        assertThat(girth(pattern, "hip")).isCloseTo(2 * (240 + 235), within(0.01));
    }

    /** Hundreds of short lines that shake by 0.15 mm, lying askew; the size by a test square, the hip set by hand. */
    @Test
    void tracedFromAScan() throws SvgProblem {
        SvgFile file = read("traced");
        assertThat(file.findings()).extracting(Finding::code).contains("scale-unproved", "scale-by-test-square");
        double unit = file.drawing().proposals().get(0).mmPerUnit();
        Pattern pattern = marked(file.reread(ReadOptions.AS_FILED.withScale(unit)));
        assertThat(names(pattern)).containsExactly("Trouser front", "Trouser back");
        assertThat(pattern.pieces()).allMatch(p -> p.times() == 2 && p.grain().isPresent());
        Pattern hip = withHip(pattern, new Point(290, 290), new Point(720, 300));
        // 245 and 265 to where the crotch curve begins 10 mm higher, which has gone out by 0.7 and 1.7 mm there.
        assertThat(girth(hip, "hip")).isCloseTo(2 * (245.7 + 266.7), within(0.6));
    }

    /** Lines and polylines end to end, y upwards, layers by number, words in capitals. */
    @Test
    void polylinesAndLinesAroundOnePiece() throws SvgProblem {
        Pattern pattern = marked(read("cad"));
        assertThat(names(pattern)).containsExactly("Knit top front", "Knit top back", "Sleeve");
        assertThat(pattern.pieces().get(2).times()).isEqualTo(2);
        assertThat(girth(pattern, "hip")).isCloseTo(4 * 244, within(0.05));
    }

    /** Three sizes in groups, with words and levels common to all; those reach out of the smaller sizes. */
    @Test
    void oneSizeOfANest() throws SvgProblem {
        SvgFile nest = read("nest");
        for (int size : new int[] {36, 38, 40}) {
            Set<String> others = Set.of("size_36", "size_38", "size_40").stream()
                    .filter(key -> !key.equals("size_" + size))
                    .collect(java.util.stream.Collectors.toSet());
            SvgFile file = nest.reread(ReadOptions.AS_FILED.withShown(Set.of(), others));
            assertThat(file.findings()).extracting(Finding::code).doesNotContain("outline-open");
            Pattern pattern = marked(file);
            assertThat(names(pattern)).containsExactly("Skirt front", "Skirt back");
            assertThat(pattern.pieces().get(1).darts()).hasSize(1);
            double half = 240 + (size - 38) * 5;
            assertThat(girth(pattern, "hip")).isCloseTo(2 * (half + half - 5), within(0.01));
        }
    }

    /** A smaller size inside a larger one is no stitching line; words, levels and grain are for all of them. */
    @Test
    void allSizesOfANest() throws SvgProblem {
        SvgFile file = read("nest");
        assertThat(suggestions(file).all()).extracting(Suggestion::kind).doesNotContain(Suggestion.Kind.STITCHING_LINE);
        Pattern pattern = marked(file);
        assertThat(names(pattern))
                .containsExactlyInAnyOrder(
                        "Skirt front 36",
                        "Skirt back 36",
                        "Skirt front 38",
                        "Skirt back 38",
                        "Skirt front 40",
                        "Skirt back 40");
        assertThat(pattern.pieces())
                .allMatch(Piece::onFold)
                .allMatch(p -> p.grain().isPresent());
        assertThat(pattern.pieces())
                .filteredOn(p -> p.name().contains("back"))
                .extracting(p -> p.darts().size())
                .containsOnly(1);
        assertThat(pattern.mates()).extracting(Mate::name).containsExactly("side seam");
        assertThat(Measures.of(pattern).mates()).hasSize(3);
        assertThat(suggestions(SvgFile.read(file.write(pattern), "again.svg")).all())
                .isEmpty();
        assertThat(Measures.of(pattern).girths())
                .filteredOn(g -> g.name().equals("hip"))
                .extracting(g -> g.size().orElseThrow() + " " + Math.round(g.finished()))
                .containsExactlyInAnyOrder("36 910", "38 950", "40 990");
    }

    /** Without groups, the run of sizes written on them tells the outlines that lie on each other apart. */
    @Test
    void aNestWithoutGroups() throws Exception {
        String drawn =
                Files.readString(Path.of("src/test/resources/bare/nest.svg")).replaceAll("<g id=\"size_\\d+\"", "<g");
        Suggestions made = suggestions(SvgFile.read(drawn.getBytes(StandardCharsets.UTF_8), "nest.svg"));
        assertThat(made.all())
                .filteredOn(s -> s.kind() == Suggestion.Kind.SIZE)
                .hasSize(6)
                .allMatch(s -> s.reason().code().equals("size-in-run"));
        assertThat(Measures.of(made.outcome()).girths())
                .filteredOn(g -> g.name().equals("hip"))
                .extracting(g -> g.size().orElseThrow() + " " + Math.round(g.finished()))
                .containsExactlyInAnyOrder("36 910", "38 950", "40 990");
        // As many outlines as sizes, or nothing is said.
        String two = drawn.replace("36-38-40", "36-40");
        assertThat(suggestions(SvgFile.read(two.getBytes(StandardCharsets.UTF_8), "nest.svg"))
                        .all())
                .extracting(Suggestion::kind)
                .doesNotContain(Suggestion.Kind.SIZE);
    }

    /** Both lines drawn around each piece, in points, the fold without an allowance, no word of how often. */
    @Test
    void allowancesDrawnDouble() throws SvgProblem {
        Pattern pattern = marked(read("double"));
        assertThat(pattern.pieces().get(0).onFold()).isTrue();
        assertThat(pattern.pieces().get(1).times()).isEqualTo(2);
        assertThat(girth(pattern, "hip")).isCloseTo(2 * (240 + 250), within(0.01));
        assertThat(girth(pattern, "waist")).isCloseTo(2 * (196 + 196 - 16), within(0.01));
    }

    /** Words turned into shapes: no names, no hip, but the form tells halves of a skirt. */
    @Test
    void wordsTurnedIntoShapes() throws SvgProblem {
        SvgFile file = read("outlines");
        assertThat(file.findings()).extracting(Finding::code).containsExactly("words-as-shapes");
        Pattern pattern = marked(file);
        assertThat(pattern.pieces())
                .hasSize(2)
                .allMatch(Piece::onFold)
                .allMatch(p -> p.size().isEmpty());
        assertThat(pattern.pieces().get(1).darts()).hasSize(1);
        // 20 units of 1/72 in, then 230 mm.
        double down = 20 * 25.4 / 72 + 230;
        Pattern hip = withHip(pattern, new Point(150, down), new Point(450, down));
        assertThat(girth(hip, "hip")).isCloseTo(2 * (240 + 235), within(0.01));
    }

    /** Darts closed by a line across the mouth, and a peak in the waist above them; neither names nor counts. */
    @Test
    void dartsClosedByTheirDrafter() throws SvgProblem {
        Pattern pattern = marked(read("folded"));
        assertThat(names(pattern)).containsExactly("Piece 1", "Piece 2");
        assertThat(pattern.pieces()).allMatch(p -> p.times() * (p.onFold() ? 2 : 1) == 2);
        assertThat(pattern.pieces().get(0).darts())
                .singleElement()
                .satisfies(d -> assertThat(d.intake()).isCloseTo(16, within(0.05)));
        assertThat(pattern.pieces().get(1).darts())
                .singleElement()
                .satisfies(d -> assertThat(d.intake()).isCloseTo(24, within(0.05)));
        assertThat(girth(pattern, "hip")).isCloseTo(2 * (238 + 232), within(0.01));
    }

    /** Every edge, dart leg and arrow a line of its own, in any order, three of them meeting where a dart begins. */
    @Test
    void everyEdgeALineOfItsOwn() throws SvgProblem {
        Pattern pattern = marked(read("separate"));
        assertThat(names(pattern)).containsExactlyInAnyOrder("Skirt F", "Skirt B");
        assertThat(pattern.pieces())
                .allMatch(p -> p.times() * (p.onFold() ? 2 : 1) == 2)
                .allMatch(p -> p.darts().size() == 1 && p.grain().isPresent());
        // The ends of the lines miss each other by up to 0.05 mm.
        assertThat(girth(pattern, "hip")).isCloseTo(2 * (244 + 239), within(0.3));
    }

    /** No words but large letters turned into shapes; a pocket and a tab beside, and the title of the sheet in a table. */
    @Test
    void largeLettersAndATitle() throws SvgProblem {
        SvgFile file = read("poster");
        assertThat(file.findings())
                .extracting(Finding::code)
                .contains("letters-left-out", "words-as-shapes", "page-frame-unnamed-left-out");
        Pattern pattern = marked(file);
        assertThat(pattern.pieces())
                .filteredOn(p -> p.times() * (p.onFold() ? 2 : 1) == 2)
                .extracting(Piece::name)
                .containsExactly("Piece 1", "Piece 2");
        assertThat(names(pattern)).as("without the title").hasSize(4);
        Pattern hip = withHip(pattern, new Point(150, 360), new Point(1000, 360));
        assertThat(girth(hip, "hip")).isCloseTo(2 * (252 + 246), within(0.01));
    }
}
