package easewright.editor.panel;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.control.Skin;
import javafx.scene.text.Font;

/**
 * Words that go on in as many lines as they take. How high they come out at a width is asked several times whenever
 * anything on the page changes, and the toolkit breaks them into lines anew each time: here it is worked out once.
 */
final class WrappedLabel extends Label {
    private final Map<Double, Double> heights = new HashMap<>();
    /** What the heights are of. */
    private Kept kept;

    private record Kept(String words, Font font, Skin<?> skin) {
        boolean isOf(String now, Font in, Skin<?> by) {
            return words.equals(now) && font.equals(in) && skin == by;
        }
    }

    WrappedLabel(String words) {
        super(words);
        setWrapText(true);
    }

    /** Whatever changes how high it is asks for this. */
    @Override
    public void requestLayout() {
        if (heights != null) {
            heights.clear();
        }
        super.requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        if (kept == null || !kept.isOf(getText(), getFont(), getSkin())) {
            heights.clear();
            kept = new Kept(getText(), getFont(), getSkin());
        }
        Double known = heights.get(width);
        if (known == null) {
            known = super.computePrefHeight(width);
            heights.put(width, known);
        }
        return known;
    }
}
