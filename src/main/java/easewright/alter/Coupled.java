package easewright.alter;

import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a change of one piece asks of the pieces sewn to it: a waistband after the waist, a sleeve after the armhole, a
 * collar after the neck. It is only offered, with what it brings along; nothing is done unasked.
 */
public final class Coupled {
    /** A seam line that changed by less than this was not altered, mm; the promise for even seams is 0.02. */
    private static final double ALTERED = 0.02;

    private Coupled() {}

    /**
     * What would make the two seam lines of a pair fit as before.
     *
     * @param mate        the pair
     * @param drift       by how much more its first line changed than its second, mm
     * @param alterations to be made in order on the changed pattern; each is a change like any other
     * @param result      the pattern with them
     * @param girths      by how much they change the girth at each level where they do, mm
     * @param findings    what else they bring
     */
    public record Offer(
            Mate mate,
            double drift,
            List<Alteration> alterations,
            Pattern result,
            Map<String, Double> girths,
            List<Finding> findings) {
        public Offer {
            alterations = List.copyOf(alterations);
            girths = Map.copyOf(girths);
            findings = List.copyOf(findings);
        }
    }

    /** Offers for every pair of which a change altered one side only, unless they now fit. Pairs that nothing fits are left to be trued. */
    public static List<Offer> offers(Pattern before, Pattern after) {
        GarmentMeasures was = Measures.of(before);
        GarmentMeasures is = Measures.again(after, before, was);
        List<Offer> offers = new ArrayList<>();
        for (MateWalk now : is.mates()) {
            was.mates().stream()
                    .filter(w -> w.mate().equals(now.mate()))
                    .findFirst()
                    .ifPresent(then -> offers.addAll(offers(after, is, then, now)));
        }
        return List.copyOf(offers);
    }

    private static List<Offer> offers(Pattern after, GarmentMeasures is, MateWalk then, MateWalk now) {
        double first = now.first() - then.first();
        double second = now.second() - then.second();
        boolean firstChanged = Math.abs(first) > ALTERED;
        boolean fits = Math.abs(now.drift()) <= ALTERED;
        if (fits || firstChanged == Math.abs(second) > ALTERED) {
            return List.of();
        }
        List<EdgeRef> others = firstChanged ? now.mate().second() : now.mate().first();
        double wanted = firstChanged ? first : second;
        List<Offer> offers = new ArrayList<>();
        for (EdgeLength.Manner how : manners(after, others)) {
            offer(after, is, now.mate(), first - second, others, wanted, how).ifPresent(offers::add);
        }
        return offers;
    }

    /** The fitting way first: sleeves and armholes at the underarm (C-228, docs/sources.md 4.2), all else by slashes. */
    private static List<EdgeLength.Manner> manners(Pattern pattern, List<EdgeRef> edges) {
        EdgeRole role = pattern.edge(edges.get(0)).map(Edge::role).orElse(EdgeRole.OTHER);
        return role == EdgeRole.CAP || role == EdgeRole.ARMHOLE
                ? List.of(EdgeLength.Manner.AT_ENDS)
                : List.of(EdgeLength.Manner.SLASHED);
    }

    private static Optional<Offer> offer(
            Pattern after,
            GarmentMeasures is,
            Mate mate,
            double drift,
            List<EdgeRef> edges,
            double wanted,
            EdgeLength.Manner how) {
        int times = edges.stream().mapToInt(EdgeRef::times).sum();
        List<Alteration> alterations = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Pattern now = after;
        for (EdgeRef ref : edges) {
            Optional<Piece> piece = now.piece(ref.piece());
            if (piece.isEmpty()) {
                return Optional.empty();
            }
            EdgeLength each = new EdgeLength(EdgeRef.of(piece.get().id(), ref.edge()), wanted / times, how, false);
            try {
                Altered altered = each.apply(now);
                now = altered.pattern();
                findings.addAll(altered.findings());
                alterations.add(each);
            } catch (Refusal doesNotFit) {
                return Optional.empty();
            }
        }
        return Optional.of(
                new Offer(mate, drift, alterations, now, girths(is, Measures.again(now, after, is)), findings));
    }

    private static Map<String, Double> girths(GarmentMeasures before, GarmentMeasures after) {
        Map<String, Double> changes = new TreeMap<>();
        for (Girth girth : before.girths()) {
            double now = after.girth(girth.level().name()).map(Girth::finished).orElse(girth.finished());
            if (Math.abs(now - girth.finished()) > ALTERED) {
                changes.put(girth.level().name(), now - girth.finished());
            }
        }
        return changes;
    }
}
