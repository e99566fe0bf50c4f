package easewright.editor.model;

import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import java.util.List;

/** The changes of a pattern on the table made anew, at once. */
public final class Recasting {
    private Recasting() {}

    public static void on(Session session, List<Step> course) throws StepRefused {
        Desk desk = session.desk();
        session.edit(new Replay(desk.pattern(), desk.history().states()).to(course));
    }
}
