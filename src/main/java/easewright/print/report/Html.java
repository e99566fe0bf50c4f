package easewright.print.report;

/** Writes HTML text; every word from outside passes through {@link #escaped}. */
final class Html {
    private final StringBuilder out = new StringBuilder(32_768);

    /** The text with every character that means something in HTML or in an attribute made harmless. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    boolean control = c < 0x20 && c != '\n' && c != '\t' || c >= 0x7f && c < 0xa0;
                    boolean half = c >= 0xd800 && c <= 0xdfff || c == 0xfffe || c == 0xffff;
                    safe.appendCodePoint(control || half ? 0xfffd : c);
                }
            }
        });
        return safe.toString();
    }

    /** Markup made here, never text from outside. */
    Html raw(String markup) {
        out.append(markup).append('\n');
        return this;
    }

    Html element(String tag, String text) {
        out.append('<')
                .append(tag)
                .append('>')
                .append(escaped(text))
                .append("</")
                .append(tag)
                .append(">\n");
        return this;
    }

    /** Text from outside, made harmless. */
    Html text(String text) {
        out.append(escaped(text));
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
