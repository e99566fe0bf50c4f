package easewright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
            lines.add(bracketed(i) + " " + begun(told.apply(notes.get(i))));
        }
        return List.copyOf(lines);
    }

    /** With a great letter, as every line begins; an address on the net is written as it is. */
    private static String begun(String line) {
        boolean address = line.split(" ", 2)[0].matches(".*\\.\\w.*");
        return line.isEmpty() || address ? line : line.substring(0, 1).toUpperCase(Locale.ROOT) + line.substring(1);
    }

    private static String bracketed(int index) {
        return "[" + (index + 1) + "]";
    }
}
