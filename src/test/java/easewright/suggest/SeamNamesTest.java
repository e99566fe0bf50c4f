package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SeamNamesTest {
    private static final Pattern PIECES = Pattern.bare(
            List.of(piece("Yoke"), piece("Blouse back"), piece("Blouse front"), piece("Side"), piece("Skirt back")),
            new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE));

    private static Piece piece(String name) {
        return Piece.bare(name, Outline.polygon(List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9))));
    }

    private static Mate seam(String name, String one, String two) {
        return new Mate(name, List.of(EdgeRef.of(one, "a")), List.of(EdgeRef.of(two, "b")), 0);
    }

    private static List<String> names(Mate... mates) {
        return SeamNames.of(List.of(mates), PIECES);
    }

    @Test
    void oneAloneIsCalledAfterItsEdges() {
        assertThat(names(seam("yoke seam", "Yoke", "Blouse back"))).containsExactly("yoke seam");
        assertThat(SeamNames.stem(EdgeRef.of("Yoke", "yoke seam"), EdgeRef.of("Side", "yoke seam")))
                .isEqualTo("yoke seam");
        assertThat(SeamNames.stem(EdgeRef.of("Yoke", "seam"), EdgeRef.of("Side", "top")))
                .isEqualTo("seam and top");
    }

    @Test
    void thoseAlikeAreToldApartByTheirPieces() {
        assertThat(names(seam("yoke seam", "Yoke", "Blouse back"), seam("yoke seam", "Yoke", "Blouse front")))
                .containsExactly("yoke seam (back)", "yoke seam (front)");
        assertThat(names(seam("side seam", "Blouse front", "Side"), seam("side seam", "Blouse back", "Side")))
                .containsExactly("side seam (front)", "side seam (back)");
        assertThat(names(seam("side seam", "Blouse back", "Side"), seam("side seam", "Skirt back", "Yoke")))
                .containsExactly("side seam (Blouse back and Side)", "side seam (Skirt back and Yoke)");
    }

    @Test
    void onlyThoseOfTheSamePiecesAreNumbered() {
        assertThat(names(
                        seam("shoulder", "Blouse front", "Blouse back"),
                        seam("shoulder", "Blouse front", "Blouse back")))
                .containsExactly("shoulder", "shoulder 2");
    }

    @Test
    void aSeamThatIsThereKeepsItsName() {
        Pattern sewn = PIECES.withMates(List.of(seam("yoke seam", "Yoke", "Blouse front")));
        assertThat(SeamNames.of(seam("yoke seam", "Yoke", "Blouse back"), sewn)).isEqualTo("yoke seam (back)");
    }

    @Test
    void noSeamOfABlouseIsNumbered() throws Exception {
        String svg = Files.readString(Path.of("src/test/resources/bare/yoke-blouse.svg"));
        Pattern blouse = Suggestions.of(SuggestionsTest.sheet(svg), Set.of()).outcome();
        assertThat(blouse.mates())
                .extracting(Mate::name)
                .doesNotHaveDuplicates()
                .noneMatch(n -> n.matches(".* \\d"));
    }
}
