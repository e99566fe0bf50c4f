package easewright.editor.model;

import easewright.ease.EaseTable;
import easewright.ease.EaseTables;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * As which garments a pattern may be judged: tables for another garment say nothing about it.
 *
 * @param choices what the pattern may be said to be, in words of the tables: first {@link #BY_MARKS}, then the garments
 *                of which tables for a level of it speak, and at last none of them
 * @param chosen  what it is said to be now
 * @param marks   what its marks show
 */
public record Garments(List<String> choices, String chosen, Garment marks) {
    /** Nothing is said: the marks show it. */
    public static final String BY_MARKS = "";

    /** None that tables name. */
    public static final String NONE = String.join(", ", Garment.OTHER.words());

    public Garments {
        choices = List.copyOf(choices);
    }

    /**
     * @param tables all there are
     */
    public static Garments of(Pattern pattern, EaseTables tables) {
        boolean knit = pattern.cloth().knit();
        Set<String> words = new LinkedHashSet<>(List.of(BY_MARKS));
        for (Level level : pattern.levels()) {
            for (EaseTable table : tables.at(level.kind(), knit)) {
                words.addAll(Garment.named(table.garment()).words());
            }
            for (Minimum least : knit ? List.<Minimum>of() : tables.minimumsAt(level)) {
                words.addAll(Garment.named(least.garment()).words());
            }
        }
        words.removeIf(word -> !word.equals(BY_MARKS) && Garment.isAny(word));
        // What a file says may be another word, or several.
        words.add(pattern.garment());
        words.remove(NONE);
        List<String> choices = new ArrayList<>(words);
        choices.add(NONE);
        return new Garments(choices, pattern.garment(), Garment.byMarks(pattern));
    }

    /** Whether there is anything to choose from. */
    public boolean any() {
        return choices.size() > 2;
    }

    /** A choice in words. */
    public String said(String choice, Words words) {
        if (choice.equals(NONE)) {
            return words.of("editor.ease.as.none");
        }
        if (!choice.equals(BY_MARKS)) {
            return choice;
        }
        return marks.words().isEmpty()
                ? words.of("editor.ease.as.unknown")
                : words.of("editor.ease.as.marks", Map.of("garment", marks.words()));
    }
}
