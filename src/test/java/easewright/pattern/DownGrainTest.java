package easewright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A piece hangs towards its hem, however it is laid on the page; without one, down the page. */
class DownGrainTest {
    private static final List<Point> CORNERS =
            List.of(new Point(0, 0), new Point(200, 0), new Point(220, 400), new Point(0, 400));

    private static Piece turned(double radians, boolean grainUp, boolean hem) {
        List<Point> corners = CORNERS.stream().map(p -> turned(p, radians)).toList();
        Point top = turned(new Point(100, 50), radians);
        Point low = turned(new Point(100, 350), radians);
        Piece piece = Piece.bare("p", Outline.polygon(corners)).toBuilder()
                .grain(grainUp ? new Grain(low, top) : new Grain(top, low))
                .build();
        return hem ? piece.withEdges(List.of(Edge.of("hem", EdgeRole.HEM, corners.get(2), corners.get(3)))) : piece;
    }

    private static Point turned(Point p, double radians) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        return new Point(cos * p.x() - sin * p.y(), sin * p.x() + cos * p.y());
    }

    @Test
    void aPieceHangsTowardsItsHem() {
        Random random = new Random(41);
        for (int i = 0; i < 50; i++) {
            double radians = 2 * Math.PI * random.nextDouble();
            Point towardsHem = turned(new Point(0, 1), radians);
            Piece piece = turned(radians, random.nextBoolean(), true);
            assertThat(piece.downGrain().distance(towardsHem)).isLessThan(1e-9);
        }
    }

    @Test
    void withoutAHemThePageShowsIt() {
        Random random = new Random(42);
        for (int i = 0; i < 50; i++) {
            double radians = 2 * Math.PI * random.nextDouble();
            Point down = turned(radians, random.nextBoolean(), false).downGrain();
            assertThat(Math.abs(down.y()) > 0.1 ? down.y() : down.x()).isPositive();
        }
        assertThat(turned(Math.PI, false, false).downGrain().y()).isPositive();
        assertThat(turned(Math.PI, false, true).downGrain().y()).isNegative();
    }

    /** The hem of a sleeve that is cut across lies beside its middle. */
    @Test
    void aHemBesideTheMiddleSaysNothing() {
        Piece across = turned(0, true, false).toBuilder()
                .grain(new Grain(new Point(200, 200), new Point(50, 200)))
                .edges(List.of(Edge.of("hem", EdgeRole.HEM, CORNERS.get(2), CORNERS.get(3))))
                .build();
        assertThat(across.downGrain()).isEqualTo(new Point(1, 0));
    }
}
