package easewright.alter;

import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Shares a change unevenly between two seam edges that are sewn together, so that both change by the same length although
 * their slants differ. The tapers stay what they are, and the same shares take the change back.
 */
final class UnevenShares {
    /** An edge takes between one and three parts in four of what the two take together. */
    private static final double LEAST = 0.25;

    private static final double CLOSE = 1e-9;

    /** A drift so small is left as it comes, mm; the promise is 0.02. */
    private static final double ENOUGH = 0.01;

    private final SeamPairs seams;

    /** Two edges of a pair, and by how much more the first changes than the second, mm. */
    private record Drift(EdgeRef first, EdgeRef second, double by) {}

    UnevenShares(SeamPairs seams) {
        this.seams = seams;
    }

    /**
     * The change with other shares.
     *
     * @return empty where nothing drifts, the user has said who takes how much, or no shares do it
     */
    Optional<SeamChange> solved(SeamChange change) throws Refusal {
        List<Share> shares = shares(change);
        boolean alike =
                shares.stream().allMatch(s -> s.weight() == shares.get(0).weight());
        List<Drift> drifts = alike ? drifts(change) : List.of();
        SeamChange now = change;
        boolean any = false;
        for (int i = 0; i < drifts.size(); i++) {
            if (Math.abs(drifts.get(i).by()) > ENOUGH) {
                Optional<SeamChange> next = solved(now, shares(now), i, drifts.get(i));
                if (next.isEmpty()) {
                    return Optional.empty();
                }
                now = next.get();
                any = true;
            }
        }
        return any ? Optional.of(now) : Optional.empty();
    }

    private Optional<SeamChange> solved(SeamChange now, List<Share> shares, int pair, Drift of) {
        try {
            double low = drift(with(now, shares, of, LEAST), pair);
            double sign = drift(with(now, shares, of, 1 - LEAST), pair) >= low ? 1 : -1;
            double found = Root.between(
                    s -> sign * drift(with(now, shares, of, s), pair),
                    LEAST,
                    1 - LEAST,
                    CLOSE,
                    Refusal.of("even-not-met"));
            SeamChange shared = with(now, shares, of, found);
            return Math.abs(drift(shared, pair)) <= ENOUGH ? Optional.of(shared) : Optional.empty();
        } catch (Refusal none) {
            return Optional.empty();
        }
    }

    private List<Share> shares(SeamChange change) throws Refusal {
        return new SeamWork(seams.before(), change, seams.lines()).shares();
    }

    /** By how much the two edges of each pair whose ends are all fixed drift apart under a change. */
    private List<Drift> drifts(SeamChange change) throws Refusal {
        List<Drift> drifts = new ArrayList<>();
        for (SeamPairs.Pair pair : seams.moved(new SeamWork(seams.before(), change, seams.lines()).tried())) {
            if (pair.fixed()) {
                drifts.add(new Drift(pair.first().edge(), pair.second().edge(), pair.drift()));
            }
        }
        return drifts;
    }

    private boolean same(EdgeRef one, EdgeRef other) {
        Pattern before = seams.before();
        return one.edge().equals(other.edge()) && before.piece(one.piece()).equals(before.piece(other.piece()));
    }

    private double drift(SeamChange tried, int pair) throws Refusal {
        return drifts(tried).get(pair).by();
    }

    /** The first edge of a pair takes this part of what both take. */
    private SeamChange with(SeamChange now, List<Share> shares, Drift of, double first) {
        List<Share> all = new ArrayList<>();
        for (Share share : shares) {
            double weight = same(share.edge(), of.first())
                    ? 2 * first
                    : same(share.edge(), of.second()) ? 2 * (1 - first) : share.weight();
            all.add(new Share(share.edge(), weight));
        }
        return now.withShares(all.toArray(new Share[0]));
    }

    /** Who takes how much. */
    static List<Finding> findings(Pattern pattern, SeamChange change) {
        double whole = change.shares().stream().mapToDouble(Share::weight).sum();
        List<Finding> findings = new ArrayList<>();
        for (Share share : change.shares()) {
            Piece piece = pattern.piece(share.edge().piece()).orElseThrow();
            findings.add(Finding.of("seam-share", Severity.NOTE, piece.name())
                    .with("edge", share.edge().edge())
                    .with("part.percent", 100 * share.weight() / whole));
        }
        return findings;
    }
}
