package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pieces without a level that the piece called alike of another size has. */
class LevelGapTest {
    private static final Outline SQUARE =
            Outline.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)));

    private static Piece piece(String id, String name, String size, boolean atHip) {
        return Piece.bare(id, SQUARE).toBuilder()
                .name(name)
                .size(Optional.of(size))
                .levels(atHip ? List.of(LevelMark.through("hip", new Point(50, 50))) : List.of())
                .build();
    }

    private static List<String> lacking(Piece... pieces) {
        Pattern pattern = Pattern.bare(List.of(pieces), new Scale(1, 1, Scale.Proof.UNPROVED))
                .withLevels(List.of(Level.of("hip", LevelKind.HIP)));
        return LevelGap.of(pattern, Measures.of(pattern)).stream()
                .map(LevelGap::lacks)
                .toList();
    }

    @Test
    void anotherSizeTellsWhateverTheCapitals() {
        assertThat(lacking(
                        piece("a", "Front 38", "38", true),
                        piece("b", "Back 38", "38", true),
                        piece("c", "Front 40", "40", true),
                        piece("d", "back 40", "40", false)))
                .containsExactly("d");
    }

    /** Nobody knows which of two is meant, and of the same size neither tells anything of the other. */
    @Test
    void ofTwoPiecesCalledAlikeInOneSizeNothingIsTold() {
        assertThat(lacking(
                        piece("a", "Front 38", "38", true),
                        piece("b", "Flap 38", "38", true),
                        piece("c", "Flap 38", "38", false),
                        piece("d", "Front 40", "40", true),
                        piece("e", "Flap 40", "40", false)))
                .isEmpty();
    }
}
