package easewright.alter;

import static easewright.alter.Panels.panel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TruedRunTest {
    private static Piece darted(double... middles) {
        List<Dart> darts = Arrays.stream(middles)
                .mapToObj(x -> Panels.dart(new Point(x - 8, 0), new Point(x + 8, 0), new Point(x, 90)))
                .toList();
        return panel("front", 600).toBuilder().darts(darts).build();
    }

    /** The waist of 200 mm but for the mouths of its darts, and the hem; sides and folds are not drawn anew. */
    @Test
    void dartsPartTheWaistAndNothingElse() {
        Piece piece = darted(60, 140);
        List<TruedRun> runs = TruedRun.all(piece, piece);
        assertThat(runs).extracting(TruedRun::edge).containsExactly(0, 0, 0, 2);
        assertThat(runs).extracting(TruedRun::number).containsExactly(0, 1, 2, 0);
        assertThat(runs.stream().mapToDouble(r -> r.is().length()).toArray())
                .containsExactly(new double[] {52, 64, 52, 200}, within(1e-6));
        assertThat(runs).noneMatch(TruedRun::isTouched);
    }

    /** Where a dart has come or gone, no stretch is the same as one before. */
    @Test
    void anEdgeThatIsPartedOtherwiseHasNone() {
        assertThat(TruedRun.of(darted(60, 140), darted(100), 0)).isEmpty();
    }

    @Test
    void aStretchThatMovedIsTouched() {
        Piece was = panel("front", 600);
        List<TruedRun> runs = TruedRun.all(was, Panels.slanted("front", 600, 89, 90));
        assertThat(runs).hasSize(2);
        assertThat(runs.get(0).isTouched()).as("waist").isTrue();
        assertThat(runs.get(1).isTouched()).as("hem").isFalse();
    }
}
