package easewright.svg;

import easewright.geom.Point;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;

/** Writes elements with attributes, indented. Not thread-safe. */
final class MarkupBuilder {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private final String indent;
    private final String lineEnd;

    /** Whether the start tag of the innermost element still lacks its {@code >}. */
    private boolean inTag;

    MarkupBuilder(String indent, String lineEnd) {
        this.indent = indent;
        this.lineEnd = lineEnd;
    }

    MarkupBuilder open(String name) {
        endTag();
        if (out.length() > 0) {
            newLine();
        }
        out.append('<').append(name);
        open.push(name);
        inTag = true;
        return this;
    }

    MarkupBuilder text(String name, String value) throws SvgProblem {
        if (!XmlText.canHold(value)) {
            throw new SvgProblem("text-unwritable", Map.of("text", value));
        }
        out.append(' ').append(name).append("=\"").append(XmlText.escape(value)).append('"');
        return this;
    }

    MarkupBuilder number(String name, double value) throws SvgProblem {
        return text(name, Decimals.exact(value));
    }

    MarkupBuilder place(String name, Point value) throws SvgProblem {
        return text(name, MarkWords.place(value));
    }

    MarkupBuilder yesNo(String name, boolean value) throws SvgProblem {
        return text(name, value ? "yes" : "no");
    }

    MarkupBuilder close() {
        String name = open.pop();
        if (inTag) {
            out.append("/>");
            inTag = false;
        } else {
            newLine();
            out.append("</").append(name).append('>');
        }
        return this;
    }

    void verbatim(String markup) {
        endTag();
        newLine();
        out.append(markup);
    }

    String markup() {
        return out.toString();
    }

    private void endTag() {
        if (inTag) {
            out.append('>');
            inTag = false;
        }
    }

    private void newLine() {
        out.append(lineEnd).append(indent).append("  ".repeat(open.size()));
    }
}
