package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseTables;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PiecesApartTest {
    private static Piece piece(String id, double left, double right) {
        return Piece.bare(
                id,
                Outline.polygon(
                        List.of(new Point(left, 0), new Point(right, 0), new Point(right, 300), new Point(left, 300))));
    }

    private static Pattern sheet(Piece... pieces) {
        return Pattern.bare(List.of(pieces), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE));
    }

    private static List<Finding> told(Pattern before, Pattern after) {
        return Checks.compare(before, Measures.of(before), after, Measures.of(after), EaseTables.standard()).stream()
                .filter(f -> f.code().equals("piece-over-piece"))
                .toList();
    }

    @Test
    void aPieceThatGrewOverItsNeighbourIsToldOnce() {
        List<Finding> told = told(
                sheet(piece("back", 0, 200), piece("front", 220, 400)),
                sheet(piece("back", 0, 230), piece("front", 205, 400)));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).piece()).isEqualTo("back");
        assertThat(told.get(0).values()).containsEntry("other", "front");
    }

    @Test
    void growingUpToTheNeighbourIsNotTold() {
        assertThat(told(
                        sheet(piece("back", 0, 200), piece("front", 220, 400)),
                        sheet(piece("back", 0, 220), piece("front", 220, 400))))
                .isEmpty();
    }

    @Test
    void sizesDrawnOverEachOtherAreLeftInPeace() {
        assertThat(told(
                        sheet(piece("front 12", 0, 200), piece("front 14", 0, 210)),
                        sheet(piece("front 12", 0, 204), piece("front 14", 0, 210))))
                .isEmpty();
    }

    @Test
    void aPieceMayGrowOverOneOfAnotherSizeAndNotOverOneOfItsOwnOrOfNone() {
        Pattern before = sheet(
                sized("back", 0, 200, "12"),
                sized("front", 220, 400, "14"),
                sized("sleeve", 225, 400, "12"),
                piece("pocket", 228, 300));
        Pattern after = before.withPiece(sized("back", 0, 230, "12"));
        assertThat(told(before, after)).extracting(f -> f.values().get("other")).containsExactly("sleeve", "pocket");
    }

    private static Piece sized(String id, double left, double right, String size) {
        return piece(id, left, right).toBuilder().size(Optional.of(size)).build();
    }
}
