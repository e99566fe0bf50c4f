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

    private static final int EXACT_DIGITS = 15;

    private final String text;
    private int at;

    NumberScanner(String text) {
        this.text = text;
    }

    int at() {
        return at;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** The next character, or 0 at the end. */
    char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    /** Steps over one character. */
    void skip() {
        at++;
    }

    void back(int to) {
        at = to;
    }

    void skipSpace() {
        while (at < text.length() && isSpace(text.charAt(at))) {
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
        int begin = at;
        int i = at;
        int length = text.length();
        boolean negative = false;
        if (i < length && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
            negative = text.charAt(i) == '-';
            i++;
        }
        long mantissa = 0;
        int digits = 0;
        int significant = 0;
        int decimals = 0;
        while (i < length && isDigit(text.charAt(i))) {
            mantissa = significant < EXACT_DIGITS ? mantissa * 10 + (text.charAt(i) - '0') : mantissa;
            significant += mantissa > 0 ? 1 : 0;
            digits++;
            i++;
        }
        if (i < length && text.charAt(i) == '.') {
            int point = i;
            i++;
            while (i < length && isDigit(text.charAt(i))) {
                mantissa = significant < EXACT_DIGITS ? mantissa * 10 + (text.charAt(i) - '0') : mantissa;
                significant += mantissa > 0 ? 1 : 0;
                digits++;
                decimals++;
                i++;
            }
            if (decimals == 0) {
                // "5." is no number: the point is left for whoever reads on, and fails there.
                i = point;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        int afterExponent = exponentEnd(i);
        double value;
        if (afterExponent == i && significant <= EXACT_DIGITS && decimals < TEN.length) {
            value = mantissa / TEN[decimals];
            value = negative ? -value : value;
        } else {
            value = Double.parseDouble(text.substring(begin, afterExponent));
        }
        if (!Double.isFinite(value)) {
            return Double.NaN;
        }
        at = afterExponent;
        return value;
    }

    /** Just after the exponent that begins at i, or i if none does ({@code 1em} has none). */
    private int exponentEnd(int i) {
        int length = text.length();
        if (i >= length || (text.charAt(i) != 'e' && text.charAt(i) != 'E')) {
            return i;
        }
        int j = i + 1;
        if (j < length && (text.charAt(j) == '-' || text.charAt(j) == '+')) {
            j++;
        }
        int firstDigit = j;
        while (j < length && isDigit(text.charAt(j))) {
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
