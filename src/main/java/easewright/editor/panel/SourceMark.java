package easewright.editor.panel;

import javafx.scene.control.Button;

/**
 * A number within a line of words that leads to its source. The line takes it for a word of its own height and width, and
 * so stands as far from the next line as any other; to be pressed it reaches beyond that on all sides.
 */
final class SourceMark extends Button {
    private final boolean flows;
    private double wide;
    private double high;

    /**
     * @param flows whether it stands in words that go on in the next line
     */
    SourceMark(boolean flows) {
        this.flows = flows;
        getStyleClass().addAll("flat", "source-mark");
        setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    }

    @Override
    public void resize(double width, double height) {
        wide = width;
        high = height;
        super.resize(Math.max(SourceList.TARGET, width), Math.max(SourceList.TARGET, height));
    }

    @Override
    public void relocate(double x, double y) {
        // A flow centres what it holds across its room and puts it to its head, a row the other way round.
        super.relocate(flows ? x : x - (getWidth() - wide) / 2, flows ? y - (getHeight() - high) / 2 : y);
    }
}
