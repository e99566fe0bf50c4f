package easewright.print.sheet;

import easewright.print.ink.Lettering;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import java.util.List;

/** Sets paragraphs one below the other in a column. */
final class TextColumn {
    private static final double LEADING = 1.4;

    private final Pencil pencil;
    private final double x;
    private final double width;
    private double y;

    /** @param top upper border of the first line */
    TextColumn(Pencil pencil, double x, double top, double width) {
        this.pencil = pencil;
        this.x = x;
        this.y = top;
        this.width = width;
    }

    TextColumn heading(String text) {
        line(text, 4, true, Tone.BLACK, 0);
        return gap(0.8);
    }

    TextColumn paragraph(String text, double size, Tone tone) {
        for (String line : Lettering.of(false).wrapped(text, size, width)) {
            line(line, size, false, tone, 0);
        }
        return gap(size * 0.45);
    }

    /** One below the other like the lines of one paragraph. */
    TextColumn lines(List<String> texts, double size) {
        for (String text : texts) {
            paragraph(text, size, Tone.BLACK).gap(-size * 0.45);
        }
        return gap(size * 0.45);
    }

    /** Paragraphs with a number before each. */
    TextColumn numbered(List<String> texts, double size) {
        for (int i = 0; i < texts.size(); i++) {
            pencil.writeBold(String.valueOf(i + 1), x, y + size, size, Tone.BLACK);
            indented(texts.get(i), size, Tone.BLACK);
        }
        return this;
    }

    /** A paragraph set in by the width of a number. */
    TextColumn indented(String text, double size, Tone tone) {
        double in = size * 1.5;
        for (String line : Lettering.of(false).wrapped(text, size, width - in)) {
            line(line, size, false, tone, in);
        }
        return gap(size * 0.45);
    }

    TextColumn gap(double mm) {
        y += mm;
        return this;
    }

    private void line(String text, double size, boolean bold, Tone tone, double in) {
        if (bold) {
            pencil.writeBold(text, x + in, y + size, size, tone);
        } else {
            pencil.write(text, x + in, y + size, size, tone);
        }
        y += size * LEADING;
    }

    /** Lower border of what has been set. */
    double bottom() {
        return y;
    }
}
