package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.mark.LevelEdits;
import easewright.editor.mark.PieceEdits;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What lies over another piece, or is sewn above it, is asked about where both count in one girth. */
class LayersCountedTest extends HalfOfSkirt {
    private static List<Finding> asked(Pattern pattern) {
        return Checks.of(pattern, Measures.of(pattern), TABLES).stream()
                .filter(f -> f.code().startsWith("layer-"))
                .toList();
    }

    @Test
    void aFacingThatCountsIsAskedAbout() {
        Pattern faced = pattern(0, half("front", 0), half("back", 0), half("Front facing", 0));
        assertThat(asked(faced)).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("layer-counted");
            assertThat(f.piece()).isEqualTo("Front facing");
            assertThat(f.values())
                    .containsEntry("levels", List.of("hip"))
                    .containsEntry("others", List.of("front", "back"));
        });
        Pattern out = LevelEdits.leftOut(faced, "Front facing", List.of("hip"));
        assertThat(asked(out)).isEmpty();
        assertThat(Measures.of(out).girth("hip").orElseThrow().finished()).isEqualTo(800);
        assertThat(Measures.of(faced).girth("hip").orElseThrow().finished()).isEqualTo(1200);
        assertThat(asked(pattern(0, half("front", 0), half("back with facing", 0))))
                .isEmpty();
        assertThat(asked(pattern(0, half("Front lining", 0), half("Back lining", 0))))
                .as("a lining by itself")
                .isEmpty();
    }

    /** Of several sizes one is asked about, and all are left out. */
    @Test
    void sizesAreAskedAboutOnce() {
        List<Piece> nest = new ArrayList<>();
        for (String size : List.of("10", "12")) {
            for (String name : List.of("Front", "Back", "Back facing")) {
                nest.add(half(name + " " + size, 0).toBuilder()
                        .size(Optional.of(size))
                        .build());
            }
        }
        Pattern sizes = pattern(0, nest.toArray(Piece[]::new)).withMates(List.of());
        assertThat(asked(sizes))
                .singleElement()
                .satisfies(f -> assertThat(f.values()).containsEntry("others", List.of("Front", "Back")));
        assertThat(asked(LevelEdits.leftOut(sizes, "Back facing 12", List.of("hip"))))
                .isEmpty();
    }

    private static Piece band() {
        List<Point> corners = List.of(new Point(0, 500), new Point(800, 500), new Point(800, 540), new Point(0, 540));
        return Piece.bare("Band", Outline.polygon(corners)).toBuilder()
                .edges(List.of(Edge.of("seam", EdgeRole.WAIST, corners.get(2), corners.get(3))))
                .levels(List.of(LevelMark.through("waist", new Point(400, 520))))
                .build();
    }

    private static Piece atWaist(String id) {
        return half(id, 0).withLevels(List.of(LevelMark.along("waist", "neck")));
    }

    @Test
    void aBandAndWhatItIsSewnOnAreAskedAbout() {
        Pattern skirt = pattern(0, atWaist("front"), atWaist("back"), band())
                .withLevels(List.of(Level.of("waist", LevelKind.WAIST)));
        List<Mate> mates = new ArrayList<>(skirt.mates());
        assertThat(asked(skirt)).as("sewn at the sides").isEmpty();
        mates.add(new Mate(
                "waistband",
                List.of(new EdgeRef("front", "neck", 2), new EdgeRef("back", "neck", 2)),
                List.of(EdgeRef.of("Band", "seam")),
                0));
        assertThat(asked(skirt.withMates(mates))).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("layer-above-counted");
            assertThat(f.piece()).isEqualTo("Band");
            assertThat(f.values()).containsEntry("others", List.of("front", "back"));
        });
        assertThat(asked(LevelEdits.leftOut(skirt.withMates(mates), "Band", List.of("waist"))))
                .isEmpty();
    }

    /** A yoke on the fold, drawn over the hip of the halves beside it, so that a level crosses it. */
    private static Piece yoke(String name, int times) {
        List<Point> corners = List.of(new Point(0, 0), new Point(200, 0), new Point(200, 120), new Point(0, 120));
        return Piece.bare(name, Outline.polygon(corners)).toBuilder()
                .cut(times, true)
                .edges(List.of(
                        Edge.of("seam", EdgeRole.SEAM, corners.get(2), corners.get(3)),
                        Edge.of("fold", EdgeRole.FOLD, corners.get(3), corners.get(0))))
                .levels(List.of(LevelMark.through("bust", new Point(100, 60))))
                .build();
    }

    private static Piece below(String id) {
        return half(id, 0).withLevels(List.of());
    }

    private static Mate sewn(String name, EdgeRef one, EdgeRef other) {
        return new Mate(name, List.of(one), List.of(other), 0);
    }

    private static Pattern yoked(Piece yoke, Mate... seams) {
        Piece front = half("front", 0).withLevels(List.of(LevelMark.through("bust", new Point(100, 200))));
        return pattern(0, front, below("back"), below("lower"), yoke)
                .withLevels(List.of(Level.of("bust", LevelKind.BUST)))
                .withMates(List.of(seams));
    }

    /** Sewn to a back that is cut once on the fold, as each of its layers is. */
    @Test
    void aYokeThatIsCutTwiceForOnePlaceIsAskedAboutOnceAndCountsOnce() {
        Mate seam = sewn("yoke seam", EdgeRef.of("back", "neck"), EdgeRef.of("yoke", "seam"));
        Pattern twice = yoked(yoke("yoke", 2), seam);
        assertThat(asked(twice)).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("layer-on-itself");
            assertThat(f.piece()).isEqualTo("yoke");
            assertThat(f.values()).containsOnly(Map.entry("levels", List.of("bust")));
        });
        Pattern once = PieceEdits.layers(twice, "yoke", 2);
        assertThat(asked(once)).isEmpty();
        assertThat(Measures.of(twice).girth("bust").orElseThrow().finished()).isEqualTo(400 + 800);
        assertThat(Measures.of(once).girth("bust").orElseThrow().finished()).isEqualTo(400 + 400);
        assertThat(once.piece("yoke").orElseThrow().times())
                .as("it is cut as often")
                .isEqualTo(2);

        assertThat(asked(yoked(yoke("yoke", 1), seam))).isEmpty();
        assertThat(asked(yoked(yoke("Yoke", 2))))
                .as("by its name, where no seam is marked")
                .hasSize(1);
        assertThat(asked(yoked(yoke("panel", 2)))).isEmpty();
    }

    /** A piece that is sewn to another one with each of its shapes is as often there as it counts. */
    @Test
    void aPieceThatIsSewnToSomethingElseWithEachShapeIsNotAskedAbout() {
        Mate back = sewn("back seam", EdgeRef.of("back", "neck"), EdgeRef.of("yoke", "seam"));
        Mate front = sewn("front seam", EdgeRef.of("lower", "neck"), EdgeRef.of("yoke", "seam"));
        assertThat(asked(yoked(yoke("yoke", 2), back, front))).isEmpty();
        Mate itself = sewn("centre", EdgeRef.of("yoke", "seam"), EdgeRef.of("yoke", "seam"));
        assertThat(asked(yoked(yoke("yoke", 2), itself))).isEmpty();
    }

    /** Of a pair that is marked as sewn to one side of a whole back only, nothing is known. */
    @Test
    void aPairIsNotTakenForLayers() {
        Piece pair = half("front", 40).toBuilder().cut(2, false).build();
        Piece back = half("back", 0).toBuilder().cut(1, false).build();
        Mate side = sewn("side", EdgeRef.of("front", "side"), EdgeRef.of("back", "side"));
        assertThat(asked(pattern(0, pair, back).withMates(List.of(side)))).isEmpty();
    }

    /** None of the samples is asked about. */
    @Test
    void aGarmentThatIsMarkedRightIsNotAskedAbout() throws Exception {
        for (Map.Entry<String, String> sample : Samples.files().entrySet()) {
            if (sample.getKey().endsWith(".svg")) {
                SvgFile file = SvgFile.read(sample.getValue().getBytes(StandardCharsets.UTF_8), sample.getKey());
                assertThat(asked(file.pattern())).as(sample.getKey()).isEmpty();
            }
        }
    }
}
