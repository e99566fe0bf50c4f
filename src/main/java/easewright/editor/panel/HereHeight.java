package easewright.editor.panel;

/**
 * How high the place to say "this much, here" stands on its sheet, pixels: as high as what is said in it, and the page
 * above has the rest. While a seam is pulled it may grow and does not shrink, so that it does not go up and down.
 */
final class HereHeight {
    /** Its share of the sheet's height, at most; what finds no room then is scrolled. */
    private static final double SHARE = 0.6;

    /** With less of it nothing can be worked, however small the window. */
    private static final double LEAST = 220;

    private double most = LEAST;
    private boolean pulled;
    private double stands;

    /**
     * Takes its share of the height.
     *
     * @param sheet height of the sheet
     * @param page  what the page above and its tabs want of it at least
     */
    void share(double sheet, double page) {
        most = Math.max(LEAST, Math.min(SHARE * sheet, sheet - page));
    }

    /** Whether a seam is being pulled. */
    void pulled(boolean is) {
        pulled = is;
    }

    /**
     * The height it wants.
     *
     * @param content height of all that is said in it
     */
    double of(double content) {
        stands = pulled ? Math.max(stands, content) : content;
        return Math.min(most, stands);
    }
}
