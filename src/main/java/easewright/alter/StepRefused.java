package easewright.alter;

import easewright.pattern.ChangeNote;

/** Why a course of changes was not made anew. */
public final class StepRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient ChangeNote note;
    private final Refusal why;

    StepRefused(ChangeNote note, Refusal why) {
        super(note.method() + ": " + why.getMessage(), why);
        this.note = note;
        this.why = why;
    }

    /** The change that could not be made, or not be taken back. */
    public ChangeNote note() {
        return note;
    }

    public Refusal why() {
        return why;
    }
}
