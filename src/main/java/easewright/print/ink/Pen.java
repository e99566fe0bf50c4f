package easewright.print.ink;

import java.util.List;

/** Kinds of line. Each can be told from the others by width and dashes alone. */
public enum Pen {
    CUT(Tone.BLACK, 0.6),
    STITCH(Tone.BLACK, 0.3, 5, 2.5),
    DART(Tone.BLACK, 0.3, 5, 2.5),
    DART_POINT(Tone.BLACK, 0.3),
    INNER(Tone.DARK, 0.25),
    NOTCH(Tone.BLACK, 0.6),
    LEVEL(Tone.MID, 0.3, 0.6, 1.6),
    GRAIN(Tone.BLACK, 0.35),
    FOLD(Tone.BLACK, 0.9, 9, 3, 2, 3),
    CONTROL(Tone.BLACK, 0.3),
    TRIM(Tone.DARK, 0.45),
    JOIN(Tone.MID, 0.2),
    GRID(Tone.LIGHT, 0.25),
    RULE(Tone.LIGHT, 0.25),
    EDGE(Tone.DARK, 0.35),
    RING(Tone.BLACK, 0.6),
    GHOST(Tone.MID, 0.35, 2.2, 1.4),
    MOVED(Tone.ACCENT, 0.9),
    MEASURE(Tone.DARK, 0.2);

    private final Tone tone;
    private final double width;
    private final List<Double> dashes;

    Pen(Tone tone, double width, double... dashes) {
        this.tone = tone;
        this.width = width;
        this.dashes = java.util.Arrays.stream(dashes).boxed().toList();
    }

    public Tone tone() {
        return tone;
    }

    /** Width of the line, mm. */
    public double width() {
        return width;
    }

    /** Lengths of dash and gap in turn, mm; empty for a whole line. */
    public List<Double> dashes() {
        return dashes;
    }
}
