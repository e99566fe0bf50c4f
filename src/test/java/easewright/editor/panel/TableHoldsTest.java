package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Hold;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import java.util.List;
import org.junit.jupiter.api.Test;

class TableHoldsTest {
    private static final Hold FRONT = hold("front");
    private static final Hold BACK = hold("back");

    private final TableHolds holds = new TableHolds();

    private static Hold hold(String piece) {
        return new Hold(piece, EdgeRef.of(piece, "side"), Point.ORIGIN, new Point(1, 0), 2);
    }

    @Test
    void theAttentionStaysWithItsSeam() {
        holds.show(List.of(FRONT, BACK));
        assertThat(holds.pointed()).isEmpty();
        holds.point(1);
        holds.show(List.of(BACK));
        assertThat(holds.pointed()).contains(BACK);
        holds.show(List.of(FRONT, BACK));
        assertThat(holds.pointed()).contains(BACK);
    }

    @Test
    void theAttentionGoesToASeamThatTakesPart() {
        holds.show(List.of(FRONT, BACK));
        holds.point(0);
        holds.show(List.of(BACK));
        assertThat(holds.pointed()).contains(BACK);
        holds.point(0);
        holds.show(List.of());
        assertThat(holds.pointed()).isEmpty();
    }
}
