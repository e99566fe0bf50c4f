package easewright.suggest;

import easewright.pattern.EdgeRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Seams that go round: sleeves, bands and waists, each judged by all edges it takes together. How much longer one side
 * may be is common practice: a cap is eased in by up to 60 mm, a waist into its band by up to 30 mm, half a bodice onto
 * half a skirt by up to 15 mm.
 */
final class OneToSeveral {
    /** A band of rib is cut no shorter than this part of its neck, common practice. */
    private static final double SHORTEST_BAND = 0.7;

    /** The only cap and the only armholes of a garment belong together if it is no shorter than this part of them. */
    private static final double SHORTEST_CAP = 0.8;

    /** And no longer than a full one that is gathered into them, common practice. */
    private static final double LONGEST_CAP = 1.7;

    private OneToSeveral() {}

    /** Every cap goes into the armholes that are together about as long: those of a front, a back and perhaps a yoke. */
    static void sleeves(UnsewnEdges unsewn) {
        List<SeamSide> holes = new ArrayList<>();
        for (SeamSide hole : unsewn.of(EdgeRole.ARMHOLE)) {
            // A whole yoke has those of both sides, of which a sleeve takes one.
            if (!hole.onYoke() || holes.stream().noneMatch(h -> h.piece() == hole.piece())) {
                holes.add(hole);
            }
        }
        double sum = holes.stream().mapToDouble(SeamSide::mm).sum();
        List<SeamSide> caps = unsewn.of(EdgeRole.CAP);
        Optional<SeamSide> cap = caps.stream()
                .filter(c -> c.mm() - sum > -15 && c.mm() - sum < 60)
                .findFirst();
        long besideYokes = holes.stream().filter(h -> !h.onYoke()).count();
        if (besideYokes != 2) {
            return;
        }
        holes.sort(Comparator.comparing(s -> !s.onBack()));
        if (cap.isPresent()) {
            unsewn.sew("sleeve in armhole", cap.get(), holes, 0.85);
        } else if (caps.size() == 1
                && caps.get(0).mm() > SHORTEST_CAP * sum
                && caps.get(0).mm() < LONGEST_CAP * sum) {
            unsewn.sewApart("sleeve in armhole", caps.get(0), holes, "cap-apart");
        }
    }

    /** A band goes on all waist edges of the other pieces together. */
    static void waistbands(UnsewnEdges unsewn) {
        List<SeamSide> waists = unsewn.of(EdgeRole.WAIST);
        List<SeamSide> bands = waists.stream()
                .filter(s -> !s.pieceHas(EdgeRole.HEM) && !s.onBodice())
                .toList();
        List<SeamSide> others = waists.stream()
                .filter(s -> !bands.contains(s) && s.pieceHas(EdgeRole.HEM))
                .toList();
        if (bands.size() != 1 || others.isEmpty()) {
            return;
        }
        Stream.concat(Stream.of(bands.get(0)), bands.get(0).oneLayer().stream())
                .filter(band -> fitsRound(others, band))
                .findFirst()
                .ifPresent(band -> {
                    if (more(others, band) <= -Underlap.NARROWEST) {
                        unsewn.sewRoundWithUnderlap("waistband", others, band, 0.7);
                    } else {
                        unsewn.sewRound("waistband", others, band, 0.75);
                    }
                });
    }

    /** Whether a band is longer by its underlap, or shorter where the waist is eased into it. */
    private static boolean fitsRound(List<SeamSide> waists, SeamSide band) {
        double more = more(waists, band);
        return more > -80 && more < 30;
    }

    private static double more(List<SeamSide> waists, SeamSide band) {
        return SeamSide.wholeLength(waists) - band.wholeLength();
    }

    /** A band, cut whole or on the fold, goes on all necks together; of cloth that stretches it may be shorter. */
    static void neckBands(UnsewnEdges unsewn) {
        List<SeamSide> necks = unsewn.of(EdgeRole.NECK).stream()
                .filter(s -> s.pieceHas(EdgeRole.SHOULDER))
                .toList();
        List<SeamSide> bands = unsewn.of(EdgeRole.SEAM).stream()
                .filter(s -> Vocabulary.has(s.piece().name(), "neck")
                        && Vocabulary.has(s.piece().name(), "band", "rib", "binding"))
                .toList();
        Optional<SeamSide> band = bands.stream()
                .filter(s -> bands.stream().allMatch(o -> o.piece() == s.piece()))
                .filter(s -> !s.edge().name().startsWith("inner"))
                .max(Comparator.comparingDouble(SeamSide::mm));
        if (band.isEmpty() || necks.isEmpty()) {
            return;
        }
        double sum = SeamSide.wholeLength(necks);
        double whole = band.get().wholeLength();
        if (whole > SHORTEST_BAND * sum && whole < sum + 15) {
            unsewn.sewRound("neck band", necks, band.get(), 0.75);
        }
    }

    /** The front of a bodice on the front of a skirt, and the back on the back; only if each finds one of its own. */
    static void waistSeams(UnsewnEdges unsewn) {
        List<SeamSide> waists = unsewn.of(EdgeRole.WAIST);
        List<SeamSide> bodices = waists.stream().filter(SeamSide::onBodice).toList();
        List<SeamSide> skirts = new ArrayList<>(waists.stream()
                .filter(s -> s.pieceHas(EdgeRole.HEM) && !s.onBodice())
                .toList());
        Map<SeamSide, SeamSide> pairs = new LinkedHashMap<>();
        for (SeamSide bodice : bodices) {
            skirts.stream()
                    .filter(s -> s.onBack() == bodice.onBack())
                    .filter(s -> s.times() == bodice.times() && s.apart(bodice) <= 15)
                    .min(Comparator.comparingDouble(s -> s.apart(bodice)))
                    .ifPresent(s -> {
                        pairs.put(bodice, s);
                        skirts.remove(s);
                    });
        }
        if (pairs.size() == bodices.size() && skirts.isEmpty()) {
            pairs.forEach((bodice, skirt) -> unsewn.sew("waist seam", bodice, skirt, 0.75));
        }
    }
}
