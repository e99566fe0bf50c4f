package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

class WrappedLabelTest {
    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** Whatever of it changes in between. */
    @Test
    void itIsAsHighAsALabelOfTheSameWords() throws Exception {
        int differing = WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
            Random random = new Random(8);
            Label kept = new WrappedLabel("");
            Label plain = new Label("");
            plain.setWrapText(true);
            new Scene(new VBox(kept, plain)).getRoot().applyCss();
            int heights = 0;
            double last = 0;
            for (int i = 0; i < 300; i++) {
                change(random.nextInt(5), random, kept, plain);
                double width = random.nextInt(6) == 0 ? -1 : 60 + 40 * random.nextInt(5);
                double high = kept.prefHeight(width);
                assertThat(high).isEqualTo(plain.prefHeight(width));
                assertThat(kept.prefWidth(-1)).isEqualTo(plain.prefWidth(-1));
                heights += high == last ? 0 : 1;
                last = high;
            }
            return heights;
        });
        assertThat(differing).isGreaterThan(80);
    }

    private static void change(int what, Random random, Label... labels) {
        int much = 1 + random.nextInt(12);
        for (Label label : labels) {
            switch (what) {
                case 0 -> label.setText("seam and hem ".repeat(much));
                case 1 -> label.setFont(Font.font(9 + much));
                case 2 -> label.setPadding(new Insets(much));
                case 3 -> label.setLineSpacing(much);
                default -> label.getParent().layout();
            }
        }
    }
}
