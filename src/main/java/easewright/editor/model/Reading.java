package easewright.editor.model;

import easewright.check.Checks;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.List;

/** All that can be read off a pattern: its measures, its ease sheet and what is to be noticed. */
public record Reading(GarmentMeasures measures, EaseSheet sheet, List<Finding> findings) {
    private static final EaseTables TABLES = EaseTables.standard();

    public Reading {
        findings = List.copyOf(findings);
    }

    /** Reads everything, as the report does. */
    public static Reading of(Pattern pattern) {
        easewright.print.Reading whole = easewright.print.Reading.of(pattern, TABLES);
        return new Reading(whole.measures(), whole.sheet(), whole.findings());
    }

    /** What a change brought about: protected edges that changed, mates that drifted, whatever is to be noticed now. */
    static List<Finding> drift(Pattern before, Reading read, Pattern after, Reading now) {
        return Checks.compare(before, read.measures(), read.sheet(), after, now.measures(), now.sheet());
    }

    /** Reads only what a hand needs to follow a drag: widths and ease, without the slower checks. */
    public static Reading quick(Pattern pattern) {
        return quick(pattern, Measures.of(pattern));
    }

    /** The same for a pattern of which most pieces are those of one that was read already. */
    static Reading quick(Pattern pattern, Pattern before, Reading read) {
        return quick(pattern, Measures.again(pattern, before, read.measures()));
    }

    private static Reading quick(Pattern pattern, GarmentMeasures measures) {
        return new Reading(measures, EaseSheet.of(pattern, measures, TABLES), List.of());
    }
}
