package easewright.draft;

/** The measurements do not allow this draft: some line would have to be longer or shorter than it can be. */
public final class DraftRefused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** @param what the line or measurement that cannot be drawn */
    public DraftRefused(String what) {
        super("These measurements do not give a " + what);
    }
}
