package easewright.editor.mark;

import java.util.Locale;

/** What a click on the table does. */
public enum Tool {
    /** Nothing: the table is looked at, pushed about and pulled as always. */
    NONE(0, false),
    /** Shows a line of which the user knows the length. */
    KNOWN_LINE(2, false),
    /** Measures from one place to another. */
    TAPE(2, false),
    /** Ends an edge and begins another. */
    SPLIT(1, true),
    NOTCH(1, true),
    /** Two ends of the mouth, then the point. */
    DART(3, true),
    /** From one end of the grainline to the other. */
    GRAIN(2, false),
    /** Puts a level on a piece. */
    LEVEL(1, false),
    /** Two edges that are sewn together. */
    SEW(2, true);

    private final int clicks;
    private final boolean onOutline;

    Tool(int clicks, boolean onOutline) {
        this.clicks = clicks;
        this.onOutline = onOutline;
    }

    /** How many places are clicked. */
    int clicks() {
        return clicks;
    }

    /** Whether the places lie on outlines; the point of a dart, being the last of three, does not. */
    boolean wantsOutline(int clicked) {
        return onOutline && clicked < 2;
    }

    /** The last part of the tool's keys in the bundle. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
