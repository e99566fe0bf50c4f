package easewright.svg;

/**
 * Reads numbers out of attribute text, as SVG writes them: {@code .5.5}, {@code 1-2} and {@code +1e3} without
 * separators are two, two and one number.
 */
final class NumberScanner {
    /** Powers of ten that a double holds exactly, so that one division by them rounds correctly. */
    private static final double[] TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    /** With so many digits a long cannot overflow. */
    private static final int LONG_DIGITS = 18;

    /** Up to here a double holds every whole number. */
    private static final long EXACT = 1L << 53;

    /** The text with a zero behind it, which is part of nothing. */
    private final char[] chars;

    private final int length;
    private int at;

    NumberScanner(String text) {
        length = text.length();
        chars = new char[length + 1];
        text.getChars(0, length, chars, 0);
    }

    int at() {
        return at;
    }

    boolean atEnd() {
        return at >= length;
    }

    /** The next character, or 0 at the end. */
    char peek() {
        return chars[at];
    }

    /** Steps over one character. */
    void skip() {
        at++;
    }

    void back(int to) {
        at = to;
    }

    void skipSpace() {
        while (isSpace(chars[at])) {
            at++;
        }
    }

    /** Steps over white space with at most one comma in it; true if there was a comma. */
    boolean skipCommaSpace() {
        skipSpace();
        if (peek() != ',') {
            return false;
        }
        at++;
        skipSpace();
        return true;
    }

    /** Whether a number may begin here. */
    boolean numberAhead() {
        char c = peek();
        return isDigit(c) || c == '.' || c == '-' || c == '+';
    }

    /** The number that begins here, or NaN (and no step) where none does or it is beyond a double. */
    double number() {
        int i = at;
        char c = chars[i];
        boolean negative = c == '-';
        if (negative || c == '+') {
            c = chars[++i];
        }
        int begin = i;
        long mantissa = 0;
        while (isDigit(c)) {
            mantissa = mantissa * 10 + (c - '0');
            c = chars[++i];
        }
        int digits = i - begin;
        int decimals = 0;
        if (c == '.') {
            int point = i;
            c = chars[++i];
            while (isDigit(c)) {
                mantissa = mantissa * 10 + (c - '0');
                c = chars[++i];
            }
            decimals = i - point - 1;
            if (decimals == 0) {
                // "5." is no number: the point is left for whoever reads on, and fails there.
                i = point;
                c = '.';
            }
        }
        digits += decimals;
        if (digits == 0) {
            return Double.NaN;
        }
        int end = c == 'e' || c == 'E' ? exponentEnd(i) : i;
        double value;
        if (end == i && digits <= LONG_DIGITS && mantissa <= EXACT) {
            value = decimals == 0 ? mantissa : mantissa / TEN[decimals];
            value = negative ? -value : value;
        } else {
            value = Double.parseDouble(new String(chars, at, end - at));
            if (!Double.isFinite(value)) {
                return Double.NaN;
            }
        }
        at = end;
        return value;
    }

    /** Just after the exponent whose letter is at i, or i if it is none ({@code 1em} has none). */
    private int exponentEnd(int i) {
        int j = i + 1;
        if (chars[j] == '-' || chars[j] == '+') {
            j++;
        }
        int firstDigit = j;
        while (isDigit(chars[j])) {
            j++;
        }
        return j == firstDigit ? i : j;
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\f';
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
