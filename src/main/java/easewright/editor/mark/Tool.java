package easewright.editor.mark;

import java.util.Locale;

/** What a click on the table does. */
public enum Tool {
    /** Nothing: the table is looked at, pushed about and pulled as always. */
    NONE,
    /** Shows a line of which the user knows the length. */
    KNOWN_LINE,
    /** Measures from one place to another. */
    TAPE;

    /** The last part of the tool's keys in the bundle. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
