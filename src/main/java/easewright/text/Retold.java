package easewright.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths within a text from elsewhere, such as "3 in below the waist", put into a unit; as coarse as they were. */
final class Retold {
    private static final String NUMBER = "\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?";

    private static final Pattern LENGTH =
            Pattern.compile("\\b(?<from>" + NUMBER + ")(?: to (?<to>" + NUMBER + "))? (?<unit>mm|cm|in)\\b");

    private Retold() {}

    static String in(LengthUnit unit, String text) {
        Matcher length = LENGTH.matcher(text);
        StringBuilder out = new StringBuilder();
        while (length.find()) {
            String own = length.group("unit");
            String from = retold(length.group("from"), own, unit);
            String to = length.group("to") == null ? "" : " to " + retold(length.group("to"), own, unit);
            length.appendReplacement(out, Matcher.quoteReplacement(from + to));
        }
        return length.appendTail(out).toString();
    }

    private static String retold(String number, String own, LengthUnit unit) {
        try {
            return Lengths.coarse(Lengths.parse(number + " " + own, unit), unit);
        } catch (Unreadable unreadable) {
            return number + " " + own;
        }
    }
}
