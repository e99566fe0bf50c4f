package easewright.editor.panel;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;

/** One line of words that unfolds what it tells of. Its arrow stands at its right end, whatever the words. */
final class FoldLine extends ToggleButton {
    FoldLine() {
        getStyleClass().addAll("flat", "how-line");
        setMaxWidth(Double.MAX_VALUE);
        setMnemonicParsing(false);
    }

    void unfolded(boolean open) {
        setSelected(open);
        setGraphic(Icons.of(open ? Icons.UNFOLD : Icons.FOLD));
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        Node arrow = getGraphic();
        if (arrow != null) {
            double right = getWidth() - snappedRightInset();
            arrow.setLayoutX(snapPositionX(right - arrow.getLayoutBounds().getMaxX()));
        }
    }
}
