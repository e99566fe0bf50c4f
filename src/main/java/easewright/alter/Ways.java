package easewright.alter;

import easewright.pattern.ChangeNote;
import java.util.List;
import java.util.Optional;

/** All ways of changing a pattern. A new one is entered here, and commands and forms know it. */
public final class Ways {
    private static final List<Way> ALL = List.of(
            SeamChange.WAY,
            CentreChange.WAY,
            SpreadSlashes.WAY,
            DartIntake.WAY,
            DartToSeam.WAY,
            SleeveWidth.WAY,
            EdgeLength.WAY,
            HingedSlash.WAY,
            ParallelSlash.WAY,
            Lengthen.WAY);

    private Ways() {}

    /** Every way, the most usual first. */
    public static List<Way> all() {
        return ALL;
    }

    public static Optional<Way> of(String method) {
        return ALL.stream().filter(w -> w.method().equals(method)).findFirst();
    }

    /**
     * The alteration whose {@link Alteration#note()} equals the given one.
     *
     * @throws Refusal if the method is unknown, or a setting is missing or unreadable
     */
    public static Alteration from(ChangeNote note) throws Refusal {
        if (note.method().equals(Trued.METHOD)) {
            return Within.of(Scope.of(note), Trued.from(Scope.without(note)));
        }
        return of(note.method())
                .orElseThrow(() -> Refusal.of("change-unknown").with("method", note.method()))
                .from(note);
    }
}
