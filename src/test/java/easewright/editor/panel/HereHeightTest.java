package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class HereHeightTest {
    private static HereHeight of(double sheet, double page) {
        HereHeight height = new HereHeight();
        height.share(sheet, page);
        return height;
    }

    @Test
    void itIsAsHighAsWhatItHoldsAndLeavesThePageItsShare() {
        HereHeight height = of(750, 230);
        assertThat(height.of(160)).isEqualTo(160);
        assertThat(height.of(300)).isEqualTo(300);
        assertThat(height.of(160)).isEqualTo(160);
        assertThat(height.of(700)).isEqualTo(450);
        assertThat(of(400, 230).of(700)).as("in a low window").isEqualTo(220);
    }

    /** Seeded random heights, as they come while a seam is pulled. */
    @Test
    void whileASeamIsPulledItNeverShrinks() {
        HereHeight height = of(1000, 230);
        height.held(true);
        Random random = new Random(7);
        double before = 0;
        for (int i = 0; i < 200; i++) {
            double now = height.of(250 + random.nextInt(120));
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isGreaterThan(340);
        height.held(false);
        assertThat(height.of(251)).as("let go").isEqualTo(251);
    }
}
