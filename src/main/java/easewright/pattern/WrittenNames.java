package easewright.pattern;

import java.util.Locale;
import java.util.regex.Pattern;

/** Names among the words that are written on pattern pieces, in English. */
public final class WrittenNames {
    private static final Pattern CUT_CLAUSE = Pattern.compile(
            "\\s*[,;:(\u2013\u2014|/-]*\\s*(\\bcut\\b.*|\\bplace on\\b.*|\\bon (the )?fold\\b.*|" + CutWords.TIMES
                    + ".*|(?<!\\p{L})[x\u00d7]\\s*\\d{1,2}\\b.*)$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SAYS_SOMETHING_ELSE = Pattern.compile(
            "^(sizes?\\b.*|(straight |length(wise)? )?grain.*|notch.*|dart.*|test square.*|.*allowance.*|fold.*"
                    + "|(centre|center) (front|back)( line| fold| seam)?|c\\.?\\s?[fb]\\.?|place .*|hem[\\s:=-]*[\\d\\s.,/]+(mm|cm|in|inch)?"
                    + "|[\\d\\s.,/x\u00d7-]*(mm|cm|in|inch)?|page \\d+.*|scale.*)$",
            Pattern.CASE_INSENSITIVE);

    private WrittenNames() {}

    /** What of a line may be a piece's name: nothing if it says something else. */
    public static String in(String line) {
        String rest =
                SizeNames.withoutRun(CUT_CLAUSE.matcher(line).replaceFirst("").strip());
        boolean other = SizeNames.isRun(rest)
                || SAYS_SOMETHING_ELSE.matcher(rest).matches()
                || LevelWords.of(rest).isPresent()
                || LevelWords.isHem(rest);
        boolean letters = rest.codePoints().filter(Character::isLetter).count() >= 2;
        return other || !letters || rest.length() > 48 ? "" : calm(rest);
    }

    /** Words all in capitals are written as usual; short ones may be letters that stand for something. */
    private static String calm(String words) {
        boolean capitals = words.length() > 3 && words.equals(words.toUpperCase(Locale.ROOT));
        return capitals ? words.substring(0, 1) + words.substring(1).toLowerCase(Locale.ROOT) : words;
    }
}
