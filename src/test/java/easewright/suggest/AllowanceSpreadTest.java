package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.svg.SvgProblem;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** An allowance that is drawn uneven is told where edges are suggested. */
class AllowanceSpreadTest {
    /** As by hand: along the side the cutting line drifts from one distance to another; drawn by a closed form. */
    @Test
    void anAllowanceThatVariesAlongAnEdgeIsTold() throws SvgProblem {
        Random random = new Random(20261126);
        for (int i = 0; i < 30; i++) {
            double from = 8 + random.nextInt(20) / 4.0;
            double by = random.nextInt(17) / 4.0 * (random.nextBoolean() ? 1 : -1);
            double to = Math.max(6, from + by);
            // The side stands upright, so that its distance is measured across.
            List<Point> sewn =
                    List.of(new Point(100, 100), new Point(300, 100), new Point(300, 600), new Point(100, 600));
            List<Point> cut =
                    List.of(new Point(90, 90), new Point(300 + from, 90), new Point(300 + to, 610), new Point(90, 610));
            Suggestions suggestions = LineInsideTest.onSheet(
                    LineInsideTest.path("outer", cut) + LineInsideTest.path("inner", sewn)
                            + "<text x='200' y='400' font-size='14'>Skirt back<tspan x='200' dy='18'>cut 2</tspan></text>");
            Suggestion edges = LineInsideTest.edges(suggestions);
            // A corner tells nothing of the edge: up to 1.5 allowances from it nothing is looked at.
            double unseen = Math.abs(to - from) * 2 * 1.5 * Math.max(from, to) / 520;
            double spread = Math.abs(to - from);
            String told = "from %s to %s: %s".formatted(from, to, edges.reason());
            if (spread > 2 + unseen + 0.4) {
                assertThat(edges.reason().code()).as(told).isEqualTo("corners-allowance-varies");
                double least = (double) edges.reason().values().get("least");
                double most = (double) edges.reason().values().get("most");
                assertThat(least).as(told).isBetween(Math.min(from, to) - 0.2, Math.min(from, to) + unseen + 0.2);
                assertThat(most).as(told).isBetween(Math.max(from, to) - unseen - 0.2, Math.max(from, to) + 0.2);
            } else if (spread <= 2) {
                assertThat(edges.reason().code()).as(told).isEqualTo("corners");
            }
        }
    }
}
