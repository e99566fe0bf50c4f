package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.mark.LevelEdits;
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
