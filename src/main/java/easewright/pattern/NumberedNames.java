package easewright.pattern;

import java.util.regex.Pattern;

/** Names that nobody gave: a drawing program's numbers for elements and layers, and ours for pieces without a name. */
public final class NumberedNames {
    private static final Pattern NUMBERED = Pattern.compile(
            "(piece|shape|path|polygon|polyline|rect|circle|ellipse|line|g|group|layer|object|svg|use|copy)?"
                    + "[-_ #]*\\d[-_ #\\d]*",
            Pattern.CASE_INSENSITIVE);

    private NumberedNames() {}

    /** What a piece is called until somebody gives it a name. */
    public static String of(int number) {
        return "Piece " + number;
    }

    /** Whether it says nothing but a number. */
    public static boolean isNumbered(String name) {
        return NUMBERED.matcher(name).matches();
    }
}
