package easewright.editor.panel;

import java.util.function.DoubleUnaryOperator;

/** How high the place to say "this much, here" stands on its sheet, pixels; nothing that is tried changes it. */
final class HereHeight {
    /** Its share of the sheet's height, at most so much; and beside a page that is read. */
    private static final double SHARE = 0.5;

    private static final double MOST = 460;
    private static final double FOLDED = 252;

    private double sheet;
    private DoubleUnaryOperator spare = left -> 0;

    /**
     * Takes its share of the height.
     *
     * @param height of the sheet
     * @param left   what of a height the page above can do without
     */
    void share(double height, DoubleUnaryOperator left) {
        sheet = height;
        spare = left;
    }

    /**
     * The height it wants.
     *
     * @param also  how much is shown at its head in some cases only
     * @param folds whether it makes room for what is read
     */
    double of(double also, boolean folds) {
        double folded = FOLDED + also;
        if (folds) {
            return folded;
        }
        double share = Math.max(folded, Math.min(MOST, SHARE * sheet));
        return share + spare.applyAsDouble(sheet - share);
    }
}
