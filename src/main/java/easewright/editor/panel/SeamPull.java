package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Hold;
import easewright.editor.model.Pulling;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.geom.Point;
import java.util.List;

/** The hand that pulls a seam: from pointer places to a wanted amount. */
final class SeamPull {
    private final Session session;
    private final OncePerFrame follow = new OncePerFrame(this::follow);
    private Pulling pulling;
    private Reach reach;

    /** Where the hand has come to. */
    private record Reach(Point at, double pixel, boolean free) {}

    SeamPull(Session session) {
        this.session = session;
    }

    boolean isPulling() {
        return pulling != null;
    }

    void begin(Hold hold, List<Hold> holds, Point at) {
        Desk desk = session.desk();
        desk.wanted().ifPresent(w -> pulling = Pulling.begin(hold, holds, w, at));
    }

    /**
     * @param pixel what one pixel is at the seam, mm
     * @param free  without any snapping
     */
    void to(Point at, double pixel, boolean free) {
        reach = new Reach(at, pixel, free);
        follow.ask();
    }

    private void follow() {
        Desk desk = session.desk();
        Wanted wanted = desk.wanted().orElseThrow();
        double amount = pulling.amount(reach.at());
        if (!reach.free()) {
            amount = pulling.snapped(amount, reach.pixel(), desk.unit(), Pulling.missing(desk));
        }
        if (amount != wanted.amount()) {
            session.want(wanted.withAmount(amount));
        }
    }

    /** Lets go: what is tried is what the hand came to at last. */
    void end() {
        follow.catchUp();
        pulling = null;
    }

    /** Lets go without following to where the hand is now. */
    void drop() {
        follow.forget();
        pulling = null;
    }
}
