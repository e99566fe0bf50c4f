package easewright.editor.paint;

import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** How wide words are. They are the same ones in frame after frame: what was measured lately is remembered. */
final class Ruler {
    private static final int REMEMBERED = 4096;

    private static final Map<Written, Double> WIDTHS = Lately.asked(REMEMBERED);

    private Ruler() {}

    /** How wide words are on one line, pixels. */
    static double width(String words, Font font) {
        return WIDTHS.computeIfAbsent(new Written(words, font), w -> {
            Text text = new Text(w.words());
            text.setFont(w.font());
            return text.getLayoutBounds().getWidth();
        });
    }

    private record Written(String words, Font font) {}
}
