package easewright.editor.mark;

import easewright.geom.Point;
import easewright.measure.LevelSeams;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.PieceKind;
import easewright.suggest.Reference;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A level that lies on pieces of one size of a nest, in its other sizes. It is laid there as a drafter grades it: through
 * the same corner, notch or point of a dart where it goes through one, else as far down the grain from where its distance
 * is measured; and where it meets at the seams in the size that it comes from, it does so in the others.
 */
public final class LevelInSizes {
    /** What lies no farther from the height of a level is what the level was drawn to, mm: hands are not so exact. */
    private static final double DRAWN_TO = 0.05;

    /** As near as this two places are the same, mm. */
    private static final double NEAR = 1;

    /** Half of what a tape shows, mm: what lies no farther off lies alike. */
    private static final double ALIKE = 0.5;

    private LevelInSizes() {}

    /** Sizes in which a piece has not the level that the piece called alike has in another, in the pattern's order. */
    public static List<String> lacking(Pattern pattern, String level) {
        Set<String> lacking = new LinkedHashSet<>();
        if (PatternPart.severalSizes(pattern)) {
            for (List<Piece> alike : PieceKind.inSizes(pattern).values()) {
                List<Piece> without =
                        alike.stream().filter(p -> p.level(level).isEmpty()).toList();
                if (without.size() < alike.size()) {
                    without.forEach(p -> lacking.add(p.size().orElseThrow()));
                }
            }
        }
        return inOrder(pattern, lacking);
    }

    /** Other sizes in which the level lies elsewhere than it would be laid from a size, in the pattern's order. */
    public static List<String> unlike(Pattern pattern, String level, Optional<String> from) {
        Set<String> unlike = new LinkedHashSet<>();
        if (from.isPresent() && lacking(pattern, level).isEmpty()) {
            Pattern laid = laid(pattern, level, from, true);
            for (int i = 0; i < laid.pieces().size(); i++) {
                Piece is = pattern.pieces().get(i);
                if (!lies(is, laid.pieces().get(i), level)) {
                    unlike.add(is.size().orElseThrow());
                }
            }
        }
        return inOrder(pattern, unlike);
    }

    private static boolean lies(Piece is, Piece wouldBe, String level) {
        if (is == wouldBe) {
            return true;
        }
        LevelMark one = is.level(level).orElseThrow();
        LevelMark two = wouldBe.level(level).orElseThrow();
        if (one.through().isEmpty() || two.through().isEmpty()) {
            return one.along().equals(two.along());
        }
        return Math.abs(one.through().get().minus(two.through().get()).dot(is.downGrain())) <= ALIKE;
    }

    private static List<String> inOrder(Pattern pattern, Set<String> sizes) {
        return PatternPart.sizes(pattern).stream().filter(sizes::contains).toList();
    }

    /**
     * Puts a level on every piece that has it not, as it lies on the piece called alike of another size.
     *
     * @param from the size that is gone by before others
     */
    public static Pattern everywhere(Pattern pattern, String level, Optional<String> from) {
        return laid(pattern, level, from, false);
    }

    /** Lays a level in every other size as it lies in one, also where it lies elsewhere by now. */
    public static Pattern asIn(Pattern pattern, String level, String size) {
        return laid(pattern, level, Optional.of(size), true);
    }

    /** Puts a level on one piece as it lies on another of its name. */
    static Pattern onto(Pattern pattern, String level, Piece source, Piece piece) {
        return mark(source, level, piece)
                .map(mark -> pattern.withPiece(EdgeEdits.withLevel(piece, mark)))
                .orElse(pattern);
    }

    private static Pattern laid(Pattern pattern, String level, Optional<String> from, boolean anew) {
        Map<String, Piece> now = new LinkedHashMap<>();
        Set<String> sources = new HashSet<>();
        for (List<Piece> alike : PieceKind.inSizes(pattern).values()) {
            Optional<Piece> source = source(alike, level, from, anew);
            for (Piece piece : source.isPresent() ? alike : List.<Piece>of()) {
                boolean open = anew ? piece != source.get() : piece.level(level).isEmpty();
                Optional<LevelMark> mark = open ? mark(source.get(), level, piece) : Optional.empty();
                mark.ifPresent(m -> now.put(piece.id(), EdgeEdits.withLevel(piece, m)));
                source.flatMap(Piece::size).ifPresent(sources::add);
            }
        }
        Pattern laid = pattern.withPieces(
                pattern.pieces().stream().map(p -> now.getOrDefault(p.id(), p)).toList());
        return now.isEmpty() ? pattern : meeting(pattern, laid, level, sources, now.keySet());
    }

    /** Where lines meet in all sizes that they come from, those of the other sizes do. */
    private static Pattern meeting(Pattern before, Pattern laid, String level, Set<String> sources, Set<String> fresh) {
        for (String size : sources) {
            Pattern garment = PatternPart.ofSize(before, size).alone();
            if (meetings(garment, level).anyMatch(LevelSeams.Meeting::isApart)) {
                return laid;
            }
        }
        Pattern now = laid;
        for (String size : PatternPart.sizes(laid)) {
            PatternPart part = PatternPart.ofSize(now, size);
            Set<String> old = new HashSet<>();
            part.alone().pieces().stream()
                    .filter(p -> p.level(level).isPresent() && !fresh.contains(p.id()))
                    .forEach(p -> old.add(p.id()));
            boolean any = part.alone().pieces().stream().anyMatch(p -> fresh.contains(p.id()));
            if (any && meetings(part.alone(), level).anyMatch(LevelSeams.Meeting::isApart)) {
                now = part.back(LevelMeetings.meet(part.alone(), level, old));
            }
        }
        return now;
    }

    private static Stream<LevelSeams.Meeting> meetings(Pattern garment, String level) {
        Pattern alone = LevelMeetings.alone(garment, level);
        return LevelSeams.of(alone, Measures.of(alone)).stream()
                .filter(m -> m.level().equals(level));
    }

    private static Optional<Piece> source(List<Piece> alike, String level, Optional<String> from, boolean only) {
        List<Piece> having =
                alike.stream().filter(p -> p.level(level).isPresent()).toList();
        Optional<Piece> preferred =
                having.stream().filter(p -> p.size().equals(from)).findFirst();
        return only ? preferred : preferred.or(() -> having.stream().findFirst());
    }

    /** The level as it would be marked on a piece; empty where it would not reach that. */
    private static Optional<LevelMark> mark(Piece source, String level, Piece piece) {
        LevelMark mark = source.level(level).orElseThrow();
        if (mark.along().isPresent()) {
            return piece.edge(mark.along().get()).map(edge -> mark);
        }
        Point through = mark.through().orElseThrow();
        Point reference = mark.reference().orElseGet(() -> Reference.of(source));
        Optional<Point> anchor =
                reference.distance(Reference.of(source)) < NEAR ? drawnTo(source, through, piece) : Optional.empty();
        Optional<Point> from = same(source, level, reference, piece);
        Point zero = from.isPresent() ? reference : Reference.of(source);
        Point other = from.orElseGet(() -> Reference.of(piece));
        Point down = source.downGrain();
        Point away = through.minus(zero);
        Point below = piece.downGrain();
        double mm = anchor.map(a -> a.minus(other).dot(below)).orElseGet(() -> away.dot(down));
        Point wanted = other.plus(below.times(mm)).plus(below.quarterTurned().times(away.dot(down.quarterTurned())));
        return LevelEdits.on(piece, wanted)
                .map(at -> mark.placed(Optional.of(at), Optional.empty(), mark.turn(), Optional.of(other)));
    }

    /** On another piece the notch, corner or point of a dart to whose height a level was drawn on its own. */
    private static Optional<Point> drawnTo(Piece source, Point through, Piece piece) {
        Point down = source.downGrain();
        Stream<Point[]> pairs = Stream.concat(
                Stream.concat(
                        source.notches().stream()
                                .flatMap(n -> piece.notches().stream()
                                        .filter(o -> o.name().equals(n.name()))
                                        .map(o -> new Point[] {n.at(), o.at()})),
                        source.edges().stream().flatMap(e -> ends(e, piece))),
                source.darts().stream()
                        .flatMap(d -> piece.darts().stream()
                                .filter(o -> o.name().equals(d.name()))
                                .map(o -> new Point[] {d.point(), o.point()})));
        return pairs.filter(p -> Math.abs(p[0].minus(through).dot(down)) < DRAWN_TO)
                .map(p -> p[1])
                .findFirst();
    }

    private static Stream<Point[]> ends(Edge edge, Piece piece) {
        return piece.edge(edge.name()).stream()
                .flatMap(o -> Stream.of(new Point[] {edge.from(), o.from()}, new Point[] {edge.to(), o.to()}));
    }

    /** From where a distance is measured on another piece, if it can be told by what lies there on its own. */
    private static Optional<Point> same(Piece source, String level, Point reference, Piece piece) {
        if (reference.distance(Reference.of(source)) < NEAR) {
            return Optional.of(Reference.of(piece));
        }
        return source.levels().stream()
                .map(LevelMark::level)
                .filter(l -> !l.equals(level) && piece.level(l).isPresent())
                .filter(l -> LevelLies.from(source, l).distance(reference) < NEAR)
                .map(l -> LevelLies.from(piece, l))
                .findFirst()
                .or(() -> source.edges().stream()
                        .flatMap(e -> ends(e, piece))
                        .filter(p -> p[0].distance(reference) < NEAR)
                        .map(p -> p[1])
                        .findFirst());
    }
}
