package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.suggest.BandUnderlap;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is sewn together, in words.
 *
 * @param edges all edges to choose from
 */
public record SeamsView(List<Seam> seams, List<EdgeChoice> edges) {
    public SeamsView {
        seams = List.copyOf(seams);
        edges = List.copyOf(edges);
    }

    /**
     * An edge to choose, or one of a side.
     *
     * @param piece id of its piece
     */
    public record EdgeChoice(EdgeRef ref, String piece, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * One seam.
     *
     * @param ease    declared
     * @param verdict how the two sides fit, in words
     * @param fits    whether they are the same for cutting, as everywhere (docs/decisions/0125)
     * @param halves  why halves count more than once, or that they should; empty where neither is so
     * @param count   whether that is to be asked
     * @param underlap what of a band may be its underlap
     * @param shown   its edges on the table
     */
    public record Seam(
            String name,
            List<EdgeChoice> first,
            List<EdgeChoice> second,
            String ease,
            String verdict,
            boolean fits,
            String halves,
            boolean count,
            Optional<BandUnderlap> underlap,
            List<Segment> shown) {
        public Seam {
            first = List.copyOf(first);
            second = List.copyOf(second);
            shown = List.copyOf(shown);
        }

        /** Whether an edge is sewn in it, on either side. */
        public boolean has(EdgeChoice edge) {
            return Stream.concat(first.stream(), second.stream())
                    .anyMatch(c -> c.piece().equals(edge.piece())
                            && c.ref().edge().equals(edge.ref().edge()));
        }
    }

    /** Less than this is no ease, mm. */
    private static final double NO_EASE = 0.05;

    public static SeamsView of(Desk desk) {
        Words words = desk.words();
        Pattern pattern = desk.pattern();
        List<Seam> seams = new ArrayList<>();
        for (Mate mate : sewn(pattern)) {
            Optional<MateWalk> walk = desk.reading().measures().mate(mate.name());
            boolean fits = fits(walk);
            boolean count = !HalvesSewn.counted(pattern, mate).equals(mate);
            seams.add(new Seam(
                    mate.name(),
                    choices(pattern, mate.first(), words),
                    choices(pattern, mate.second(), words),
                    words.entered(mate.declaredEase()),
                    walk.map(w -> verdict(pattern, w, fits, words)).orElse(words.of("editor.seam.unwalked")),
                    fits,
                    halves(pattern, mate, count, words),
                    count,
                    walk.flatMap(w -> BandUnderlap.of(pattern, w)),
                    shown(pattern, mate)));
        }
        List<EdgeChoice> edges = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            piece.edges().forEach(e -> edges.add(choice(pattern, EdgeRef.of(piece.id(), e.name()), words)));
        }
        return new SeamsView(seams, edges);
    }

    /** Where a fold was nothing is sewn; it stays with the pieces as long as they are two. */
    private static List<Mate> sewn(Pattern pattern) {
        return pattern.mates().stream()
                .filter(m -> !SidePair.isFold(pattern, m))
                .toList();
    }

    private static boolean fits(Optional<MateWalk> walk) {
        return walk.map(w -> Cutting.same(w.drift())).orElse(false);
    }

    /** Whether none of the seams is off. */
    static boolean allFit(Desk desk) {
        return sewn(desk.pattern()).stream()
                .allMatch(m -> fits(desk.reading().measures().mate(m.name())));
    }

    private static String verdict(Pattern pattern, MateWalk walk, boolean fits, Words words) {
        // Where there is ease, the side that misses some of it is the longer one all the same.
        boolean plain = Math.abs(walk.mate().declaredEase()) < NO_EASE;
        String drifts = !plain ? "ease" : walk.drift() > 0 ? "first" : "second";
        MateSides sides = MateSides.of(pattern, walk.mate());
        String said = words.of(
                fits ? "editor.seam.fits" : "editor.seam.drifts." + drifts,
                Map.of(
                        "one", sides.first(),
                        "other", sides.second(),
                        "first", walk.first(),
                        "second", walk.second(),
                        "ease.signed", walk.mate().declaredEase(),
                        "drift.signed", walk.drift(),
                        "apart", Math.abs(walk.drift())));
        return fits || !Cutting.works(walk.drift()) ? said : said + " " + words.of("editor.seam.works");
    }

    private static String halves(Pattern pattern, Mate mate, boolean count, Words words) {
        Mate asked = count ? HalvesSewn.counted(pattern, mate) : mate;
        List<String> halves = HalvesSewn.halves(pattern, asked).stream()
                .map(r -> pattern.piece(r.piece()).map(Piece::name).orElse(r.piece()))
                .distinct()
                .toList();
        String key = count ? "editor.seam.halves.ask" : "editor.seam.halves";
        return halves.isEmpty() ? "" : words.of(key, Map.of("pieces", halves));
    }

    private static List<EdgeChoice> choices(Pattern pattern, List<EdgeRef> refs, Words words) {
        return refs.stream().map(ref -> choice(pattern, ref, words)).toList();
    }

    private static EdgeChoice choice(Pattern pattern, EdgeRef ref, Words words) {
        String piece = pattern.piece(ref.piece()).map(Piece::name).orElse(ref.piece());
        String id = pattern.piece(ref.piece()).map(Piece::id).orElse(ref.piece());
        String key = ref.times() == 1 ? "editor.here.seam" : "editor.seam.times";
        return new EdgeChoice(ref, id, words.of(key, Map.of("piece", piece, "edge", ref.edge(), "times", ref.times())));
    }

    private static List<Segment> shown(Pattern pattern, Mate mate) {
        List<Segment> shown = new ArrayList<>();
        for (List<EdgeRef> side : List.of(mate.first(), mate.second())) {
            for (EdgeRef ref : side) {
                pattern.piece(ref.piece())
                        .ifPresent(p -> p.edge(ref.edge())
                                .ifPresent(e -> shown.addAll(e.on(p.outline()).segments())));
            }
        }
        return shown;
    }
}
