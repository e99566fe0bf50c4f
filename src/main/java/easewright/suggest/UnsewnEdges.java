package easewright.suggest;

import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The edges of one garment that are sewn to none yet: each seam that is found takes its own away. */
final class UnsewnEdges {
    /** Sides nearer than this measure the same on any tape, mm: half of what is shown. */
    private static final double ALIKE = 0.05;

    /** Parts of a millimetre to which a length to ease in is kept. */
    private static final double EXACT = 1e4;

    /** How sure it is that edges of different length belong together. */
    private static final double APART = 0.45;

    private final Pattern pattern;
    private final GarmentMeasures measures;
    private final List<MateSuggestion> seams = new ArrayList<>();
    private final Set<EdgeRef> taken = new HashSet<>();

    UnsewnEdges(Pattern pattern) {
        this.pattern = pattern;
        measures = Measures.of(pattern.withMates(List.of()));
        pattern.mates().forEach(m -> {
            m.first().forEach(e -> taken.add(one(e)));
            m.second().forEach(e -> taken.add(one(e)));
        });
    }

    /** However often it counts, and by whichever name its piece is called. */
    private EdgeRef one(EdgeRef ref) {
        return EdgeRef.of(pattern.piece(ref.piece()).map(Piece::id).orElse(ref.piece()), ref.edge());
    }

    /** All pieces of the garment. */
    List<Piece> pieces() {
        return pattern.pieces();
    }

    /** Whether no seam has taken an edge, be it one of the pattern or one found since the edge was looked for. */
    boolean isFree(SeamSide side) {
        return !taken.contains(side.ref());
    }

    /** Those for some purposes, in the order of the pieces. */
    List<SeamSide> of(EdgeRole... roles) {
        List<EdgeRole> wanted = List.of(roles);
        List<SeamSide> sides = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            for (Edge edge : piece.edges()) {
                if (wanted.contains(edge.role()) && !taken.contains(EdgeRef.of(piece.id(), edge.name()))) {
                    measures.piece(piece.id())
                            .flatMap(m -> m.edge(edge.name()))
                            .ifPresent(m -> sides.add(new SeamSide(piece, edge, m.mm())));
                }
            }
        }
        return sides;
    }

    /** Sews one edge to one other. The back, being the one that is eased or stretched, goes first. */
    void sew(String name, SeamSide one, SeamSide two, double sure) {
        boolean swap = isSwapped(one, two);
        SeamSide first = swap ? two : one;
        SeamSide second = swap ? one : two;
        add(name, List.of(first.ref()), List.of(second.ref()), List.of(first, second), first.mm(), second.mm(), sure);
    }

    /**
     * The same with edges that are sewn as they lie, such as sides: where they differ, whether that is eased in or they are
     * to be made equal is a question. Nothing is taken for ease.
     */
    void sewAlike(String name, SeamSide one, SeamSide two, double sure) {
        if (Cutting.works(one.apart(two))) {
            sew(name, one, two, sure);
            return;
        }
        boolean swap = isSwapped(one, two);
        SeamSide first = swap ? two : one;
        SeamSide second = swap ? one : two;
        Map<String, Object> values = Map.of("first", first.mm(), "second", second.mm(), "apart", one.apart(two));
        Mate mate = new Mate(name, List.of(first.ref()), List.of(second.ref()), 0);
        add(mate, List.of(first, second), first.mm(), second.mm(), new Reason("seam-apart", values, sure));
    }

    private static boolean isSwapped(SeamSide one, SeamSide two) {
        return two.onBack() && !one.onBack() && !Cutting.works(one.apart(two));
    }

    /** Sews an edge to a piece that is drawn from it: what both differ by is drawing. */
    void sewCutToEdge(String name, SeamSide edge, SeamSide cut, String code, double sure) {
        Map<String, Object> values = Map.of("first", edge.mm(), "second", cut.mm(), "apart", edge.apart(cut));
        Mate mate = new Mate(name, List.of(edge.ref()), List.of(cut.ref()), 0);
        add(mate, List.of(edge, cut), edge.mm(), cut.mm(), new Reason(code, values, sure));
    }

    /** Sews one edge, counted once, to several. */
    void sew(String name, SeamSide one, List<SeamSide> others, double sure) {
        List<SeamSide> all = new ArrayList<>(others);
        all.add(0, one);
        double sum = others.stream().mapToDouble(SeamSide::mm).sum();
        List<EdgeRef> refs = others.stream().map(SeamSide::ref).toList();
        add(name, List.of(one.ref()), refs, all, one.mm(), sum, sure);
    }

    /**
     * Sews one edge to others that are as long as nobody would expect. No ease is taken for meant, and it is no more than a
     * guess: the person says what the difference is.
     */
    void sewApart(String name, SeamSide one, List<SeamSide> others, String code) {
        List<SeamSide> all = new ArrayList<>(others);
        all.add(0, one);
        double sum = others.stream().mapToDouble(SeamSide::mm).sum();
        List<EdgeRef> refs = others.stream().map(SeamSide::ref).toList();
        Map<String, Object> values = Map.of("first", one.mm(), "second", sum, "apart", Math.abs(one.mm() - sum));
        add(new Mate(name, List.of(one.ref()), refs, 0), all, one.mm(), sum, new Reason(code, values, APART));
    }

    /** The same with a band that is longer by its underlap, which is no ease. */
    void sewRoundWithUnderlap(String name, List<SeamSide> edges, SeamSide band, double sure) {
        List<SeamSide> all = new ArrayList<>(edges);
        all.add(band);
        double one = SeamSide.wholeLength(edges);
        double two = band.wholeLength();
        Reason reason = new Reason("underlap-length", Map.of("first", one, "second", two, "apart", two - one), sure);
        List<EdgeRef> refs = edges.stream().map(SeamSide::all).toList();
        add(new Mate(name, refs, List.of(band.all()), 0), all, one, two, reason);
    }

    /** Sews a band to several edges, as often as each goes round the body. */
    void sewRound(String name, List<SeamSide> edges, SeamSide band, double sure) {
        List<SeamSide> all = new ArrayList<>(edges);
        all.add(band);
        List<EdgeRef> refs = edges.stream().map(SeamSide::all).toList();
        add(name, refs, List.of(band.all()), all, SeamSide.wholeLength(edges), band.wholeLength(), sure);
    }

    private void add(
            String name,
            List<EdgeRef> first,
            List<EdgeRef> second,
            List<SeamSide> sides,
            double one,
            double two,
            double sure) {
        double apart = Math.abs(one - two);
        double ease = Cutting.works(apart) ? 0 : exact(one - two);
        String code = apart < ALIKE
                ? "same-length"
                : Cutting.same(apart) ? "about-length" : ease == 0 ? "about-length-works" : "near-length";
        Reason reason = new Reason(code, Map.of("first", one, "second", two, "apart", apart), sure);
        add(new Mate(name, first, second, ease), sides, one, two, reason);
    }

    /** A length to ease in is all that the sides differ by, not what is told of it: else the rest would be off. */
    private static double exact(double mm) {
        return Math.round(mm * EXACT) / EXACT;
    }

    private void add(Mate mate, List<SeamSide> sides, double one, double two, Reason reason) {
        sides.forEach(s -> taken.add(s.ref()));
        List<Segment> shown = sides.stream()
                .flatMap(s -> s.edge().on(s.piece().outline()).segments().stream())
                .toList();
        seams.add(new MateSuggestion(mate, shown, Map.of(), one, two, reason));
    }

    /** In the order in which they were found, each with a name of its own, which notches that meet along it take. */
    List<Suggestion> seams() {
        List<String> names =
                SeamNames.of(seams.stream().map(MateSuggestion::mate).toList(), pattern);
        List<Suggestion> named = new ArrayList<>();
        for (int i = 0; i < seams.size(); i++) {
            MateSuggestion seam = seams.get(i);
            Mate mate = new Mate(
                    names.get(i),
                    seam.mate().first(),
                    seam.mate().second(),
                    seam.mate().declaredEase());
            Map<String, String> meeting = new MeetingNotches(pattern, mate).names();
            named.add(new MateSuggestion(mate, seam.shown(), meeting, seam.first(), seam.second(), seam.reason()));
        }
        return named;
    }
}
