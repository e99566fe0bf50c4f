package easewright.editor.model;

import easewright.alter.OneChange;
import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.pattern.ChangeNote;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Later changes that lean on one: without it, or with it made otherwise, they cannot be made. They may go with it.
 *
 * @param steps   the list as it was wanted, without them
 * @param first   the first of them
 * @param count   how many there are
 * @param removed whether they are taken out of the list; else they are switched off
 */
public record Leaning(List<Step> steps, ChangeNote first, int count, boolean removed) {
    /** More are not looked for: for each of them all changes are made anew, while somebody waits. */
    private static final int MOST = 20;

    public Leaning {
        steps = List.copyOf(steps);
    }

    /**
     * The changes behind the one worked on that have to go so that the list can be as wanted; empty where it can be as
     * it is, where that would not help, or where more than twenty would have to go.
     *
     * @param wanted  a list that was refused
     * @param worked  the line worked on
     * @param removed whether that line is taken out of the list
     */
    static Optional<Leaning> on(Desk desk, List<Step> wanted, int worked, boolean removed) {
        Replay replay = new Replay(desk.pattern(), desk.history().states());
        List<OneChange> changes = new ArrayList<>(OneChange.course(wanted));
        int behind = removed ? worked : worked + 1;
        ChangeNote first = null;
        int count = 0;
        while (true) {
            List<Step> steps = changes.stream().flatMap(c -> c.steps().stream()).toList();
            try {
                replay.to(steps);
                return first == null ? Optional.empty() : Optional.of(new Leaning(steps, first, count, removed));
            } catch (StepRefused refused) {
                int at = place(changes, behind, refused.note());
                if (at < 0 || count == MOST || Thread.currentThread().isInterrupted()) {
                    return Optional.empty();
                }
                first = first == null ? refused.note() : first;
                count++;
                if (removed) {
                    changes.remove(at);
                } else {
                    changes.set(at, changes.get(at).switched(false));
                }
            }
        }
    }

    private static int place(List<OneChange> changes, int from, ChangeNote note) {
        for (int i = from; i < changes.size(); i++) {
            if (changes.get(i).on()
                    && changes.get(i).steps().stream().anyMatch(s -> s.note().equals(note))) {
                return i;
            }
        }
        return -1;
    }

    /** That they lean on it, and which is the first. */
    public String words(Desk desk) {
        String which = new ChangeWords(desk.words()).brief(first, desk.pattern());
        return desk.words().of(key("editor.changes.leaning"), Map.of("count", count, "which", which));
    }

    /** What the press that lets them go says. */
    public String press(Words words) {
        return words.of(key(removed ? "editor.changes.leaning.remove" : "editor.changes.leaning.off"));
    }

    private String key(String some) {
        return count == 1 ? some + ".one" : some;
    }
}
