package easewright.editor.mark;

import easewright.editor.model.Reading;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import java.util.HashSet;
import java.util.Set;

/**
 * What was made of a sheet.
 *
 * @param leftOut keys of the suggestions that were not to be taken
 * @param reading what can be read off the outcome
 */
public record Thought(Sheet sheet, Set<String> leftOut, Suggestions suggestions, Reading reading) {
    public Thought {
        leftOut = Set.copyOf(leftOut);
    }

    static Thought without(Sheet sheet, Set<String> leftOut) {
        return of(sheet, leftOut, Suggestions.of(sheet, leftOut));
    }

    /** With none of all that could be suggested: where one is left out, others may be suggested in its place. */
    static Thought withNone(Sheet sheet) {
        Set<String> keys = new HashSet<>();
        Suggestions suggestions = Suggestions.of(sheet, keys);
        while (true) {
            Set<String> all = new HashSet<>(keys);
            suggestions.all().forEach(suggestion -> all.add(suggestion.key()));
            if (!keys.addAll(all)) {
                return of(sheet, keys, suggestions);
            }
            suggestions = Suggestions.of(sheet, keys);
        }
    }

    /** With these suggestions and no others. */
    static Thought only(Sheet sheet, Set<String> taken) {
        return of(sheet, Set.of(), Suggestions.only(sheet, taken));
    }

    private static Thought of(Sheet sheet, Set<String> leftOut, Suggestions suggestions) {
        return new Thought(sheet, leftOut, suggestions, Reading.quick(suggestions.outcome()));
    }
}
