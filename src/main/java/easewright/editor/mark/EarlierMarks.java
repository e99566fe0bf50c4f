package easewright.editor.mark;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.NumberedNames;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was marked in earlier states of a pattern, for pieces that come back to the table.
 *
 * @param newestFirst the states, all at one scale
 * @param spokenOf    ids of pieces of which something was said for sure, were it only a name
 */
record EarlierMarks(List<Pattern> newestFirst, Set<String> spokenOf) {
    /** Outlines that agree this well are one, mm. */
    private static final double SAME = 1e-6;

    /**
     * At the scale of the last state, so that marks made before the scale was set count as well. What rests is newer than
     * any state: it was gathered from all of them when its layers were left out, and lengths stated in it may have been
     * brought to another scale since.
     *
     * @param states oldest first
     * @param drawn  the pieces as the drawing alone gives them, by their ids
     */
    static EarlierMarks of(SvgFile svg, List<Pattern> states, Map<String, Piece> drawn) throws SvgProblem {
        Pattern present = states.get(states.size() - 1);
        List<Pattern> all = new ArrayList<>(states);
        Set<String> spokenOf = new HashSet<>();
        svg.resting().ifPresent(resting -> {
            all.add(resting);
            resting.pieces().forEach(p -> spokenOf.add(p.id()));
        });
        if (svg.marked()) {
            svg.pattern().pieces().forEach(p -> spokenOf.add(p.id()));
        }
        for (Piece piece : present.pieces()) {
            Piece bare = drawn.get(piece.id());
            if (bare == null || isRenamed(bare, piece)) {
                spokenOf.add(piece.id());
            }
        }
        for (int i = 1; i < states.size(); i++) {
            spokenOf.addAll(renamed(states.get(i - 1), states.get(i)));
        }
        List<Pattern> turned = new ArrayList<>(svg.allAt(present.scale(), all));
        Collections.reverse(turned);
        return new EarlierMarks(List.copyOf(turned), Set.copyOf(spokenOf));
    }

    /** Pieces of which nothing else changed; with the layers that are read, the name in the drawing may be another. */
    private static List<String> renamed(Pattern before, Pattern after) {
        List<String> there = before.pieces().stream().map(Piece::id).toList();
        if (!there.equals(after.pieces().stream().map(Piece::id).toList())) {
            // Other layers were read, and words that stood on one piece may stand on another now.
            return List.of();
        }
        return after.pieces().stream()
                .filter(p -> withId(before, p.id())
                        .filter(b -> isRenamed(b, p) && p.withName(b.name()).equals(b))
                        .isPresent())
                .map(Piece::id)
                .toList();
    }

    private static boolean isRenamed(Piece bare, Piece piece) {
        // The number that a piece without a name has is that of its place among those that were read then.
        boolean numbers = NumberedNames.isNumbered(bare.name())
                && withoutDigits(bare.name()).equals(withoutDigits(piece.name()));
        return !numbers && !piece.name().equals(bare.name());
    }

    private static String withoutDigits(String name) {
        return name.replaceAll("\\d", "");
    }

    /** The piece as it was last, if its line was then where it is now. */
    Optional<Piece> piece(Piece bare) {
        for (Pattern state : newestFirst) {
            for (Piece then : state.pieces()) {
                boolean itself = then.id().equals(bare.id()) && same(then.outline(), bare.outline());
                if (itself || isOtherLineOf(bare, then)) {
                    return Optional.of(then);
                }
            }
        }
        return Optional.empty();
    }

    /** Whether what was marked is another line of the same piece: the stitching line inside the cutting line. */
    private static boolean isOtherLineOf(Piece bare, Piece then) {
        return then.riders().stream().anyMatch(r -> r.id().equals(bare.id()))
                && bare.riders().stream()
                        .filter(r -> r.id().equals(then.id()))
                        .flatMap(r -> r.segments().stream())
                        .map(Segment::box)
                        .reduce(Box::union)
                        .filter(box -> same(box, then.outline().box()))
                        .isPresent();
    }

    /**
     * Whether an outline was none of the pieces when those of its layer were last there.
     *
     * @param besides whether a piece lies in the same layer
     */
    boolean wasNoPiece(Piece bare, Predicate<Piece> besides) {
        return newestFirst.stream()
                .filter(state -> state.pieces().stream().anyMatch(besides))
                .findFirst()
                .filter(state -> state.pieces().stream()
                        .noneMatch(p -> p.id().equals(bare.id())
                                || p.riders().stream().anyMatch(r -> r.id().equals(bare.id()))))
                .isPresent();
    }

    /**
     * The pieces that are not there now, as they were last, with the levels and seams that they had.
     *
     * @param asleep whether a piece lies in a layer that is not read
     */
    Pattern resting(Pattern now, Predicate<Piece> asleep) {
        Set<String> known = new HashSet<>();
        addLines(known, now);
        List<Piece> pieces = new ArrayList<>();
        List<Level> levels = new ArrayList<>();
        List<Mate> mates = new ArrayList<>();
        for (Pattern state : newestFirst) {
            Pattern part = state.only(state.pieces().stream()
                    .filter(p -> !known.contains(p.id()) && asleep.test(p))
                    .toList());
            pieces.addAll(part.pieces());
            part.levels().stream()
                    .filter(l -> levels.stream().noneMatch(o -> o.name().equals(l.name())))
                    .forEach(levels::add);
            part.mates().stream()
                    .filter(m -> mates.stream().noneMatch(o -> o.name().equals(m.name())))
                    .forEach(mates::add);
            // An older state may have the same piece by another of its lines.
            addLines(known, part);
        }
        boolean said = pieces.stream().anyMatch(this::isSaid);
        Pattern bare = Pattern.bare(said ? pieces : List.of(), now.scale());
        return said ? bare.withLevels(levels).withMates(mates) : bare;
    }

    /** Adds the ids of the pieces and of the lines that ride on them. */
    private static void addLines(Set<String> ids, Pattern pattern) {
        for (Piece piece : pattern.pieces()) {
            ids.add(piece.id());
            piece.riders().stream().map(Rider::id).forEach(ids::add);
        }
    }

    /** Whether something was marked on the piece, but on a line that was not where it is now. */
    boolean lost(Piece bare) {
        return piece(bare).isEmpty()
                && newestFirst.stream()
                        .flatMap(state -> withId(state, bare.id()).stream())
                        .anyMatch(this::isSaid);
    }

    /** Whether anything was said of a piece, were it only its name. */
    boolean isSaid(Piece piece) {
        return isMarked(piece) || spokenOf.contains(piece.id());
    }

    /** Whether anything but its name was said of a piece. */
    static boolean isMarked(Piece piece) {
        return !piece.edges().isEmpty()
                || !piece.levels().isEmpty()
                || !piece.darts().isEmpty()
                || !piece.notches().isEmpty()
                || piece.grain().isPresent()
                || piece.onFold()
                || piece.times() > 1
                || piece.size().isPresent()
                || piece.side() != Side.BOTH
                || piece.drawn() != LineKind.STITCHING
                || piece.allowance() > 0
                || piece.riders().stream().anyMatch(r -> r.kind() == Rider.Kind.PARALLEL);
    }

    /** With the levels that pieces are marked at, and with the seams that pieces had before some of them went. */
    Pattern levelsAndMates(Pattern pattern, Set<String> back) {
        Pattern now = pattern;
        List<Pattern> newer = new ArrayList<>();
        for (Pattern state : newestFirst) {
            now = levels(now, state, back);
            now = mates(now, state, back, newer);
            newer.add(state);
        }
        return now;
    }

    private static Pattern levels(Pattern pattern, Pattern state, Set<String> back) {
        Set<String> wanted = pattern.pieces().stream()
                .filter(p -> back.contains(p.id()))
                .flatMap(p -> p.levels().stream())
                .map(LevelMark::level)
                .collect(Collectors.toSet());
        List<Level> levels = new ArrayList<>(pattern.levels());
        for (Level level : state.levels()) {
            if (wanted.contains(level.name())
                    && levels.stream().noneMatch(l -> l.name().equals(level.name()))) {
                insert(levels, level, l -> indexOf(state.levels(), l));
            }
        }
        return pattern.withLevels(levels);
    }

    private static int indexOf(List<Level> levels, Level level) {
        return levels.stream().map(Level::name).toList().indexOf(level.name());
    }

    private static Pattern mates(Pattern pattern, Pattern state, Set<String> back, List<Pattern> newer) {
        List<Mate> mates = new ArrayList<>(pattern.mates());
        List<String> order = state.mates().stream().map(Mate::name).toList();
        for (Mate mate : state.mates()) {
            List<EdgeRef> first = there(pattern, mate.first());
            List<EdgeRef> second = there(pattern, mate.second());
            List<EdgeRef> both = Stream.concat(first.stream(), second.stream()).toList();
            boolean returns = !first.isEmpty()
                    && !second.isEmpty()
                    && both.stream().flatMap(ref -> meant(pattern, ref)).anyMatch(p -> back.contains(p.id()));
            // Where a later state had all these edges and not the seam, somebody took it away.
            boolean latest = newer.stream().noneMatch(s -> there(s, both).size() == both.size());
            if (returns && latest) {
                mates.removeIf(m -> first.containsAll(m.first()) && second.containsAll(m.second()));
                insert(mates, new Mate(mate.name(), first, second, mate.declaredEase()), m -> order.indexOf(m.name()));
            }
        }
        return pattern.withMates(mates);
    }

    /** Out of the edges of a seam those that a pattern has. */
    private static List<EdgeRef> there(Pattern pattern, List<EdgeRef> refs) {
        return refs.stream()
                .filter(ref ->
                        meant(pattern, ref).anyMatch(p -> p.edge(ref.edge()).isPresent()))
                .toList();
    }

    /** The pieces that are meant; a name may mean one of each size. */
    private static Stream<Piece> meant(Pattern pattern, EdgeRef ref) {
        Optional<Piece> one = pattern.piece(ref.piece());
        return one.isPresent() ? one.stream() : pattern.pieces().stream().filter(p -> p.isCalled(ref.piece()));
    }

    /** Puts it before the first that comes later in an order, or else at the end. */
    static <T> void insert(List<T> all, T one, ToIntFunction<T> order) {
        int at = 0;
        while (at < all.size() && order.applyAsInt(all.get(at)) <= order.applyAsInt(one)) {
            at++;
        }
        all.add(at, one);
    }

    private static Optional<Piece> withId(Pattern state, String id) {
        return state.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }

    private static boolean same(Outline one, Outline other) {
        if (one.equals(other)) {
            return true;
        }
        Box box = one.box();
        return same(box, other.box())
                && Math.abs(Math.abs(one.signedArea()) - Math.abs(other.signedArea()))
                        < SAME * (box.width() + box.height());
    }

    private static boolean same(Box a, Box b) {
        return Math.abs(a.minX() - b.minX()) < SAME
                && Math.abs(a.minY() - b.minY()) < SAME
                && Math.abs(a.maxX() - b.maxX()) < SAME
                && Math.abs(a.maxY() - b.maxY()) < SAME;
    }
}
