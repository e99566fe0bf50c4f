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
    static final double GAP = EaseRowView.GAP;
    private static final double BELOW = 3;

    private final Labeled lead;
    private final Region rest;
    private final double least;
    private final boolean grows;

    /**
     * @param column how wide a name may be to stand before the rest, pixels
     */
    LeadLine(Labeled lead, Region rest, double column) {
        this(lead, rest, column, false);
    }

    /**
     * One that leaves to the name what the rest has no use for.
     *
     * @param least how wide a name may be at least, pixels
     */
    static LeadLine growing(Labeled lead, Region rest, double least) {
        return new LeadLine(lead, rest, least, true);
    }

    private LeadLine(Labeled lead, Region rest, double least, boolean grows) {
        this.lead = lead;
        this.rest = rest;
        this.least = least;
        this.grows = grows;
        lead.setWrapText(true);
        getChildren().setAll(lead, rest);
    }

    /** How wide a name may be where there is so much room for all. */
    private double column(double whole) {
        return grows ? Math.max(least, whole - GAP - rest.prefWidth(-1)) : least;
    }

    /** Whether the name is too long for its column. */
    private boolean isAbove(double column) {
        return lead.prefWidth(-1) > column;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return least + GAP + rest.minWidth(-1);
    }

    @Override
    protected double computePrefWidth(double height) {
        return least + GAP + rest.prefWidth(-1);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double whole = width < 0 ? prefWidth(-1) : width;
        double column = column(whole);
        double high = rest.prefHeight(whole - column - GAP);
        return isAbove(column) ? lead.prefHeight(whole) + BELOW + high : Math.max(high, lead.prefHeight(column));
    }

    @Override
    protected void layoutChildren() {
        double whole = getWidth();
        double column = column(whole);
        boolean above = isAbove(column);
        double left = column + GAP;
        double high = rest.prefHeight(whole - left);
        double leadHigh = above ? lead.prefHeight(whole) : Math.max(high, lead.prefHeight(column));
        double leadWide = above ? Math.min(whole, lead.prefWidth(-1)) : column;
        double top = above ? leadHigh + BELOW : (leadHigh - high) / 2;
        lead.resizeRelocate(0, 0, snapSizeX(leadWide), snapSizeY(leadHigh));
        rest.resizeRelocate(snapPositionX(left), snapPositionY(top), snapSizeX(whole - left), snapSizeY(high));
    }
}
