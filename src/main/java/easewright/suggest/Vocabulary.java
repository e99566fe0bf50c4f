package easewright.suggest;

import java.util.Locale;
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

    private Vocabulary() {}

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
