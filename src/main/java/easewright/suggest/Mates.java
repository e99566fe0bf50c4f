package easewright.suggest;

import easewright.geom.Segment;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds edges that are sewn together: by what they are for, and by near-equal sewn length. How much longer one side may
 * be is common practice: a back shoulder is eased in by up to 15 mm, a cap by up to 60 mm, a back inseam stretched by up
 * to 12 mm, a waist eased into its band by up to 30 mm, half a bodice onto half a skirt by up to 15 mm.
 */
final class Mates {
    /** Sides nearer than this measure the same on any tape, mm: half of what is shown. */
    private static final double ALIKE = 0.05;

    /** A difference smaller than this is no ease but drawing, mm. */
    private static final double DRAWING = 2.5;

    /** A band of rib is cut no shorter than this part of its neck, common practice. */
    private static final double SHORTEST_BAND = 0.7;

    private final Pattern pattern;
    private final GarmentMeasures measures;
    private final List<Suggestion> found = new ArrayList<>();
    private final Set<EdgeRef> taken = new HashSet<>();
    private final Set<String> names = new HashSet<>();

    private Mates(Pattern pattern) {
        this.pattern = pattern;
        measures = Measures.of(pattern.withMates(List.of()));
        pattern.mates().forEach(m -> {
            m.first().forEach(e -> taken.add(one(e)));
            m.second().forEach(e -> taken.add(one(e)));
            names.add(m.name());
        });
    }

    /** However often it counts, and by whichever name its piece is called. */
    private EdgeRef one(EdgeRef ref) {
        return EdgeRef.of(pattern.piece(ref.piece()).map(Piece::id).orElse(ref.piece()), ref.edge());
    }

    static List<Suggestion> find(Sheet sheet) {
        Mates mates = new Mates(sheet.pattern());
        mates.pairs(EdgeRole.SHOULDER, "shoulder", 15);
        mates.sleeves();
        mates.sameNames();
        mates.underarms();
        mates.bands();
        mates.neckBands();
        mates.waistSeams();
        mates.leftOver();
        return mates.found;
    }

    private record Side(Piece piece, Edge edge, double mm) {
        EdgeRef ref() {
            return EdgeRef.of(piece.id(), edge.name());
        }
    }

    private List<Side> sides(EdgeRole role) {
        List<Side> sides = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            for (Edge edge : piece.edges()) {
                EdgeRef ref = EdgeRef.of(piece.id(), edge.name());
                if (edge.role() == role && !taken.contains(ref)) {
                    measures.piece(piece.id())
                            .flatMap(m -> m.edge(edge.name()))
                            .ifPresent(m -> sides.add(new Side(piece, edge, m.mm())));
                }
            }
        }
        return sides;
    }

    private static boolean isBack(Piece piece) {
        return Vocabulary.has(piece.name(), "back");
    }

    /** Two edges of the same role on two pieces. */
    private void pairs(EdgeRole role, String name, double ease) {
        List<Side> sides = sides(role);
        while (sides.size() >= 2) {
            Side one = sides.get(0);
            Optional<Side> two = sides.stream()
                    .filter(s -> s.piece() != one.piece() && Math.abs(s.mm() - one.mm()) <= ease)
                    .min(Comparator.comparingDouble(s -> Math.abs(s.mm() - one.mm())));
            sides.remove(one);
            if (two.isPresent()) {
                sides.remove(two.get());
                pair(name, one, two.get(), 0.9);
            }
        }
    }

    /** The back, being the one that is eased or stretched, goes first. */
    private void pair(String name, Side one, Side two, double sure) {
        boolean swap = isBack(two.piece()) && !isBack(one.piece()) && Math.abs(one.mm() - two.mm()) > DRAWING;
        Side first = swap ? two : one;
        Side second = swap ? one : two;
        add(name, List.of(first.ref()), List.of(second.ref()), List.of(first, second), first.mm(), second.mm(), sure);
    }

    private void add(
            String name,
            List<EdgeRef> first,
            List<EdgeRef> second,
            List<Side> sides,
            double one,
            double two,
            double sure) {
        double ease = Math.abs(one - two) <= DRAWING ? 0 : Math.round(one - two);
        String unique = name;
        for (int i = 2; !names.add(unique); i++) {
            unique = name + " " + i;
        }
        sides.forEach(s -> taken.add(s.ref()));
        Mate mate = new Mate(unique, first, second, ease);
        List<Segment> shown = sides.stream()
                .flatMap(s -> s.edge().on(s.piece().outline()).segments().stream())
                .toList();
        Map<String, String> meeting = new MeetingNotches(pattern, mate).names();
        double apart = Math.abs(one - two);
        String code = apart < ALIKE ? "same-length" : ease == 0 ? "about-length" : "near-length";
        found.add(new MateSuggestion(
                mate,
                shown,
                meeting,
                one,
                two,
                new Reason(code, Map.of("first", one, "second", two, "apart", apart), sure)));
    }

    /** Every cap goes into the armholes that are together about as long. */
    private void sleeves() {
        List<Side> holes = sides(EdgeRole.ARMHOLE);
        for (Side cap : sides(EdgeRole.CAP)) {
            double sum = holes.stream().mapToDouble(Side::mm).sum();
            if (holes.size() == 2 && cap.mm() - sum > -15 && cap.mm() - sum < 60) {
                List<Side> back = new ArrayList<>(holes);
                back.sort(Comparator.comparing((Side s) -> !isBack(s.piece())));
                List<Side> all = new ArrayList<>(back);
                all.add(0, cap);
                add(
                        "sleeve in armhole",
                        List.of(cap.ref()),
                        back.stream().map(Side::ref).toList(),
                        all,
                        cap.mm(),
                        sum,
                        0.85);
                holes = List.of();
            }
        }
    }

    /** Seams of the same name on a front and a back, or on any two pieces. */
    private void sameNames() {
        List<Side> sides = new ArrayList<>(sides(EdgeRole.SEAM));
        while (!sides.isEmpty()) {
            Side one = sides.remove(0);
            if (!one.edge().name().matches("(side|inseam|outseam)( \\d)?")) {
                continue;
            }
            double most = Math.max(12, 0.03 * one.mm());
            Optional<Side> two = sides.stream()
                    .filter(s -> s.piece() != one.piece())
                    .filter(s -> s.edge()
                            .name()
                            .split(" ")[0]
                            .equals(one.edge().name().split(" ")[0]))
                    .filter(s -> Math.abs(s.mm() - one.mm()) <= most)
                    .min(Comparator.comparingDouble(s -> Math.abs(s.mm() - one.mm())));
            if (two.isPresent()) {
                sides.remove(two.get());
                String name = one.edge().name().replaceAll(" \\d$", "");
                pair(name.equals("side") ? "side seam" : name, one, two.get(), 0.9);
            }
        }
    }

    /** The two long seams of one sleeve. */
    private void underarms() {
        List<Side> sides = sides(EdgeRole.SEAM);
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
                Side one = sides.get(i);
                Side two = sides.get(j);
                boolean sleeve = one.piece() == two.piece()
                        && one.edge().name().endsWith("underarm")
                        && two.edge().name().endsWith("underarm");
                if (sleeve && Math.abs(one.mm() - two.mm()) < 0.05 * one.mm()) {
                    pair("sleeve seam", one, two, 0.9);
                }
            }
        }
    }

    /** A band goes on all waist edges of the other pieces together. */
    private void bands() {
        List<Side> waists = sides(EdgeRole.WAIST);
        List<Side> bands = waists.stream()
                .filter(s -> !has(s.piece(), EdgeRole.HEM) && !isBodice(s.piece()))
                .toList();
        List<Side> others = waists.stream()
                .filter(s -> !bands.contains(s) && has(s.piece(), EdgeRole.HEM))
                .toList();
        if (bands.size() != 1 || others.isEmpty()) {
            return;
        }
        double sum = others.stream().mapToDouble(s -> s.mm() * times(s.piece())).sum();
        Side band = bands.get(0);
        double whole = band.mm() * times(band.piece());
        double more = sum - whole;
        // The band is longer by its underlap, or shorter where the waist is eased into it.
        if (more > -80 && more < 30) {
            List<Side> all = new ArrayList<>(others);
            all.add(band);
            add("waistband", others.stream().map(s -> times(s)).toList(), List.of(times(band)), all, sum, whole, 0.75);
        }
    }

    /** A band, cut whole or on the fold, goes on all necks together; of cloth that stretches it may be shorter. */
    private void neckBands() {
        List<Side> necks = sides(EdgeRole.NECK).stream()
                .filter(s -> has(s.piece(), EdgeRole.SHOULDER))
                .toList();
        List<Side> bands = sides(EdgeRole.SEAM).stream()
                .filter(s -> Vocabulary.has(s.piece().name(), "neck")
                        && Vocabulary.has(s.piece().name(), "band", "rib", "binding"))
                .toList();
        Optional<Side> band = bands.stream()
                .filter(s -> bands.stream().allMatch(o -> o.piece() == s.piece()))
                .filter(s -> !s.edge().name().startsWith("inner"))
                .max(Comparator.comparingDouble(Side::mm));
        if (band.isEmpty() || necks.isEmpty()) {
            return;
        }
        double sum = necks.stream().mapToDouble(s -> s.mm() * times(s.piece())).sum();
        double whole = band.get().mm() * times(band.get().piece());
        if (whole > SHORTEST_BAND * sum && whole < sum + 15) {
            List<Side> all = new ArrayList<>(necks);
            all.add(band.get());
            List<EdgeRef> refs = necks.stream().map(Mates::times).toList();
            add("neck band", refs, List.of(times(band.get())), all, sum, whole, 0.75);
        }
    }

    /** The front of a bodice on the front of a skirt, and the back on the back; only if each finds one of its own. */
    private void waistSeams() {
        List<Side> waists = sides(EdgeRole.WAIST);
        List<Side> bodices = waists.stream().filter(s -> isBodice(s.piece())).toList();
        List<Side> skirts = new ArrayList<>(waists.stream()
                .filter(s -> has(s.piece(), EdgeRole.HEM) && !isBodice(s.piece()))
                .toList());
        Map<Side, Side> pairs = new LinkedHashMap<>();
        for (Side bodice : bodices) {
            skirts.stream()
                    .filter(s -> isBack(s.piece()) == isBack(bodice.piece()))
                    .filter(s -> times(s.piece()) == times(bodice.piece()) && Math.abs(s.mm() - bodice.mm()) <= 15)
                    .min(Comparator.comparingDouble(s -> Math.abs(s.mm() - bodice.mm())))
                    .ifPresent(s -> {
                        pairs.put(bodice, s);
                        skirts.remove(s);
                    });
        }
        if (pairs.size() == bodices.size() && skirts.isEmpty()) {
            pairs.forEach((bodice, skirt) -> pair("waist seam", bodice, skirt, 0.75));
        }
    }

    private static boolean has(Piece piece, EdgeRole role) {
        return piece.edges().stream().anyMatch(e -> e.role() == role);
    }

    private static boolean isBodice(Piece piece) {
        return has(piece, EdgeRole.SHOULDER) || has(piece, EdgeRole.ARMHOLE);
    }

    private static int times(Piece piece) {
        return piece.times() * (piece.onFold() ? 2 : 1);
    }

    private static EdgeRef times(Side side) {
        return new EdgeRef(side.piece().id(), side.edge().name(), times(side.piece()));
    }

    /** Seams left over that have just one other of their length. */
    private void leftOver() {
        List<Side> sides = sides(EdgeRole.SEAM);
        for (Side one : List.copyOf(sides)) {
            List<Side> alike = sides.stream()
                    .filter(s -> s.piece() != one.piece() && Math.abs(s.mm() - one.mm()) <= 0.01 * one.mm() + 1)
                    .toList();
            if (sides.contains(one) && alike.size() == 1) {
                Side two = alike.get(0);
                boolean mutual = sides.stream()
                                .filter(s ->
                                        s.piece() != two.piece() && Math.abs(s.mm() - two.mm()) <= 0.01 * two.mm() + 1)
                                .count()
                        == 1;
                if (mutual) {
                    sides.remove(one);
                    sides.remove(two);
                    pair(one.edge().name() + " and " + two.edge().name(), one, two, 0.45);
                }
            }
        }
    }
}
