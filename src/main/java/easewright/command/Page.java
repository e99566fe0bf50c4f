package easewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Text for a terminal: no line is longer than 80 signs unless a single word is. */
final class Page {
    static final int WIDTH = 80;

    private final PrintWriter out;

    Page(PrintWriter out) {
        this.out = out;
    }

    void line() {
        out.println();
    }

    /** A paragraph from the edge. */
    void text(String text) {
        text("", text);
    }

    /** A paragraph after a label; its further lines begin where the first one began. */
    void text(String label, String text) {
        String indent = " ".repeat(length(label));
        List<String> lines = wrapped(text, WIDTH - length(label));
        for (int i = 0; i < lines.size(); i++) {
            out.println((i == 0 ? label : indent) + lines.get(i));
        }
    }

    /** The same words in lines of at most so many signs; spaces that hold together are kept. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (line.length() > 0) {
                line.append(' ');
            }
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
