package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.measure.Measures;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Sizes that lie on each other without layers and without a word that names them. */
class GradedNestTest {
    private static Suggestions suggestions(String svg, Set<String> leftOut) throws SvgProblem {
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "nest.svg");
        Pattern bare = file.pattern();
        Suggestions made =
                Suggestions.of(new Sheet(bare, file.loose(bare), file.texts(), file.layerNames(bare)), leftOut);
        assertThat(SvgFile.read(file.write(made.outcome()), "saved.svg").pattern())
                .isEqualTo(made.outcome());
        return made;
    }

    private static String drawn() throws Exception {
        return Files.readString(Path.of("src/test/resources/bare/nest-unsaid.svg"));
    }

    private static List<Suggestion> of(Suggestions made, Suggestion.Kind kind) {
        return made.all().stream().filter(s -> s.kind() == kind).toList();
    }

    /** Bodices whose lines cross at the neck, skirts of which the smaller lies in the larger; one band for both. */
    @Test
    void twoSizesAreAskedAbout() throws Exception {
        Suggestions made = suggestions(drawn(), Set.of());
        assertThat(of(made, Suggestion.Kind.STITCHING_LINE)).isEmpty();
        assertThat(of(made, Suggestion.Kind.SIZE))
                .hasSize(8)
                .as("a guess, and told as one")
                .noneMatch(s -> s.reason().isLikely());
        Pattern pattern = made.outcome();
        assertThat(pattern.pieces())
                .extracting(Piece::name)
                .containsExactlyInAnyOrder(
                        "Bodice front 1",
                        "Bodice front 2",
                        "Bodice back 1",
                        "Bodice back 2",
                        "Skirt front 1",
                        "Skirt front 2",
                        "Skirt back 1",
                        "Skirt back 2",
                        "Waistband");
        assertThat(pattern.pieces())
                .filteredOn(p -> !p.name().equals("Waistband"))
                .allMatch(Piece::onFold);
        assertThat(Measures.of(pattern).girths())
                .filteredOn(g -> g.name().equals("hip"))
                .allSatisfy(g -> assertThat(g.finished())
                        .isCloseTo(g.size().orElseThrow().equals("1") ? 960 : 1000, within(0.05)))
                .hasSize(2);
    }

    /** One in the other, as a stitching line would be: it is asked about, and whoever unticks it is asked whether it is sewn. */
    @Test
    void aSizeInsideAnotherIsAskedAbout() throws Exception {
        String svg =
                sheet(skirt(new double[] {1, 3, 10, 10, 10, 6}, 205, 560, 240) + skirt(new double[6], 205, 560, 240));
        Suggestions made = suggestions(svg, Set.of());
        assertThat(of(made, Suggestion.Kind.STITCHING_LINE)).isEmpty();
        assertThat(of(made, Suggestion.Kind.OWN_SIZE))
                .singleElement()
                .matches(s -> !s.reason().isLikely());
        assertThat(made.outcome().pieces())
                .extracting(Piece::name)
                .containsExactlyInAnyOrder("Skirt front 1", "Skirt front 2");
        Suggestions other = suggestions(
                svg, Set.of(of(made, Suggestion.Kind.OWN_SIZE).get(0).key()));
        assertThat(of(other, Suggestion.Kind.STITCHING_LINE))
                .singleElement()
                .matches(s -> !s.reason().isLikely());
        assertThat(other.outcome().pieces()).hasSize(1);
    }

    private static String sheet(String body) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='900mm' viewBox='0 0 600 900'>" + body
                + "<text x='80' y='300' font-size='12'>Skirt front</text></svg>";
    }

    /** Sizes that stand elsewhere on the sheet, as many as outlines, are theirs; another number of them says that nothing is known. */
    @Test
    void theSheetMayNameThem() throws Exception {
        String named = drawn().replace("</svg>", "<text x='800' y='720'>Sizes 38-40</text></svg>");
        Suggestions made = suggestions(named, Set.of());
        assertThat(made.outcome().pieces())
                .extracting(Piece::size)
                .contains(Optional.of("38"), Optional.of("40"))
                .doesNotContain(Optional.of("1"));
        assertThat(of(made, Suggestion.Kind.SIZE)).allMatch(s -> s.reason().isLikely());
        String three = drawn().replace("</svg>", "<text x='800' y='720'>Sizes 36-38-40</text></svg>");
        assertThat(of(suggestions(three, Set.of()), Suggestion.Kind.SIZE)).isEmpty();
    }

    @Test
    void threeSizesWithoutAWordAreNumbered() throws Exception {
        String nest = Files.readString(Path.of("src/test/resources/bare/nest.svg"))
                .replaceAll("<g id=\"size_\\d+\"", "<g")
                .replace("36-38-40", "");
        Suggestions made = suggestions(nest, Set.of());
        assertThat(of(made, Suggestion.Kind.SIZE))
                .hasSize(6)
                .allMatch(s -> s.reason().code().equals("graded-nest"));
        assertThat(Measures.of(made.outcome()).girths())
                .filteredOn(g -> g.name().equals("hip"))
                .extracting(g -> g.size().orElseThrow() + " " + Math.round(g.finished()))
                .containsExactlyInAnyOrder("1 910", "2 950", "3 990");
    }

    private static String skirt(double[] by, double wide, double tall, double hem) {
        return String.format(
                Locale.ROOT,
                "<path d='M60,%.3f C%.3f,%.3f %.3f,%.3f %.3f,%.3f C%.3f,%.3f %.3f,%.3f %.3f,%.3f L%.3f,%.3f L60,%.3f Z'/>",
                80 - by[0],
                60 + wide * 0.4,
                80 - by[0],
                60 + wide * 0.7,
                77 - by[1],
                60 + wide + by[2],
                68 - by[1],
                70 + wide + by[2],
                120.0,
                90 + wide + by[3],
                190.0,
                90 + wide + by[3],
                270.0,
                60 + hem + by[4],
                80 + tall + by[5],
                80 + tall + by[5]);
    }

    /**
     * Halves of skirts with each corner shifted as in grading by its own amount (6 to 16 mm at the side, up to 4 mm above,
     * up to 8 mm at the hem), and the same with one allowance on each edge: the one is asked about as a size, the other not.
     */
    @Test
    void gradedHalvesAreToldFromAllowances() throws SvgProblem {
        Random random = new Random(20260311);
        int sizes = 0;
        for (int i = 0; i < 60; i++) {
            double wide = 170 + random.nextDouble() * 80;
            double tall = 380 + random.nextDouble() * 300;
            double hem = wide + 30 + random.nextDouble() * 60;
            double up = random.nextDouble() * 4;
            double side = 6 + random.nextDouble() * 10;
            double down = random.nextBoolean() ? 0 : random.nextDouble() * 8;
            double[] by = {up * 0.4, up, side, side + random.nextDouble() * 2, side + random.nextDouble() * 3, down};
            String svg = sheet(skirt(by, wide, tall, hem) + skirt(new double[6], wide, tall, hem));
            Suggestions made = suggestions(svg, Set.of());
            // Where the lines cross they are two pieces in any case; else the inner one is asked about.
            Set<Optional<String>> found =
                    made.outcome().pieces().stream().map(Piece::size).collect(Collectors.toSet());
            sizes += found.equals(Set.of(Optional.of("1"), Optional.of("2"))) ? 1 : 0;
        }
        assertThat(sizes).isEqualTo(60);
    }

    @Test
    void allowancesAreNoSizes() throws SvgProblem {
        for (String name : List.of("dart-cut-in", "dart-cut-in-exact", "no-dart", "no-dart-exact", "open-at-fold")) {
            SvgFile file = SvgFile.read(Path.of("src/test/resources/lines", name + ".svg"));
            Pattern bare = file.pattern();
            Suggestions made = Suggestions.of(new Sheet(bare, file.loose(bare), file.texts()), Set.of());
            assertThat(of(made, Suggestion.Kind.OWN_SIZE)).as(name).isEmpty();
            assertThat(made.outcome().pieces().get(0).drawn()).isIn(LineKind.values());
        }
        // Those of LineInsideTest, whose allowances differ from edge to edge and shake.
        for (Object half : LineInsideTest.halves()) {
            assertThat(of(LineInsideTest.made(half), Suggestion.Kind.OWN_SIZE))
                    .as("%s", half)
                    .isEmpty();
        }
    }
}
