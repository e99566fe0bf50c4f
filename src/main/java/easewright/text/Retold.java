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
            String told = length.group("to") == null ? from : range(from, retold(length.group("to"), own, unit), unit);
            length.appendReplacement(out, Matcher.quoteReplacement(told));
        }
        return length.appendTail(out).toString();
    }

    /** On one line, with the unit once, as ranges of a source are told. */
    private static String range(String from, String to, LengthUnit unit) {
        String bare = from.substring(0, from.length() - unit.symbol().length() - 1);
        return bare + "\u00a0to\u00a0" + to;
    }

    private static String retold(String number, String own, LengthUnit unit) {
        try {
            return Lengths.coarse(Lengths.parse(number + " " + own, unit), unit);
        } catch (Unreadable unreadable) {
            return number + "\u00a0" + own;
        }
    }
}
