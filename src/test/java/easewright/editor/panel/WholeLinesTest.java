package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever the spacing, no line is cut, and no more is left out than the lines that would be. */
class WholeLinesTest {
    private static final double LINE = 64;

    /** Rows of lines, some with others beside them at another height. */
    private static List<double[]> page(Random random) {
        List<double[]> lines = new ArrayList<>();
        double at = 0;
        while (at < 1200) {
            double high = 8 + random.nextDouble() * 40;
            lines.add(new double[] {at, at + high});
            if (random.nextInt(3) == 0) {
                double off = random.nextDouble() * 8;
                lines.add(new double[] {at + off, at + off + 8 + random.nextDouble() * 12});
            }
            at += high + random.nextDouble() * 12;
        }
        return lines;
    }

    @Test
    void noLineIsCutAndLittleIsLeftOut() {
        Random random = new Random(20);
        for (int i = 0; i < 2000; i++) {
            List<double[]> lines = page(random);
            double top = 100 + random.nextDouble() * 400;
            double bottom = top + 200 + random.nextDouble() * 300;
            double from = WholeLines.first(lines, top);
            double to = WholeLines.last(lines, bottom);
            assertThat(from).isBetween(top, top + 2 * LINE);
            assertThat(to).isBetween(bottom - 2 * LINE, bottom);
            for (double[] line : lines) {
                assertThat(cut(line, from) || cut(line, to)).isFalse();
            }
            if (lines.stream().noneMatch(line -> cut(line, top))) {
                assertThat(from).isEqualTo(top);
            }
        }
    }

    private static boolean cut(double[] line, double edge) {
        return line[0] < edge - 0.5 && line[1] > edge + 0.5;
    }
}
