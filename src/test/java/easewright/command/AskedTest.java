package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One change asked for in several sizes. */
class AskedTest {
    private static final Outline SQUARE =
            Outline.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)));

    private static Piece front(String named, Optional<String> size) {
        return Piece.bare("front-" + named, SQUARE).toBuilder()
                .name("Front " + named)
                .size(size)
                .build();
    }

    /** A star stands for the size in the names, whether or not that size is marked on the piece. */
    @Test
    void eachIsCalledByItsOwnSizeWhereOnlySomeAreMarked() throws Exception {
        for (int marked = 0; marked < 8; marked++) {
            List<String> sizes = List.of("38", "40", "42");
            int bits = marked;
            Pattern pattern = Pattern.bare(
                    sizes.stream()
                            .map(s -> front(s, Optional.of(s).filter(o -> (bits >> sizes.indexOf(o) & 1) == 1)))
                            .toList(),
                    new Scale(1, 1, Scale.Proof.UNPROVED));
            List<Asked> all = Asked.by("edge-length")
                    .with("edge", List.of("Front */side"))
                    .eachSize(pattern);
            assertThat(all)
                    .as("marked " + bits)
                    .extracting(a -> a.called().orElseThrow())
                    .isEqualTo(sizes);
            assertThat(all)
                    .extracting(a -> a.texts().get("edge").get(0))
                    .containsExactly("Front 38/side", "Front 40/side", "Front 42/side");
        }
    }
}
