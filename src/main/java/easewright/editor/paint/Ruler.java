package easewright.editor.paint;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** How wide words are. They are the same ones in frame after frame: what was measured lately is remembered. */
final class Ruler {
    private static final int REMEMBERED = 4096;

    private static final Map<Written, Double> WIDTHS = Collections.synchronizedMap(new Latest());

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

    /** What was asked for longest ago is forgotten first. */
    private static final class Latest extends LinkedHashMap<Written, Double> {
        private static final long serialVersionUID = 1;

        Latest() {
            super(256, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Written, Double> eldest) {
            return size() > REMEMBERED;
        }
    }
}
