package easewright.print;

import easewright.check.Checks;
import easewright.check.Once;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A pattern with all that is read off it: measures, ease sheet, and what is to be noticed. */
public record Reading(Pattern pattern, GarmentMeasures measures, EaseSheet sheet, List<Finding> findings) {
    public Reading {
        findings = List.copyOf(findings);
    }

    /** Reads everything, with the tables given. */
    public static Reading of(Pattern pattern, EaseTables tables) {
        GarmentMeasures measures = Measures.of(pattern);
        EaseSheet sheet = EaseSheet.of(pattern, measures, tables);
        Set<Finding> findings = new LinkedHashSet<>(measures.findings());
        findings.addAll(sheet.findings());
        findings.addAll(Checks.of(pattern, measures, sheet));
        return new Reading(pattern, measures, sheet, Once.of(List.copyOf(findings)));
    }

    /** The piece's name, for an id. */
    public String pieceName(String id) {
        return pattern.piece(id).map(p -> p.name()).orElse(id);
    }
}
