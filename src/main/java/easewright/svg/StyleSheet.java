package easewright.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The rules of the file's style elements that can move or hide an outline. Rules about colours and pens are passed
 * over while reading, so that ordinary sheets cost nothing later. Nothing is imported; media other than screen and
 * all are left out.
 */
final class StyleSheet {
    /** More rules that move or hide things than this are beyond any drawing. */
    private static final int MOST_RULES = 2000;

    /**
     * @param order later rules win over earlier ones of the same weight
     */
    record Rule(Selector selector, Map<String, Declarations.Value> declarations, int order) {}

    private static final Set<String> MEDIA = Set.of("", "all", "screen", "only screen", "all,screen", "screen,print");

    private static final Pattern MATTERS =
            Pattern.compile("[{;\\s](display|visibility|transform|translate|rotate|scale|d)\\s*:");

    private final List<Rule> rules = new ArrayList<>();
    private boolean doubtful;
    private boolean outside;

    /** Adds the rules of one style element's text. */
    void add(String text) {
        String bare = withoutComments(text);
        read(bare, 0, bare.length(), 0);
    }

    List<Rule> rules() {
        return rules;
    }

    /** Whether some rule that could move or hide an outline was not understood. */
    boolean doubtful() {
        return doubtful;
    }

    /** Whether it asks for rules from another file. */
    boolean outside() {
        return outside;
    }

    private void read(String text, int from, int to, int depth) {
        int at = from;
        while (at < to) {
            int open = next(text, at, to, '{');
            int semicolon = next(text, at, to, ';');
            String prelude = text.substring(at, Math.min(open, semicolon)).strip();
            if (semicolon < open && (prelude.startsWith("@") || prelude.isEmpty())) {
                outside |= prelude.toLowerCase(Locale.ROOT).startsWith("@import");
                at = semicolon + 1;
                continue;
            }
            if (open >= to) {
                return;
            }
            int close = closing(text, open, to);
            prelude = text.substring(at, open).strip();
            if (!prelude.startsWith("@")) {
                addRule(prelude, text.substring(open + 1, close));
            } else if (prelude.toLowerCase(Locale.ROOT).startsWith("@media") && depth < 3) {
                String media = prelude.substring("@media".length()).strip().toLowerCase(Locale.ROOT);
                if (MEDIA.contains(media.replaceAll("\\s*,\\s*", ","))) {
                    read(text, open + 1, close, depth + 1);
                } else {
                    doubtful |= !media.equals("print") && movesOrHides(text.substring(open + 1, close));
                }
            } else {
                doubtful |= movesOrHides(text.substring(open + 1, close));
            }
            at = close + 1;
        }
    }

    /** Whether rules that are left out might have mattered. */
    private static boolean movesOrHides(String rules) {
        return MATTERS.matcher(rules).find();
    }

    private void addRule(String selectors, String body) {
        Map<String, Declarations.Value> declarations = Declarations.parse(body);
        if (declarations.isEmpty()) {
            return;
        }
        for (String one : selectors.replace("<!--", "").replace("-->", "").split(",")) {
            Optional<Selector> selector = Selector.parse(one.strip());
            if (selector.isPresent() && rules.size() < MOST_RULES) {
                rules.add(new Rule(selector.get(), declarations, rules.size()));
            } else {
                doubtful |= !Declarations.onlyWords(declarations.keySet());
            }
        }
    }

    /** The next such character outside quotes, or {@code to}. */
    private static int next(String text, int from, int to, char wanted) {
        char quote = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote || c == '\n' ? 0 : quote;
            } else if (c == wanted) {
                return i;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '{' && wanted == ';') {
                return to;
            }
        }
        return to;
    }

    private static int closing(String text, int open, int to) {
        int depth = 0;
        char quote = 0;
        for (int i = open; i < to; i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote || c == '\n' ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '{') {
                depth++;
            } else if (c == '}' && --depth == 0) {
                return i;
            }
        }
        return to;
    }

    private static String withoutComments(String text) {
        int begin = text.indexOf("/*");
        if (begin < 0) {
            return text;
        }
        StringBuilder bare = new StringBuilder(text.length());
        int from = 0;
        while (begin >= 0) {
            bare.append(text, from, begin).append(' ');
            int end = text.indexOf("*/", begin + 2);
            if (end < 0) {
                return bare.toString();
            }
            from = end + 2;
            begin = text.indexOf("/*", from);
        }
        return bare.append(text, from, text.length()).toString();
    }
}
