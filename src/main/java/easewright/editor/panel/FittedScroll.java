package easewright.editor.panel;

import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/**
 * Scrolls only where there is no room: asks for the height of all it holds. The bar has its own room at the right, so
 * that nothing becomes narrower when it comes.
 */
final class FittedScroll extends ScrollPane {
    /** At the right of what it holds: the bar, and a little between the two; pixels. */
    static final double GUTTER = 14;

    private final Region content;
    private final double least;
    private final MeasuredOnce measured = new MeasuredOnce();

    /**
     * @param least how much of it is to be seen in any case, or all where that is less; pixels
     */
    FittedScroll(Region content, double least) {
        super(content);
        this.content = content;
        this.least = least;
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        viewportBoundsProperty().addListener(o -> leaveRoom());
        leaveRoom();
        WholeLines.on(this, content);
    }

    private void leaveRoom() {
        double bar = getWidth() - getViewportBounds().getWidth();
        boolean seen = bar > 0 && bar < GUTTER;
        content.setPadding(new Insets(0, seen ? GUTTER - bar : GUTTER, 0, 0));
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        return Math.min(least, computePrefHeight(width));
    }

    @Override
    protected double computePrefHeight(double width) {
        return measured.at(width, this::measure);
    }

    @Override
    public void requestLayout() {
        MeasuredOnce.forget(measured);
        super.requestLayout();
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        MeasuredOnce.forget(measured);
    }

    private double measure(double width) {
        double around = snappedLeftInset() + snappedRightInset();
        double room = width - around - GUTTER + content.getPadding().getRight();
        return content.prefHeight(room > 0 ? room : -1) + snappedTopInset() + snappedBottomInset();
    }
}
