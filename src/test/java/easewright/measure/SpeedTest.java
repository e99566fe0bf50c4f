package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Measuring a 5,000-segment outline must stay far below a display frame; bounds are loose for busy machines. */
class SpeedTest {
    private static final List<Level> LEVELS =
            List.of(Level.of("hip", LevelKind.HIP), Level.of("waist", LevelKind.WAIST));

    private static Piece piece(int segments) {
        Outline blob = Sketch.randomBlob(new Random(8), segments, 400);
        Point a = blob.segments().get(0).start();
        Point b = blob.segments().get(segments / 3).start();
        return Piece.bare("p", blob)
                .withEdges(List.of(Edge.of("a", EdgeRole.SEAM, a, b), Edge.of("b", EdgeRole.SEAM, b, a)))
                .withLevels(List.of(
                        LevelMark.through("hip", new Point(3, 40)), LevelMark.through("waist", new Point(3, -90))));
    }

    private static double bestMillis(Runnable work) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 25; i++) {
            long start = System.nanoTime();
            work.run();
            best = Math.min(best, (System.nanoTime() - start) / 1e6);
        }
        return best;
    }

    @Test
    void fiveThousandSegmentsTakeMilliseconds() {
        Piece large = piece(5000);
        double measured = bestMillis(() -> Measures.of(large, LEVELS));
        assertThat(measured).as("%.2f ms", measured).isLessThan(20);
    }

    @Test
    void costGrowsLinearly() {
        Piece small = piece(500);
        Piece large = piece(5000);
        double one = bestMillis(() -> Measures.of(small, LEVELS));
        double ten = bestMillis(() -> Measures.of(large, LEVELS));
        assertThat(ten).as("500: %.3f ms, 5000: %.3f ms", one, ten).isLessThan(30 * one + 1);
    }

    @Test
    void allowanceOnFiveThousandSegments() {
        Piece cut = piece(5000).toBuilder().drawn(LineKind.CUTTING, 15).build();
        double measured = bestMillis(() -> Measures.of(cut, LEVELS));
        assertThat(measured).as("%.2f ms", measured).isLessThan(300);
    }
}
