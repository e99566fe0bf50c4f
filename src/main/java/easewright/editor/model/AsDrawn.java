package easewright.editor.model;

import easewright.alter.Replay;
import easewright.alter.StepRefused;
import easewright.check.Checks;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;

/** The pattern without its changes, and what these have made of it. For the window's thread only. */
final class AsDrawn {
    /** It is asked for again with all that is shown of one state. */
    private static final Map<Pattern, List<Finding>> PROTECTED = new WeakHashMap<>();

    private AsDrawn() {}

    /** Without its changes, as it is marked now; the pattern itself where they cannot be taken back. */
    static Pattern of(Desk desk) {
        try {
            return new Replay(desk.pattern(), desk.history().states()).to(List.of());
        } catch (StepRefused notToBeRetraced) {
            return desk.pattern();
        }
    }

    /**
     * Protected edges that are others by what was kept, and sewn to no edge that is known: what a sewist has to change
     * likewise, for as long as the change stands and not only while it is tried.
     */
    static List<Finding> protectedSince(Desk desk) {
        Pattern now = desk.pattern();
        return now.changes().isEmpty()
                ? List.of()
                : PROTECTED.computeIfAbsent(now, p -> {
                    Pattern drawn = of(desk);
                    return drawn == p
                            ? List.of()
                            : Checks.protectedSince(
                                    drawn,
                                    Measures.of(drawn),
                                    p,
                                    Measures.of(p),
                                    desk.reading().tables());
                });
    }
}
