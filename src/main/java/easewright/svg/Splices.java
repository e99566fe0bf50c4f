package easewright.svg;

import java.util.ArrayList;
import java.util.List;

/** Edits put together. */
final class Splices {
    private Splices() {}

    /** Edits in order, those that touch made one. */
    static List<Edit> joined(List<Edit> ordered) {
        List<Edit> out = new ArrayList<>();
        for (Edit edit : ordered) {
            Edit last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && edit.from() <= last.to()) {
                out.set(
                        out.size() - 1,
                        new Edit(last.from(), Math.max(last.to(), edit.to()), last.text() + edit.text()));
            } else {
                out.add(edit);
            }
        }
        return out;
    }

    /** The text with the edits made. */
    static String applied(String text, List<Edit> ordered) {
        StringBuilder out = new StringBuilder(text.length() + 64);
        int at = 0;
        for (Edit edit : ordered) {
            out.append(text, at, edit.from()).append(edit.text());
            at = edit.to();
        }
        return out.append(text, at, text.length()).toString();
    }
}
