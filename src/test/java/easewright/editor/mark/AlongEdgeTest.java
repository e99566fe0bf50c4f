package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Places on both sides of a piece are counted from its top, whichever way round its line goes. */
class AlongEdgeTest {
    private static final Words WORDS = Words.english(LengthUnit.CM);
    private static final Point A = new Point(0, 0);
    private static final Point B = new Point(200, 0);
    private static final Point C = new Point(220, 600);
    private static final Point D = new Point(0, 600);

    private static final Piece PIECE = Piece.bare("back", Outline.polygon(List.of(A, B, C, D))).toBuilder()
            .edges(List.of(
                    Edge.of("waist", EdgeRole.WAIST, A, B),
                    Edge.of("side", EdgeRole.SEAM, B, C),
                    Edge.of("hem", EdgeRole.HEM, C, D),
                    Edge.of("centre back", EdgeRole.CENTRE, D, A)))
            .notches(List.of(new Notch("one", new Point(0, 150))))
            .build();

    private static Edge edge(String name) {
        return PIECE.edge(name).orElseThrow();
    }

    @Test
    void anEdgeThatHangsIsCountedFromItsUpperEnd() {
        assertThat(AlongEdge.mm(PIECE, edge("centre back"), new Point(0, 150))).isCloseTo(150, within(1e-9));
        assertThat(AlongEdge.from(PIECE, edge("centre back"), WORDS)).isEqualTo("from waist");
        Point side = B.towards(C, 0.25);
        assertThat(AlongEdge.mm(PIECE, edge("side"), side)).isCloseTo(B.distance(side), within(1e-9));
        assertThat(AlongEdge.from(PIECE, edge("side"), WORDS)).isEqualTo("from waist");
    }

    @Test
    void oneThatLiesIsCountedFromItsStart() {
        assertThat(AlongEdge.mm(PIECE, edge("hem"), new Point(200, 600))).isCloseTo(20, within(1e-9));
        assertThat(AlongEdge.from(PIECE, edge("hem"), WORDS)).isEqualTo("from side");
    }

    @Test
    void whereNothingMeetsItTheEndIsNamed() {
        Piece alone = PIECE.toBuilder()
                .edges(List.of(edge("centre back"), edge("side")))
                .build();
        assertThat(AlongEdge.from(alone, edge("centre back"), WORDS)).isEqualTo("from its top");
        assertThat(AlongEdge.from(alone, edge("side"), WORDS)).isEqualTo("from its start");
    }

    /** What is typed is what is told. */
    @Test
    void aNotchIsPutWhereItIsTold() throws Exception {
        Pattern pattern = Bare.unmarked().withPieces(List.of(PIECE));
        Piece moved = MeasureEdits.notchAt(pattern, PIECE.id(), 0, 80).pieces().get(0);
        assertThat(moved.notches().get(0).at().distance(new Point(0, 80))).isLessThan(1e-9);
    }
}
