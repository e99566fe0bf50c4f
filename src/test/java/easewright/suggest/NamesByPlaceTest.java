package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Edge;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Edges of which nothing else is known are called by where they lie on their piece. */
class NamesByPlaceTest {
    private static Set<String> edges(String outline) throws Exception {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='300mm' viewBox='0 0 300 300'>"
                + "<path id='Pocket' d='" + outline + "' fill='none' stroke='black'/>"
                + "<text x='60' y='60' font-size='8'>Pocket</text>"
                + "<path d='M 90,40 V 120' stroke='black'/></svg>";
        return Set.copyOf(Suggestions.of(SuggestionsTest.sheet(svg), Set.of()).outcome().pieces().stream()
                .filter(p -> p.name().equals("Pocket"))
                .flatMap(p -> p.edges().stream())
                .map(Edge::name)
                .toList());
    }

    @Test
    void aPocketWithCornersHasATopABottomAndTwoSides() throws Exception {
        assertThat(edges("M 20,20 H 160 V 180 H 20 Z"))
                .containsExactlyInAnyOrder("top", "right side", "bottom", "left side");
    }

    @Test
    void whatGoesRoundAPocketIsOneEdge() throws Exception {
        assertThat(edges("M 20,20 H 160 V 140 C 160,162 142,180 120,180 H 60 C 38,180 20,162 20,140 Z"))
                .containsExactlyInAnyOrder("top", "sides and bottom");
    }

    @Test
    void aPointedPocketHasTwoEdgesAtTheBottom() throws Exception {
        assertThat(edges("M 20,20 H 160 V 140 L 90,180 L 20,140 Z"))
                .contains("top")
                .noneMatch(name -> name.startsWith("seam"));
    }
}
