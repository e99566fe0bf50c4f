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
        return Checks.compare(before, read.measures(), after, now.measures(), TABLES);
    }

    /** Reads only what a hand needs to follow a drag: widths and ease, without the slower checks. */
    public static Reading quick(Pattern pattern) {
        GarmentMeasures measures = Measures.of(pattern);
        return new Reading(measures, EaseSheet.of(pattern, measures, TABLES), List.of());
    }
}
