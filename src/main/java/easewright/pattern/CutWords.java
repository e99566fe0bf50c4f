package easewright.pattern;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** English words on pattern pieces that say how often and how a piece is cut. */
public final class CutWords {
    private static final String NUMBER = "(?<number>\\d{1,2}|one|two|three|four|six|a)";

    /** As "2x"; a measure such as 2 x 3 is none. */
    static final String TIMES = "(?<![\\d.,])\\d{1,2}\\s*[x\u00d7](?!\\s*\\d)";

    /** As "x2". */
    private static final String TIMES_AFTER = "(?<![\\d\\p{L}]\\s?)[x\u00d7]\\s*\\d{1,2}\\b";

    /** As "Qty: 2". */
    private static final String QUANTITY = "\\b(?:qty|quantity)\\b\\W{0,3}\\d{1,2}\\b";

    private static final String FOLD = "\\bfold(ed)?\\b";

    private static final Pattern CUT = of("\\bcut\\s+" + NUMBER + "?\\s*[x\u00d7]?\\s*(?<pair>(mirrored\\s+)?pairs?)?");
    private static final Pattern BEFORE = of(TIMES);
    private static final Pattern AFTER = of(TIMES_AFTER);
    private static final Pattern TOLD = of(QUANTITY);
    private static final Pattern ON_FOLD = of(FOLD);
    private static final Pattern ANY =
            of("\\b(cut|pairs?|mirrored)\\b|" + FOLD + "|" + TIMES + "|" + TIMES_AFTER + "|" + QUANTITY);
    private static final Pattern DIGITS = Pattern.compile("\\d+");

    private CutWords() {}

    private static Pattern of(String form) {
        return Pattern.compile(form, Pattern.CASE_INSENSITIVE);
    }

    /** How often a piece is cut, and whether on the fold of the cloth. */
    public record Count(int times, boolean onFold) {}

    /** Whether the words say anything of how a piece is cut: that, a fold, a count. */
    public static boolean any(String words) {
        return ANY.matcher(words).find();
    }

    /** What the words say of how often a piece is cut, if anything. */
    public static Optional<Count> count(String words) {
        boolean fold = ON_FOLD.matcher(words).find();
        Matcher cut = CUT.matcher(words);
        if (cut.find()) {
            int times = cut.group("number") == null ? 1 : number(cut.group("number"));
            return Optional.of(new Count(cut.group("pair") == null ? times : 2 * times, fold));
        }
        for (Pattern form : new Pattern[] {BEFORE, AFTER, TOLD}) {
            Matcher times = form.matcher(words);
            if (times.find()) {
                return Optional.of(new Count(digits(times.group()), fold));
            }
        }
        return fold ? Optional.of(new Count(1, true)) : Optional.empty();
    }

    private static int number(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "a", "one" -> 1;
            case "two" -> 2;
            case "three" -> 3;
            case "four" -> 4;
            case "six" -> 6;
            default -> digits(word);
        };
    }

    private static int digits(String words) {
        return DIGITS.matcher(words)
                .results()
                .findFirst()
                .map(r -> Math.max(1, Integer.parseInt(r.group())))
                .orElse(1);
    }
}
