package easewright.editor.panel;

/**
 * How high the place to say "this much, here" stands on its sheet, pixels: as high as what is said in it, and the page
 * above has the rest. While a change is tried it may grow and does not shrink, so that it does not go up and down.
 */
final class HereHeight {
    /** Its share of the sheet's height, at most; what finds no room then is scrolled. */
    private static final double SHARE = 0.6;

    /** With less of it nothing can be worked, however small the window. */
    private static final double LEAST = 220;

    private double most = LEAST;
    private boolean held;
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

    /** Whether a change is being tried. */
    void held(boolean is) {
        held = is;
    }

    /** Something was folded away or came back: it is as high as what there is now. */
    void letGo() {
        stands = 0;
    }

    /**
     * The height it wants.
     *
     * @param content height of all that is said in it
     */
    double of(double content) {
        stands = held ? Math.max(stands, content) : content;
        return Math.min(most, stands);
    }
}
