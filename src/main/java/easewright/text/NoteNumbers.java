package easewright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Numbers what is told once below a page, in the order in which the page comes to speak of it. */
public final class NoteNumbers<T> {
    private final List<T> notes = new ArrayList<>();

    /** The number of a note, in brackets: a raised one would make square centimetres of an ease. */
    public String mark(T note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
        return bracketed(notes.indexOf(note));
    }

    /** In the order of their numbers. */
    public List<T> notes() {
        return List.copyOf(notes);
    }

    /** Every note in words after its number. */
    public List<String> lines(Function<T, String> told) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            lines.add(bracketed(i) + " " + told.apply(notes.get(i)));
        }
        return List.copyOf(lines);
    }

    private static String bracketed(int index) {
        return "[" + (index + 1) + "]";
    }
}
