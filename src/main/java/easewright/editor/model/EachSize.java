package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.Altered;
import easewright.alter.Moved;
import easewright.alter.OtherSize;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.Within;
import easewright.measure.StitchLines;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wanted, made in each of the sizes in which it is wanted, by the amount and on its own; or in none. */
final class EachSize {
    private final Wanted wanted;
    private final List<String> sizes;
    private final Pattern own;
    private final List<EdgeRef> taking;

    /**
     * @param sizes  in the order in which they are changed; none where the pattern comes in one
     * @param own    the pieces of the size at work, on the side wanted
     * @param taking the seams of theirs that take part, where some are left out
     */
    EachSize(Wanted wanted, List<String> sizes, Pattern own, List<EdgeRef> taking) {
        this.wanted = wanted;
        this.sizes = sizes;
        this.own = own;
        this.taking = taking;
    }

    /** What came of it, or what was refused. */
    record Outcome(Altered altered, Optional<Trial.Refused> refused) {}

    /**
     * @param work the size at work
     */
    Outcome made(Pattern pattern, Optional<String> work, StitchLines lines) {
        Pattern now = pattern;
        List<Moved> moved = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Optional<Trial.Refused> refused = Optional.empty();
        for (Scope scope : Scope.each(sizes, wanted.side())) {
            try {
                Altered altered = Within.of(scope, change(pattern, scope, work)).apply(now, lines);
                now = altered.pattern();
                moved.addAll(altered.moved());
                findings.addAll(altered.findings());
            } catch (Refusal refusal) {
                Optional<String> size = sizes.size() > 1 ? scope.size() : Optional.empty();
                Trial.Refused there = new Trial.Refused(wanted, refusal, size);
                refused = refused.filter(r -> !refusal.allowsLessThan(r.refusal()))
                        .or(() -> Optional.of(there));
            }
        }
        return new Outcome(new Altered(now, moved, findings), refused);
    }

    private Alteration change(Pattern pattern, Scope scope, Optional<String> work) throws Refusal {
        if (scope.size().equals(work)) {
            return wanted.change(own, taking);
        }
        Pattern there = scope.part(pattern).alone();
        OtherSize other = new OtherSize(own, there);
        List<EdgeRef> edges = new ArrayList<>();
        for (EdgeRef edge : taking) {
            edges.add(other.edge(edge));
        }
        return wanted.in(other).change(there, edges);
    }
}
