package easewright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the same piece is in all sizes. */
class PieceKindTest {
    private static final Outline SQUARE =
            Outline.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)));

    private static Piece piece(String name, String size, Side side) {
        return Piece.bare(name, SQUARE).toBuilder()
                .size(Optional.of(size).filter(s -> !s.isEmpty()))
                .side(side)
                .build();
    }

    @Test
    void sizeAndCapitalsMakeNoOtherPieceButTheSideDoes() {
        PieceKind front = piece("Front 38", "38", Side.BOTH).kind();
        assertThat(piece("front 40", "40", Side.BOTH).kind()).isEqualTo(front);
        assertThat(piece("42 FRONT", "42", Side.BOTH).kind()).isEqualTo(front);
        assertThat(piece("Front 38 left", "38", Side.LEFT).kind()).isNotEqualTo(front);
        assertThat(piece("Front 38 left", "38", Side.LEFT).kind())
                .isEqualTo(piece("front 40 left", "40", Side.LEFT).kind());
        assertThat(piece("Back 38", "38", Side.BOTH).kind()).isNotEqualTo(front);
    }

    @Test
    void inSizesThoseOfAKindStandTogetherUnlessOneSizeHasTwo() {
        List<Piece> pieces = List.of(
                piece("Front 38", "38", Side.BOTH),
                piece("Flap 38", "38", Side.BOTH),
                piece("flap 38", "38", Side.BOTH),
                piece("front 40", "40", Side.BOTH),
                piece("Flap 40", "40", Side.BOTH),
                piece("Tie", "", Side.BOTH));
        assertThat(PieceKind.inSizes(Pattern.bare(pieces, new Scale(1, 1, Scale.Proof.UNPROVED)))
                        .values())
                .containsExactly(List.of(pieces.get(0), pieces.get(3)));
    }
}
