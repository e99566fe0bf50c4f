package easewright.alter;

import easewright.pattern.ChangeNote;

/** Makes alterations of their records. */
public final class Alterations {
    private Alterations() {}

    /**
     * The alteration whose {@link Alteration#note()} equals the given one.
     *
     * @throws Refusal if the method is unknown, or a setting is missing or unreadable
     */
    public static Alteration from(ChangeNote note) throws Refusal {
        switch (note.method()) {
            case SeamChange.METHOD:
                return SeamChange.from(note);
            case CentreChange.METHOD:
                return CentreChange.from(note);
            case HingedSlash.METHOD:
                return HingedSlash.from(note);
            case ParallelSlash.METHOD:
                return ParallelSlash.from(note);
            case Lengthen.METHOD:
                return Lengthen.from(note);
            default:
                throw Refusal.of("change-unknown").with("method", note.method());
        }
    }
}
