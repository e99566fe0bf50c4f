package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pieces that lie on each other are said, of a change only those that it laid there. */
class PiecesOnOthersTest extends HalfOfSkirt {
    /** Sizes that are not called so would be added up in one girth. */
    @Test
    void piecesThatLieOnEachOtherAreSaid() {
        Piece small = half("front", 0).toBuilder().id("small").name("Front").build();
        Piece large =
                half("shape-4", List.of(new Point(0, -5), new Point(210, -5), new Point(210, 405), new Point(0, 405)));
        Piece beside =
                half("beside", List.of(new Point(300, 0), new Point(500, 0), new Point(500, 400), new Point(300, 400)));
        Piece facing =
                half("facing", List.of(new Point(0, 0), new Point(60, 0), new Point(60, 400), new Point(0, 400)));
        assertThat(codes(pattern(0, small).withPieces(List.of(small, beside, facing))))
                .doesNotContain("pieces-on-each-other");
        Pattern nest = pattern(0, small).withPieces(List.of(small, large, beside));
        assertThat(Checks.of(nest, Measures.of(nest), TABLES))
                .filteredOn(f -> f.code().equals("pieces-on-each-other"))
                .extracting(f -> f.values().get("pieces"))
                .containsExactly(List.of("Front", "shape-4"));
        assertThat(codes(nest.withPieces(List.of(small, large.withName("Back"), beside))))
                .as("drafted on each other")
                .doesNotContain("pieces-on-each-other");
        Pattern sized = nest.withPieces(List.of(
                small.toBuilder().size(Optional.of("36")).build(),
                large.toBuilder().size(Optional.of("38")).build(),
                beside));
        assertThat(codes(sized)).doesNotContain("pieces-on-each-other");
    }

    /** While something is pulled, only pairs with the piece that moves are looked at, and what was said stays said. */
    @Test
    void aChangeTellsOnlyOfPiecesThatItLaysOnOthers() {
        List<Piece> stacks = new ArrayList<>();
        for (int stack = 0; stack < 2; stack++) {
            for (int i = 0; i < 3; i++) {
                double x = 300 * stack;
                stacks.add(half(
                        "shape-" + (3 * stack + i),
                        List.of(
                                new Point(x, -i),
                                new Point(x + 200 + 2 * i, -i),
                                new Point(x + 200 + 2 * i, 400),
                                new Point(x, 400))));
            }
        }
        Piece alone =
                half("alone", List.of(new Point(700, 0), new Point(900, 0), new Point(900, 400), new Point(700, 400)));
        Piece there =
                half("shape-9", List.of(new Point(0, 0), new Point(210, 0), new Point(210, 400), new Point(0, 400)));
        Pattern beside = pattern(0, alone).withPieces(List.of(alone, half("shape-8", 0)));
        Pattern on = beside.withPieces(
                List.of(there.toBuilder().id("alone").build(), beside.pieces().get(1)));
        assertThat(codes(beside, on)).contains("pieces-on-each-other");
        stacks.add(alone);
        Pattern nest = beside.withPieces(stacks);
        assertThat(codes(nest)).contains("pieces-on-each-other");
        for (int i = 0; i < stacks.size(); i++) {
            List<Piece> pulled = new ArrayList<>(stacks);
            pulled.set(i, stacks.get(i).toBuilder().drawn(LineKind.CUTTING, 10).build());
            assertThat(codes(nest, nest.withPieces(pulled)))
                    .as(stacks.get(i).id())
                    .doesNotContain("pieces-on-each-other");
        }
        // It leaves its stack: there is less to say, nothing new.
        List<Piece> left = new ArrayList<>(stacks);
        left.set(5, alone.toBuilder().id("shape-5").build());
        left.remove(6);
        assertThat(codes(nest, nest.withPieces(left))).doesNotContain("pieces-on-each-other");
    }
}
