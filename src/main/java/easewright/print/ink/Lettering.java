package easewright.print.ink;

import easewright.text.Lengths;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How wide writing is in the typeface that prints are set in: DejaVu Sans Condensed, which comes with the program. */
public final class Lettering {
    private static final class Faces {
        static final Lettering PLAIN = new Lettering("DejaVuSansCondensed.ttf");
        static final Lettering BOLD = new Lettering("DejaVuSansCondensed-Bold.ttf");
    }

    /** The blank between a number and what belongs to it. */
    private final String file;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double perEm;

    private Lettering(String file) {
        this.file = file;
        try (InputStream in = open()) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            glyphs = font.getUnicodeCmapLookup();
            perEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Lettering of(boolean bold) {
        return bold ? Faces.BOLD : Faces.PLAIN;
    }

    /** The font file; the caller closes it. */
    public InputStream open() throws IOException {
        InputStream in = Lettering.class.getResourceAsStream("/easewright/print/fonts/" + file);
        if (in == null) {
            throw new IOException("Font file is missing: " + file);
        }
        return in;
    }

    /** Whether the typeface has all letters and sets them from left to right, one by one, as they come. */
    public boolean canWrite(String text) {
        return text.codePoints().allMatch(c -> plain(c) && glyphs.getGlyphId(c) != 0);
    }

    /** Letters that join, stack or run from right to left need a shaper, which this typeface alone is not. */
    private static boolean plain(int c) {
        byte direction = Character.getDirectionality(c);
        boolean fromRight = direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        int type = Character.getType(c);
        return !fromRight
                && type != Character.NON_SPACING_MARK
                && type != Character.COMBINING_SPACING_MARK
                && type != Character.CONTROL
                && type != Character.FORMAT;
    }

    /** Width of a line of writing of the size given, mm. Letters that are missing count as wide as a capital. */
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(this::advance).sum() * size / perEm;
    }

    private double advance(int codePoint) {
        int glyph = glyphs.getGlyphId(codePoint);
        try {
            return glyph == 0 ? perEm : font.getAdvanceWidth(glyph);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The text in lines no wider than {@code width}, broken between words, or inside a word that is too long. A number
     * stays together with its fraction and its unit.
     */
    public List<String> wrapped(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : Lengths.together(text).split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > width) {
                lines.add(line);
                longer = word;
            }
            while (width(longer, size) > width && longer.codePointCount(0, longer.length()) > 1) {
                int end = fitting(longer, size, width);
                lines.add(longer.substring(0, end));
                longer = longer.substring(end);
            }
            line = longer;
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** How much of the text fits, at least one letter. */
    private int fitting(String text, double size, double width) {
        double used = 0;
        int end = 0;
        while (end < text.length()) {
            int letter = text.codePointAt(end);
            used += advance(letter) * size / perEm;
            if (used > width && end > 0) {
                return end;
            }
            end += Character.charCount(letter);
        }
        return end;
    }

    /** The text, shortened at its end to fit the width. */
    public String fitted(String text, double size, double width) {
        if (width(text, size) <= width) {
            return text;
        }
        return text.substring(0, fitting(text, size, width - width("\u2026", size)))
                        .stripTrailing() + "\u2026";
    }
}
