package easewright.editor.panel;

/**
 * How high the place to say "this much, here" stands on its sheet, pixels: as high as what is said in it, and the page
 * above has the rest. While something is tried it may grow and does not shrink, so that a seam that is pulled does not
 * make it go up and down.
 */
final class HereHeight {
    /** Its share of the sheet's height, at most; what finds no room then is scrolled. */
    private static final double SHARE = 0.6;

    /** With less of it nothing can be worked, however small the window. */
    private static final double LEAST = 220;

    private double most = LEAST;
    private Object about = "";
    private boolean tried;
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

    /**
     * What stands in it now.
     *
     * @param state is tried the same as long as this is equal
     */
    void follow(boolean isTried, Object state) {
        if (!isTried || !state.equals(about)) {
            stands = 0;
        }
        tried = isTried;
        about = state;
    }

    /**
     * The height it wants.
     *
     * @param content height of all that is said in it
     */
    double of(double content) {
        stands = tried ? Math.max(stands, content) : content;
        return Math.min(most, stands);
    }
}
