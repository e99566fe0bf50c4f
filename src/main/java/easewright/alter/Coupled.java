package easewright.alter;

import easewright.measure.Cutting;
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
import easewright.pattern.PatternPart;
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
    static final double ALTERED = 0.02;

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

        /** The size in which the pair is sewn, where the pattern comes in several. */
        public Optional<String> size() {
            return alterations.stream()
                    .filter(Within.class::isInstance)
                    .flatMap(a -> ((Within) a).scope().size().stream())
                    .findFirst();
        }
    }

    /** Offers for every pair of which a change altered one side only, unless they now fit. Pairs that nothing fits are left to be trued. */
    public static List<Offer> offers(Pattern before, Pattern after) {
        return offers(List.of(before, after));
    }

    /**
     * The same after several changes: what those that altered one side only ask for together, less what has been done
     * for it since.
     *
     * @param course the pattern before the first change and after each, oldest first
     */
    public static List<Offer> offers(List<Pattern> course) {
        Pattern after = course.get(course.size() - 1);
        if (!PatternPart.severalSizes(after)) {
            return offersInOne(course);
        }
        List<Offer> offers = new ArrayList<>();
        for (String size : PatternPart.sizes(after)) {
            PatternPart part = PatternPart.ofSize(after, size);
            List<Pattern> garments = course.stream()
                    .map(p -> PatternPart.ofSize(p, size).alone())
                    .toList();
            for (Offer offer : offersInOne(garments)) {
                offers.add(inSize(size, offer, after, part));
            }
        }
        return List.copyOf(offers);
    }

    /** An offer for one size as an offer for the pattern of which it is a part. */
    private static Offer inSize(String size, Offer offer, Pattern after, PatternPart part) {
        List<Alteration> alterations = new ArrayList<>();
        Pattern result = part.back(offer.result()).withChanges(after.changes());
        for (Alteration each : offer.alterations()) {
            Alteration within = each instanceof Within sided
                    ? Within.of(new Scope(Optional.of(size), sided.scope().side()), sided.change())
                    : Within.of(Optional.of(size), each);
            alterations.add(within);
            result = result.withChange(within.note());
        }
        return new Offer(offer.mate(), offer.drift(), alterations, result, offer.girths(), offer.findings());
    }

    private static List<Offer> offersInOne(List<Pattern> course) {
        List<GarmentMeasures> measured = new ArrayList<>();
        for (int i = 0; i < course.size(); i++) {
            measured.add(
                    i == 0
                            ? Measures.of(course.get(0))
                            : Measures.again(course.get(i), course.get(i - 1), measured.get(i - 1)));
        }
        GarmentMeasures is = measured.get(measured.size() - 1);
        List<Offer> offers = new ArrayList<>();
        for (MateWalk now : is.mates()) {
            List<MateWalk> walks =
                    measured.stream().flatMap(m -> m.before(now).stream()).toList();
            offers.addAll(offers(course.get(course.size() - 1), is, now, Asked.of(walks)));
        }
        return List.copyOf(offers);
    }

    /**
     * What changes of one side alone left open.
     *
     * @param drift     by how much the first side changed more than the second in those changes, mm
     * @param firstLast whether the last of them that made the drift larger altered the first side
     */
    private record Asked(double drift, boolean firstLast) {
        static Asked of(List<MateWalk> walks) {
            double drift = 0;
            boolean firstLast = true;
            for (int i = 1; i < walks.size(); i++) {
                double first = walks.get(i).first() - walks.get(i - 1).first();
                double second = walks.get(i).second() - walks.get(i - 1).second();
                if (Math.abs(first) > ALTERED != Math.abs(second) > ALTERED) {
                    double next = drift + first - second;
                    firstLast = Math.abs(next) > Math.abs(drift) ? Math.abs(first) > ALTERED : firstLast;
                    drift = next;
                }
            }
            return new Asked(drift, firstLast);
        }
    }

    private static List<Offer> offers(Pattern after, GarmentMeasures is, MateWalk now, Asked asked) {
        if (Cutting.same(now.drift()) || Cutting.same(asked.drift())) {
            return List.of();
        }
        List<EdgeRef> others =
                asked.firstLast() ? now.mate().second() : now.mate().first();
        double wanted = asked.firstLast() ? asked.drift() : -asked.drift();
        List<Offer> offers = new ArrayList<>();
        for (EdgeLength.Manner how : manners(after, others)) {
            offer(after, is, now.mate(), asked.drift(), others, wanted, how).ifPresent(offers::add);
        }
        return offers;
    }

    /**
     * Sleeves and armholes at the underarm (C-228, docs/sources.md 4.2), what runs across by slashes. Seams that end at a
     * hem are left to {@link SeamMatch}: slashed across they would change everything else of the piece.
     */
    private static List<EdgeLength.Manner> manners(Pattern pattern, List<EdgeRef> edges) {
        EdgeRef first = edges.get(0);
        EdgeRole role = pattern.edge(first).map(Edge::role).orElse(EdgeRole.OTHER);
        if (role == EdgeRole.CAP || role == EdgeRole.ARMHOLE) {
            return List.of(EdgeLength.Manner.AT_ENDS);
        }
        boolean atHem = pattern.piece(first.piece())
                .flatMap(p -> p.edge(first.edge()).map(e -> EdgeAtEnd.isAtHem(p, e)))
                .orElse(false);
        return atHem ? List.of() : List.of(EdgeLength.Manner.SLASHED);
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
            Alteration each = Within.of(
                    Scope.forSeam(now, Optional.empty(), mate, piece.get()),
                    new EdgeLength(EdgeRef.of(piece.get().id(), ref.edge()), wanted / times, how, false));
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

    /** By how much each girth is another than before, mm, by its name; those that are the same are left out. */
    static Map<String, Double> girths(GarmentMeasures before, GarmentMeasures after) {
        Map<String, Double> changes = new TreeMap<>();
        // Those that are now: a limb's one girth may have become two, of which either may have changed.
        for (Girth girth : after.girths()) {
            before.girth(girth)
                    .map(was -> girth.finished() - was.finished())
                    .filter(by -> Math.abs(by) > ALTERED)
                    .ifPresent(by -> changes.put(girth.name(), by));
        }
        return changes;
    }
}
