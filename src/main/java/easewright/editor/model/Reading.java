package easewright.editor.model;

import easewright.check.Checks;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All that can be read off a pattern: its measures, its ease sheet and what is to be noticed. */
public record Reading(GarmentMeasures measures, EaseSheet sheet, List<Finding> findings) {
    private static final EaseTables TABLES = EaseTables.standard();

    public Reading {
        findings = List.copyOf(findings);
    }

    /** Reads everything. */
    public static Reading of(Pattern pattern) {
        GarmentMeasures measures = Measures.of(pattern);
        EaseSheet sheet = EaseSheet.of(pattern, measures, TABLES);
        Set<Finding> findings = new LinkedHashSet<>(measures.findings());
        findings.addAll(sheet.findings());
        findings.addAll(Checks.of(pattern, measures, TABLES));
        return new Reading(measures, sheet, List.copyOf(findings));
    }

    /** Reads only what a hand needs to follow a drag: widths and ease, without the slower checks. */
    public static Reading quick(Pattern pattern) {
        GarmentMeasures measures = Measures.of(pattern);
        return new Reading(measures, EaseSheet.of(pattern, measures, TABLES), List.of());
    }

    /** What a change from the other pattern did that a sewist should know of. */
    public List<Finding> since(Pattern before, Reading beforeReading, Pattern now) {
        return Checks.compare(before, beforeReading.measures(), now, measures, TABLES);
    }
}
