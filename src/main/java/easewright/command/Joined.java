package easewright.command;

import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Puts together what a shell takes apart: an amount written with spaces and without quotes, as in {@code --by +24 mm} or
 * {@code --by 1 1/2 in}.
 */
final class Joined {
    private static final Pattern SIGN = Pattern.compile("(.*=)?[+\u2212-]");
    private static final Pattern ENDS_IN_FIGURE = Pattern.compile(".*[0-9\u00bc-\u00be\u2150-\u215e]");
    private static final Pattern ENDS_WHOLE = Pattern.compile("(.*=)?[+\u2212-]?[0-9]+");
    private static final Pattern FRACTION = Pattern.compile("([0-9]+/[0-9]+|[\u00bc-\u00be\u2150-\u215e])\\D*");
    private static final Pattern FIGURE = Pattern.compile("[0-9.,\u00bc-\u00be\u2150-\u215e].*");

    private Joined() {}

    /** The same words, with each amount as one of them. */
    static List<String> amounts(Grammar grammar, List<String> arguments) {
        List<String> joined = new ArrayList<>();
        boolean growing = false;
        for (int i = 0; i < arguments.size(); i++) {
            String word = arguments.get(i);
            int last = joined.size() - 1;
            if (growing && continues(joined.get(last), word)) {
                String space = SIGN.matcher(joined.get(last)).matches() ? "" : " ";
                joined.set(last, joined.get(last) + space + word);
                continue;
            }
            joined.add(word);
            int equals = word.startsWith("--") ? word.indexOf('=') : -1;
            growing = equals > 0
                    ? isAmount(grammar, word.substring(0, equals))
                    : i > 0 && isAmount(grammar, arguments.get(i - 1));
        }
        return joined;
    }

    private static boolean isAmount(Grammar grammar, String name) {
        Optional<Option> option = grammar.option(name);
        return option.isPresent() && option.get().mayHoldAmount();
    }

    private static boolean continues(String amount, String word) {
        if (SIGN.matcher(amount).matches()) {
            return FIGURE.matcher(word).matches();
        }
        boolean unit = LengthUnit.named(word).isPresent()
                || word.toLowerCase(Locale.ROOT).equals("m");
        return unit && ENDS_IN_FIGURE.matcher(amount).matches()
                || ENDS_WHOLE.matcher(amount).matches()
                        && FRACTION.matcher(word).matches();
    }
}
