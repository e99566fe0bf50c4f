package easewright.editor.panel;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * Parts one below the other that remember how high they are: where words wrap the toolkit works that out anew, down to
 * the last word, whenever anything on the same page changes.
 */
class MeasuredBox extends VBox {
    private final MeasuredOnce whole = new MeasuredOnce();
    private final MeasuredOnce least = new MeasuredOnce();

    MeasuredBox(Node... parts) {
        super(parts);
    }

    MeasuredBox(double gap, Node... parts) {
        super(gap, parts);
    }

    @Override
    protected double computePrefHeight(double width) {
        return whole.at(width, super::computePrefHeight);
    }

    @Override
    protected double computeMinHeight(double width) {
        return least.at(width, super::computeMinHeight);
    }

    @Override
    public void requestLayout() {
        MeasuredOnce.forget(whole, least);
        super.requestLayout();
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        MeasuredOnce.forget(whole, least);
    }
}
