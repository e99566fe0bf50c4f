package easewright.check;

import easewright.alter.Proposal;
import easewright.alter.Truing;
import easewright.pattern.Finding;
import java.util.ArrayList;
import java.util.List;

/** Joined lines are smooth, corners at folds square, darts capped, notches paired, allowances even (docs/sources.md 4.5). */
final class PlacesTrue implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (Proposal proposal : Truing.proposals(sight.pattern(), sight.measures())) {
            findings.add(proposal.finding());
        }
        return findings;
    }
}
