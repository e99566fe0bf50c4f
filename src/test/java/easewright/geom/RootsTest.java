package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RootsTest {
    private static void assertRoots(List<Double> found, double... expected) {
        assertThat(found).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found.get(i)).isCloseTo(expected[i], within(1e-12));
        }
    }

    @Test
    void quadraticsStrictlyInside() {
        assertRoots(Roots.unitQuadratic(1, -1, 0.21), 0.3, 0.7);
        assertRoots(Roots.unitQuadratic(-1, 1, -0.21), 0.3, 0.7);
        assertRoots(Roots.unitQuadratic(1, 1, -0.24), 0.2);
        assertRoots(Roots.unitQuadratic(1, -2.5, 1), 0.5);
        assertRoots(Roots.unitQuadratic(1, -1, 0.25), 0.5);
        assertRoots(Roots.unitQuadratic(1, -1, 0.26));
        assertRoots(Roots.unitQuadratic(1, -0.5, 0), 0.5);
        assertRoots(Roots.unitQuadratic(1, -1.5, 0.5), 0.5);
        assertRoots(Roots.unitQuadratic(1, 0, -0.25), 0.5);
        assertRoots(Roots.unitQuadratic(1, 0, 0));
        assertRoots(Roots.unitQuadratic(1, 3, 2));
        assertRoots(Roots.unitQuadratic(1, -5, 6));
    }

    @Test
    void quadraticsThatAreStraight() {
        assertRoots(Roots.unitQuadratic(0, 4, -1), 0.25);
        assertRoots(Roots.unitQuadratic(0, 4, 1));
        assertRoots(Roots.unitQuadratic(0, 0, 1));
        assertRoots(Roots.unitQuadratic(0, 0, 0));
        assertRoots(Roots.unitQuadratic(1e-15, 4, -1), 0.25);
        assertRoots(Roots.unitQuadratic(1e-12, 4e-12, -1e-12), Math.sqrt(5) - 2);
    }

    @Test
    void cubicsEndsIncluded() {
        assertRoots(Roots.unitBernsteinCubic(0, 1, 1, 1), 0);
        assertRoots(Roots.unitBernsteinCubic(1, 1, 1, 0), 1);
        assertRoots(Roots.unitBernsteinCubic(0, 1, 1, 0), 0, 1);
        assertRoots(Roots.unitBernsteinCubic(0, -1, -1, 0), 0, 1);
        assertRoots(Roots.unitBernsteinCubic(-1, -1, -1, 0), 1);
        assertRoots(Roots.unitBernsteinCubic(0, 0, 0, 1), 0);
        assertRoots(Roots.unitBernsteinCubic(1, 0, 0, 0), 1);
        assertRoots(Roots.unitBernsteinCubic(0, 0, 0, 0));
        assertRoots(Roots.unitBernsteinCubic(1, 2, 3, 4));
        assertRoots(Roots.unitBernsteinCubic(-1, -2, -3, -4));
        assertRoots(Roots.unitBernsteinCubic(1, -0.1, -0.1, 1));
        // 1 − 3(1 + q)t(1 − t) for q = 0.5 vanishes at t = ½ ± √(¼ − 2/9).
        assertRoots(Roots.unitBernsteinCubic(1, -0.5, -0.5, 1), 1 / 3.0, 2 / 3.0);
    }

    @Test
    void threeRootsComeInOrder() {
        double[] roots = {0.15, 0.5, 0.92};
        double[] b = bernstein(roots);
        assertRoots(Roots.unitBernsteinCubic(b[0], b[1], b[2], b[3]), roots);
    }

    /** (t − a)(t − b)(t − c) in Bernstein form. */
    private static double[] bernstein(double... r) {
        double c0 = -r[0] * r[1] * r[2];
        double c1 = r[0] * r[1] + r[0] * r[2] + r[1] * r[2];
        double c2 = -(r[0] + r[1] + r[2]);
        return new double[] {c0, c0 + c1 / 3, c0 + 2 * c1 / 3 + c2 / 3, c0 + c1 + c2 + 1};
    }

    @Test
    void rootsOfRandomCubicsAreThoseItWasMadeOf() {
        Random random = new Random(20);
        for (int i = 0; i < 2000; i++) {
            double[] made = {random.nextDouble() * 3 - 1, random.nextDouble() * 3 - 1, random.nextDouble() * 3 - 1};
            List<Double> inside = new ArrayList<>();
            for (double r : made) {
                if (r > 0 && r < 1) {
                    inside.add(r);
                }
            }
            inside.sort(null);
            boolean close = false;
            for (int k = 0; k + 1 < inside.size(); k++) {
                close |= inside.get(k + 1) - inside.get(k) < 0.01;
            }
            if (!close) {
                double[] b = bernstein(made);
                List<Double> found = Roots.unitBernsteinCubic(b[0], b[1], b[2], b[3]);
                assertThat(found).as("case %d", i).hasSameSizeAs(inside);
                for (int k = 0; k < inside.size(); k++) {
                    assertThat(found.get(k)).as("case %d", i).isCloseTo(inside.get(k), within(1e-9));
                }
                assertThat(Roots.signChanges(b[0], b[1], b[2], b[3], true))
                        .as("case %d", i)
                        .hasSameSizeAs(inside);
            }
        }
    }

    @Test
    void signsChangeAtEndsAsZeroIsCounted() {
        assertRoots(Roots.signChanges(0, 1, 1, 1, true));
        assertRoots(Roots.signChanges(0, 1, 1, 1, false), 0);
        assertRoots(Roots.signChanges(0, -1, -1, -1, true), 0);
        assertRoots(Roots.signChanges(0, -1, -1, -1, false));
        assertRoots(Roots.signChanges(1, 1, 1, 0, false), 1);
        assertRoots(Roots.signChanges(1, 1, 1, 0, true));
        assertRoots(Roots.signChanges(-1, -1, -1, 0, true), 1);
        assertRoots(Roots.signChanges(-1, 1, 1, 1, true), 1 - Math.cbrt(0.5));
        assertRoots(Roots.signChanges(1, 1, 1, -1, true), Math.cbrt(0.5));
        assertRoots(Roots.signChanges(1, 1, -1, 1, true));
    }
}
