package easewright.editor.panel;

import javafx.geometry.Orientation;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * A name with the things that are about it. A name that fits into its column stands before them in one line; a longer one
 * stands above them in as many lines as it takes, so that all of it can be read and the columns stay where they are.
 */
final class LeadLine extends Pane {
    private static final double GAP = EaseRowView.GAP;
    private static final double BELOW = 3;

    private final Labeled lead;
    private final Region rest;
    private final double column;

    /**
     * @param column how wide a name may be to stand before the rest, pixels
     */
    LeadLine(Labeled lead, Region rest, double column) {
        this.lead = lead;
        this.rest = rest;
        this.column = column;
        lead.setWrapText(true);
        getChildren().setAll(lead, rest);
    }

    /** Whether the name is too long for its column. */
    boolean isAbove() {
        return lead.prefWidth(-1) > column;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return column + GAP + rest.minWidth(-1);
    }

    @Override
    protected double computePrefWidth(double height) {
        return column + GAP + rest.prefWidth(-1);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double whole = width < 0 ? prefWidth(-1) : width;
        double high = rest.prefHeight(whole - column - GAP);
        return isAbove() ? lead.prefHeight(whole) + BELOW + high : Math.max(high, lead.prefHeight(column));
    }

    @Override
    protected void layoutChildren() {
        double whole = getWidth();
        double left = column + GAP;
        double high = rest.prefHeight(whole - left);
        double leadHigh = isAbove() ? lead.prefHeight(whole) : Math.max(high, lead.prefHeight(column));
        double leadWide = isAbove() ? Math.min(whole, lead.prefWidth(-1)) : column;
        double top = isAbove() ? leadHigh + BELOW : (leadHigh - high) / 2;
        lead.resizeRelocate(0, 0, snapSizeX(leadWide), snapSizeY(leadHigh));
        rest.resizeRelocate(snapPositionX(left), snapPositionY(top), snapSizeX(whole - left), snapSizeY(high));
    }
}
