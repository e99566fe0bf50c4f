package easewright.alter;

/** Why a course of changes was not made anew. */
public final class StepRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final int step;
    private final Refusal why;

    StepRefused(int step, Refusal why) {
        super("step " + step + ": " + why.getMessage(), why);
        this.step = step;
        this.why = why;
    }

    /** Index in the course of the change that could not be made, or could not be taken back. */
    public int step() {
        return step;
    }

    public Refusal why() {
        return why;
    }
}
