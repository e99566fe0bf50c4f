package easewright.editor.mark;

import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import java.util.Set;

/** Remembers what was suggested, so that it is thought of only once. */
final class Thoughts {
    private Sheet sheet;
    private Set<String> leftOut = Set.of();
    private Suggestions last;

    Suggestions of(Sheet now, Set<String> without) {
        // Lists that were not made anew are the same objects: comparing those is quick.
        boolean same = sheet != null
                && now.pattern().equals(sheet.pattern())
                && now.loose().equals(sheet.loose())
                && now.captions().equals(sheet.captions())
                && without.equals(leftOut);
        if (!same) {
            sheet = now;
            leftOut = without;
            last = Suggestions.of(now, without);
        }
        return last;
    }
}
