package easewright.editor.model;

import easewright.alter.Replay;
import easewright.alter.StepRefused;
import easewright.check.Checks;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.lang.ref.WeakReference;
import java.util.List;

/** The pattern without its changes, and what these have made of it. */
final class AsDrawn {
    /** What was found last: it is asked for again with all that is shown of one state. */
    private static volatile Found last = new Found(new WeakReference<>(null), List.of());

    /** @param of that very pattern: to look for its equal would take longer than most that is shown of it */
    private record Found(WeakReference<Pattern> of, List<Finding> findings) {}

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
        if (desk.pattern().changes().isEmpty()) {
            return List.of();
        }
        Found known = last;
        if (known.of().get() != desk.pattern()) {
            known = new Found(new WeakReference<>(desk.pattern()), found(desk));
            last = known;
        }
        return known.findings();
    }

    private static List<Finding> found(Desk desk) {
        Pattern now = desk.pattern();
        Pattern drawn = of(desk);
        if (drawn == now) {
            return List.of();
        }
        GarmentMeasures measured = desk.reading().measures().inEverySize();
        return Checks.protectedSince(drawn, Measures.again(drawn, now, measured), now, measured);
    }
}
