package easewright.editor.mark;

import easewright.pattern.Pattern;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import java.util.Set;

/** Remembers what was suggested, so that it is thought of only once. */
final class Thoughts {
    private Sheet sheet;
    private Set<String> leftOut = Set.of();
    private Suggestions last;
    private Sheet namedSheet;
    private Pattern named;

    Suggestions of(Sheet now, Set<String> without) {
        if (last == null || !now.equals(sheet) || !without.equals(leftOut)) {
            sheet = now;
            leftOut = without;
            last = Suggestions.of(now, without);
        }
        return last;
    }

    Pattern named(Sheet now) {
        if (named == null || !now.equals(namedSheet)) {
            namedSheet = now;
            named = Suggestions.named(now);
        }
        return named;
    }
}
