package easewright.alter;

import easewright.geom.Outline;
import easewright.topology.Validity;

/** Whether a changed outline still bounds one piece of cloth. */
final class Simple {
    private Simple() {}

    /**
     * Not turned inside out, and not meeting itself; an outline that met itself before the change is not held against
     * it, since many drawings come so.
     */
    static boolean stays(Outline before, Outline after) {
        return before.signedArea() * after.signedArea() > 0 && (Validity.isSimple(after) || !Validity.isSimple(before));
    }
}
