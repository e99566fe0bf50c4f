package easewright.svg;

import java.nio.ByteBuffer;

/** Characters and attribute values of plain XML, references resolved and line ends made one, as a parser gives them. */
final class PlainValues {
    private final String text;

    /** Where the next sign of each kind stands that is not taken literally in a value. */
    private final int[] next = {-1, -1, -1, -1};

    private static final char[] SIGNS = {'&', '\n', '\t', '\r'};

    PlainValues(String text) {
        this.text = text;
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\t' || c == '\r';
    }

    /**
     * Whether all is what XML may hold; surrogates come in pairs, as in every text decoded from UTF-8.
     *
     * @param utf8 the same text as bytes
     */
    static boolean holdsOnlyCharacters(String text, byte[] utf8) {
        ByteBuffer eight = ByteBuffer.wrap(utf8);
        int at = 0;
        for (; at + 8 <= utf8.length; at += 8) {
            long bytes = eight.getLong(at);
            // Not 0 if one of them is below 0x20.
            if ((bytes - 0x2020202020202020L & ~bytes & 0x8080808080808080L) != 0 && !areCharacters(utf8, at, at + 8)) {
                return false;
            }
        }
        return areCharacters(utf8, at, utf8.length) && text.indexOf('\uFFFE') < 0 && text.indexOf('\uFFFF') < 0;
    }

    private static boolean areCharacters(byte[] utf8, int from, int to) {
        for (int i = from; i < to; i++) {
            if (utf8[i] >= 0 && utf8[i] < ' ' && !isSpace((char) utf8[i])) {
                return false;
            }
        }
        return true;
    }

    /** Whether the value stands in the text as it is. Attributes are asked for in the order of the text. */
    boolean isLiteral(Tag.Attribute attribute) {
        for (int i = 0; i < SIGNS.length; i++) {
            if (next[i] < attribute.valueFrom()) {
                int found = text.indexOf(SIGNS[i], attribute.valueFrom());
                next[i] = found < 0 ? Integer.MAX_VALUE : found;
            }
            if (next[i] < attribute.valueTo()) {
                return false;
            }
        }
        return true;
    }

    static boolean isLiteral(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '&' || c != ' ' && isSpace(c)) {
                return false;
            }
        }
        return true;
    }

    /** The value, or null if a reference in it is not plain. */
    String of(Tag.Attribute attribute) {
        String raw = attribute.raw();
        return isLiteral(attribute) ? raw : resolved(raw, true);
    }

    /** Characters between tags, or null if a reference among them is not plain. */
    String characters(int from, int to) {
        return resolved(text.substring(from, to), false);
    }

    static String withPlainLineEnds(String lines) {
        return lines.indexOf('\r') < 0 ? lines : lines.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static String resolved(String raw, boolean value) {
        StringBuilder out = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c == '&') {
                int end = raw.indexOf(';', i);
                int sign = end < 0 ? -1 : referred(raw.substring(i + 1, end));
                if (sign < 0) {
                    return null;
                }
                out.appendCodePoint(sign);
                i = end;
            } else if (c == '\r') {
                if (i + 1 == raw.length() || raw.charAt(i + 1) != '\n') {
                    out.append(value ? ' ' : '\n');
                }
            } else {
                out.append(value && isSpace(c) ? ' ' : c);
            }
        }
        return out.toString();
    }

    /** The character that a reference names, or -1. */
    private static int referred(String name) {
        return switch (name) {
            case "amp" -> '&';
            case "lt" -> '<';
            case "gt" -> '>';
            case "quot" -> '"';
            case "apos" -> '\'';
            default -> name.startsWith("#x") ? number(name, 2, 16) : name.startsWith("#") ? number(name, 1, 10) : -1;
        };
    }

    private static int number(String name, int from, int base) {
        int number = 0;
        for (int i = from; i < name.length(); i++) {
            char c = name.charAt(i);
            int digit = c < 128 ? Character.digit(c, base) : -1;
            if (digit < 0 || number > Character.MAX_CODE_POINT) {
                return -1;
            }
            number = base * number + digit;
        }
        boolean character = number < ' '
                ? number == '\n' || number == '\t' || number == '\r'
                : number < Character.MIN_SURROGATE
                        || number > Character.MAX_SURROGATE && number < 0xFFFE
                        || number > 0xFFFF && number <= Character.MAX_CODE_POINT;
        return character && name.length() > from ? number : -1;
    }
}
