package easewright.alter;

import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes places of a pattern true, one after the other, each on what the last has left. */
public final class TrueUp {
    private TrueUp() {}

    /** One place tried: what came of it, or why it was left as it is. */
    public record Tried(Proposal proposal, Optional<Altered> done, Optional<Refusal> refusal) {}

    /** One place, alone. */
    public static Tried one(Pattern pattern, Proposal proposal, boolean acceptProtected) {
        try {
            if (!proposal.protectedEdges().isEmpty() && !acceptProtected) {
                throw Refusal.of("truing-needs-leave").with("known", proposal.protectedEdges());
            }
            return new Tried(proposal, Optional.of(proposal.apply(pattern)), Optional.empty());
        } catch (Refusal refusal) {
            return new Tried(proposal, Optional.empty(), Optional.of(refusal));
        }
    }

    /** All places, also those that become untrue on the way, each tried once. */
    public static List<Tried> all(Pattern pattern, boolean acceptProtected) {
        List<Tried> all = new ArrayList<>();
        Set<List<Object>> known = new HashSet<>();
        Pattern now = pattern;
        Optional<Proposal> next = next(now, known);
        while (next.isPresent()) {
            Tried tried = one(now, next.get(), acceptProtected);
            all.add(tried);
            now = tried.done().map(Altered::pattern).orElse(now);
            next = next(now, known);
        }
        return List.copyOf(all);
    }

    private static Optional<Proposal> next(Pattern pattern, Set<List<Object>> known) {
        return Truing.proposals(pattern).stream()
                .filter(p -> known.add(
                        List.of(p.size(), p.truing().matter(), p.truing().target())))
                .findFirst();
    }
}
