package easewright.text;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Amounts that people write as a part of something known: {@code -8 %}, {@code 2.5 per cent}. */
public final class PerCent {
    /** At most two places: a comma before three digits could as well part thousands. */
    private static final Pattern FORM = Pattern.compile("(?<sign>[+-]?)\\s*"
            + "(?<number>\\d{1,3}(?:[.,]\\d{0,2})?|[.,]\\d{1,2})\\s*(?:%|percent|per cent|per-cent)");

    private PerCent() {}

    /** How many per cent a text says; empty where it is something else, such as a length. */
    public static OptionalDouble of(String text) {
        Matcher form = FORM.matcher(Lengths.plain(text).toLowerCase(Locale.ROOT));
        if (!form.matches()) {
            return OptionalDouble.empty();
        }
        double size = Double.parseDouble(form.group("number").replace(',', '.'));
        return OptionalDouble.of(form.group("sign").equals("-") ? -size : size);
    }

    /** As it is shown, such as {@code −8 %}. */
    public static String shown(double percent) {
        String digits = Lengths.decimal(Math.abs(percent), 2);
        return (percent < 0 && !digits.equals("0") ? "\u2212" : "") + digits + "\u00a0%";
    }
}
