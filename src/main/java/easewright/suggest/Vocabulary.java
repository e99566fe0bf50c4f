package easewright.suggest;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** English words as they are written on pattern pieces. */
final class Vocabulary {
    private static final Pattern PART = Pattern.compile(
            "\\b(front|back|side|sleeve|collar|cuff|waistband|band|yoke|facing|pocket|lining|panel|gusset|hood|strap|belt"
                    + "|placket|tie|flounce|ruffle|leg|stand|fly|flap|bib|brim|crown|tab|loop|godet|peplum|tail|insert"
                    + "|underlap|overlap|bodice)s?\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern GARMENT = Pattern.compile(
            "\\b(skirt|trousers?|pants|shorts|leggings|bodice|blouse|shirt|t-?shirt|tee|top|dress|jacket|coat|vest"
                    + "|waistcoat|tunic|cardigan|jumper|nightdress|apron|hat|cape)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final String NUMBER = "(?<number>\\d{1,2}|one|two|three|four|six|a)";
    private static final Pattern CUT = Pattern.compile(
            "\\bcut\\s+" + NUMBER + "?\\s*[x\u00d7]?\\s*(?<pair>(mirrored\\s+)?pairs?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern TIMES =
            Pattern.compile("(?<![\\d.,])(?<number>\\d{1,2})\\s*[x\u00d7](?!\\s*\\d)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TIMES_AFTER =
            Pattern.compile("(?<![\\d\\p{L}]\\s?)[x\u00d7]\\s*(?<number>\\d{1,2})\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern QUANTITY =
            Pattern.compile("\\b(?:qty|quantity)\\b\\W{0,3}(?<number>\\d{1,2})\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern FOLD = Pattern.compile("\\bfold(ed)?\\b", Pattern.CASE_INSENSITIVE);

    private Vocabulary() {}

    /** How often and how a piece is cut. */
    record Count(int times, boolean onFold) {}

    /** What the words say of how often a piece is cut, if anything. */
    static Optional<Count> count(String words) {
        boolean fold = FOLD.matcher(words).find();
        Matcher cut = CUT.matcher(words);
        if (cut.find()) {
            int times = cut.group("number") == null ? 1 : number(cut.group("number"));
            return Optional.of(new Count(cut.group("pair") == null ? times : 2 * times, fold));
        }
        for (Pattern form : new Pattern[] {TIMES, TIMES_AFTER, QUANTITY}) {
            Matcher times = form.matcher(words);
            if (times.find()) {
                return Optional.of(new Count(number(times.group("number")), fold));
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
            default -> Math.max(1, Integer.parseInt(word));
        };
    }

    /** Whether the words name a part of a garment. */
    static boolean namesPart(String words) {
        return PART.matcher(words).find();
    }

    static boolean namesGarment(String words) {
        return GARMENT.matcher(words).find();
    }

    static boolean has(String words, String... any) {
        String low = words.toLowerCase(Locale.ROOT);
        for (String word : any) {
            if (Pattern.compile("(?<!\\p{L})" + word).matcher(low).find()) {
                return true;
            }
        }
        return false;
    }
}
