package easewright.check;

import easewright.alter.Proposal;
import easewright.alter.Truing;
import easewright.pattern.Finding;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Joined lines are smooth, corners at folds square, darts capped, notches paired, allowances even (docs/sources.md 4.5).
 * What is off by no more than a careful maker leaves it is not spoken of, though it can be trued.
 */
final class PlacesTrue implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        Set<Finding> findings = new LinkedHashSet<>();
        for (Proposal proposal : Truing.proposals(sight.pattern(), sight.measures(), sight.pieces())) {
            // Of legs that differ, the rule about darts speaks.
            boolean legs = proposal.finding().code().equals("dart-legs-differ");
            if (!legs && !Truing.isLittle(proposal.finding())) {
                findings.add(proposal.finding());
            }
        }
        return List.copyOf(findings);
    }
}
