package easewright.editor.panel;

import easewright.alter.OneChange;
import easewright.alter.Step;
import easewright.editor.model.Course;
import java.util.List;
import java.util.OptionalInt;

/**
 * Something that was asked of the list of changes. Until it is made the list may become another: it is about the same
 * change then, wherever that stands.
 *
 * @param change   the change that was worked on, as it was
 * @param at       its line then
 * @param lines    how many there were
 * @param on       whether it is on once this is made
 * @param how      gives the list as wanted
 * @param isAmount whether another amount was typed
 * @param then     done once it is made
 */
record ChangeWish(OneChange change, int at, int lines, boolean on, How how, boolean isAmount, Runnable then) {
    /** Gives the list as wanted. */
    interface How {
        List<Step> steps(Course course, int line);
    }

    static ChangeWish of(Course shown, int line, boolean on, How how) {
        return new ChangeWish(shown.changes().get(line), line, shown.lines().size(), on, how, false, () -> {});
    }

    ChangeWish ofAmount() {
        return new ChangeWish(change, at, lines, on, how, true, then);
    }

    ChangeWish then(Runnable after) {
        return new ChangeWish(change, at, lines, on, how, isAmount, after);
    }

    /** Its line in the list as it is; none where it is not in it any more. A number in another list is that of another change. */
    OptionalInt line(Course course) {
        int now = course.changes().indexOf(change);
        return now >= 0
                ? OptionalInt.of(now)
                : course.changes().size() == lines ? OptionalInt.of(at) : OptionalInt.empty();
    }

    List<Step> steps(Course course, int line) {
        return how.steps(course, line);
    }
}
