package easewright.check;

import easewright.alter.Alteration;
import easewright.alter.Coupled;
import easewright.alter.EdgeLength;
import easewright.alter.Within;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** What a change asks of the pieces sewn to the changed one, as findings: offered, with what it brings, and not done. */
public final class Offers {
    private Offers() {}

    public static List<Finding> of(Pattern before, Pattern after) {
        List<Finding> findings = new ArrayList<>();
        for (Coupled.Offer offer : Coupled.offers(before, after)) {
            for (Alteration each : offer.alterations()) {
                Alteration change = each instanceof Within within ? within.change() : each;
                if (change instanceof EdgeLength length) {
                    String piece = after.piece(length.edge().piece())
                            .map(Piece::name)
                            .orElse(length.edge().piece());
                    findings.add(Finding.of("fit-offer", Severity.NOTE, piece)
                            .with("mate", offer.mate().name())
                            .with("edge", length.edge().edge())
                            .with("by.signed", length.amount()));
                }
            }
            offer.girths()
                    .forEach((level, by) -> findings.add(Finding.of("fit-offer-girth", Severity.NOTE, "")
                            .with("mate", offer.mate().name())
                            .with("level", level)
                            .with("by.signed", by)));
        }
        return findings;
    }
}
