package easewright.suggest;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths with a unit as they are written beside test squares and rulers. */
final class WrittenLength {
    private static final Pattern LENGTH = Pattern.compile(
            "(?:(?<whole>\\d+)\\s+)??(?:(?<top>\\d+)\\s*[/\u2044]\\s*(?<bottom>[1-9]\\d*)|(?<number>\\d+(?:[.,]\\d+)?))"
                    + "\\s*(?<unit>mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?|inch(?:es)?|in\\b|[\"\u2033\u201d])",
            Pattern.CASE_INSENSITIVE);

    private WrittenLength() {}

    /** The first length in the words, mm. */
    static OptionalDouble in(String words) {
        Matcher found = LENGTH.matcher(words);
        if (!found.find()) {
            return OptionalDouble.empty();
        }
        double size = found.group("whole") == null ? 0 : Double.parseDouble(found.group("whole"));
        size += found.group("number") == null
                ? Double.parseDouble(found.group("top")) / Double.parseDouble(found.group("bottom"))
                : Double.parseDouble(found.group("number").replace(',', '.'));
        double mm = size * mmOf(found.group("unit"));
        return mm > 0 ? OptionalDouble.of(mm) : OptionalDouble.empty();
    }

    /** The length that the words are, if they are nothing else. */
    static OptionalDouble only(String words) {
        return LENGTH.matcher(words.strip()).matches() ? in(words) : OptionalDouble.empty();
    }

    private static double mmOf(String unit) {
        return switch (Character.toLowerCase(unit.charAt(0))) {
            case 'm' -> 1;
            case 'c' -> 10;
            default -> 25.4;
        };
    }
}
