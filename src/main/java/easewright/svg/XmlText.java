package easewright.svg;

/** Text in and out of attribute values. */
final class XmlText {
    private XmlText() {}

    /** Escaped for an attribute value in either kind of quotes; line ends and tabs survive as references. */
    static String escape(String value) {
        StringBuilder out = new StringBuilder(value.length() + 8);
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                case '\n', '\r', '\t' -> out.append("&#").append((int) c).append(';');
                default -> out.append(c);
            }
        }
        return out.toString();
    }

    /** Whether XML 1.0 can hold the text at all: it has no place for most control characters. */
    static boolean canHold(String value) {
        return value.codePoints()
                .allMatch(c -> c == '\t'
                        || c == '\n'
                        || c == '\r'
                        || (c >= 0x20 && c <= 0xD7FF)
                        || (c >= 0xE000 && c <= 0xFFFD)
                        || c >= 0x10000);
    }

    /**
     * The value that the raw text of an attribute stands for.
     *
     * @throws IllegalArgumentException if it refers to an entity other than XML's own five
     */
    static String unescape(String raw) {
        if (!special(raw)) {
            return raw;
        }
        StringBuilder out = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c == '\r' && i + 1 < raw.length() && raw.charAt(i + 1) == '\n') {
                continue;
            }
            if (c == '\n' || c == '\t' || c == '\r') {
                out.append(' ');
            } else if (c == '&') {
                int end = raw.indexOf(';', i);
                if (end < 0) {
                    throw new IllegalArgumentException("A reference does not end: " + raw);
                }
                out.append(resolved(raw.substring(i + 1, end)));
                i = end;
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static boolean special(String raw) {
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c == '&' || c == '\n' || c == '\t' || c == '\r') {
                return true;
            }
        }
        return false;
    }

    private static String resolved(String reference) {
        switch (reference) {
            case "amp":
                return "&";
            case "lt":
                return "<";
            case "gt":
                return ">";
            case "quot":
                return "\"";
            case "apos":
                return "'";
            default:
                if (reference.startsWith("#x")) {
                    return Character.toString(Integer.parseInt(reference.substring(2), 16));
                }
                if (reference.startsWith("#")) {
                    return Character.toString(Integer.parseInt(reference.substring(1)));
                }
                throw new IllegalArgumentException("Not one of XML's own references: " + reference);
        }
    }
}
