package easewright.alter;

import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.LevelSeams;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a drafter does about two seam lines that do not fit, however they came to be so: the shorter one is made longer or
 * the longer one shorter, by exactly what it is off, where that does the least harm. Where levels that met along the seam
 * go on meeting, at the hem end first, then where no girth changes and no other seam is put out (common practice). No
 * protected edge is moved, nor a side that is one.
 */
public final class SeamMatch {
    /** Of what is left over nobody sees anything, mm. */
    private static final double FITS = 0.01;

    private final Pattern pattern;

    /** Its pieces of the size in which the seam is sewn. */
    private final Pattern garment;

    private final GarmentMeasures is;
    private final MateWalk walk;

    /** Levels that meet along the seam, pinned from one end of it or the other. */
    private final Set<String> meeting;

    private SeamMatch(Pattern pattern, GarmentMeasures is, MateWalk walk) {
        this.pattern = pattern;
        this.garment = walk.size()
                .map(size -> PatternPart.ofSize(pattern, size).alone())
                .orElse(pattern);
        this.is = is;
        this.walk = walk;
        meeting = levels(garment, sized(is), m -> Cutting.same(m.off()));
    }

    private GarmentMeasures sized(GarmentMeasures measures) {
        return walk.size().map(measures::inSize).orElse(measures);
    }

    private Set<String> levels(Pattern of, GarmentMeasures measures, Predicate<LevelSeams.Meeting> such) {
        Set<String> sewn = Stream.concat(walk.mate().first().stream(), walk.mate().second().stream())
                .flatMap(ref -> of.piece(ref.piece()).stream())
                .map(Piece::id)
                .collect(Collectors.toSet());
        return LevelSeams.of(of, measures, sewn::contains).stream()
                .filter(m -> m.seam().equals(walk.mate().name()))
                .filter(such)
                .map(LevelSeams.Meeting::level)
                .collect(Collectors.toSet());
    }

    /**
     * One way of making a seam fit.
     *
     * @param edge    whose length changes; its piece by its id
     * @param by      by how much, mm
     * @param side    the side of the garment that changes; both where it changes alike on either
     * @param how     where the length goes in
     * @param atHem   whether it is let down or taken up at the hem
     * @param change  the change like any other
     * @param altered what comes of it
     * @param girths  by how much it changes the girth at each level where it does, mm
     */
    public record Choice(
            EdgeRef edge,
            double by,
            Side side,
            EdgeLength.Manner how,
            boolean atHem,
            Alteration change,
            Altered altered,
            Map<String, Double> girths) {
        public Choice {
            girths = Map.copyOf(girths);
        }
    }

    /** A choice with what speaks against it. */
    private record Tried(Choice choice, boolean partsLevels, int putOut, double girth) {
        static final Comparator<Tried> LEAST_HARM = Comparator.comparing((Tried t) -> t.partsLevels)
                .thenComparing(t -> !t.choice.atHem())
                .thenComparing(Tried::putOut)
                .thenComparing(Tried::girth);
    }

    /**
     * The best change of either side; none for a side that cannot be matched, and for both where they fit. First stands
     * that of a side which is as it was, where the other was changed; else the one that makes the shorter longer, by which
     * nothing that was drawn is lost.
     *
     * @param was measures of the pattern before it was changed
     * @param is  measures of the pattern
     */
    public static List<Choice> of(Pattern pattern, GarmentMeasures was, GarmentMeasures is, MateWalk walk) {
        return Cutting.same(walk.drift()) ? List.of() : all(pattern, was, is, walk);
    }

    /** The same also where the sides differ by so little that nobody need match them. */
    public static List<Choice> all(Pattern pattern, GarmentMeasures was, GarmentMeasures is, MateWalk walk) {
        SeamMatch match = new SeamMatch(pattern, is, walk);
        Mate mate = walk.mate();
        List<Choice> choices = new ArrayList<>();
        match.best(mate.first(), -walk.drift()).ifPresent(choices::add);
        match.best(mate.second(), walk.drift()).ifPresent(choices::add);
        if (secondFirst(was, walk)) {
            Collections.reverse(choices);
        }
        return List.copyOf(choices);
    }

    private static boolean secondFirst(GarmentMeasures was, MateWalk walk) {
        return firstAlone(was, walk).orElse(walk.drift() > 0);
    }

    /**
     * Whether of the two sides of a seam the first alone is another than before; empty where both are, or neither.
     *
     * @param was measures of the pattern before it was changed
     */
    public static Optional<Boolean> firstAlone(GarmentMeasures was, MateWalk walk) {
        Optional<MateWalk> then = was.before(walk);
        boolean first = then.filter(w -> Math.abs(w.first() - walk.first()) > Coupled.ALTERED)
                .isPresent();
        boolean second = then.filter(w -> Math.abs(w.second() - walk.second()) > Coupled.ALTERED)
                .isPresent();
        return first == second ? Optional.empty() : Optional.of(first);
    }

    private Optional<Choice> best(List<EdgeRef> side, double wanted) {
        List<Tried> tried = new ArrayList<>();
        for (EdgeRef ref : side) {
            Optional<Piece> piece = garment.piece(ref.piece());
            Optional<Edge> edge = piece.flatMap(p -> p.edge(ref.edge())).filter(e -> !e.isProtected());
            if (edge.isPresent()) {
                EdgeRef own = EdgeRef.of(piece.get().id(), ref.edge());
                Scope scope = Scope.forSeam(garment, walk.size(), walk.mate(), piece.get());
                for (EdgeLength.Manner how : manners(edge.get())) {
                    boolean atHem = how == EdgeLength.Manner.AT_LOWER_END && EdgeAtEnd.isAtHem(piece.get(), edge.get());
                    tried(scope, new EdgeLength(own, wanted / ref.times(), how, false), atHem)
                            .ifPresent(tried::add);
                }
            }
        }
        return tried.stream().min(Tried.LEAST_HARM).map(Tried::choice);
    }

    /** Of those that do equally little harm the first is taken. */
    private static List<EdgeLength.Manner> manners(Edge edge) {
        return switch (edge.role()) {
            case ARMHOLE, CAP -> List.of(EdgeLength.Manner.AT_ENDS);
            // A bodice cannot be slashed from its waist up to what is protected; its side seams can be let out there.
            case WAIST -> List.of(EdgeLength.Manner.SLASHED, EdgeLength.Manner.AT_ENDS);
            case NECK, HEM -> List.of(EdgeLength.Manner.SLASHED);
            default ->
                List.of(EdgeLength.Manner.AT_LOWER_END, EdgeLength.Manner.AT_UPPER_END, EdgeLength.Manner.SLASHED);
        };
    }

    private Optional<Tried> tried(Scope scope, EdgeLength length, boolean atHem) {
        Alteration change = Within.of(scope, length);
        try {
            Altered altered = change.apply(pattern);
            GarmentMeasures now = Measures.again(altered.pattern(), pattern, is);
            boolean fits =
                    now.mate(walk).filter(w -> Math.abs(w.drift()) <= FITS).isPresent();
            if (!fits) {
                return Optional.empty();
            }
            Map<String, Double> girths = Coupled.girths(is, now);
            double most = girths.values().stream().mapToDouble(Math::abs).sum();
            return Optional.of(new Tried(
                    new Choice(
                            length.edge(), length.amount(), scope.side(), length.how(), atHem, change, altered, girths),
                    partsLevels(altered.pattern(), now),
                    putOut(now),
                    most));
        } catch (Refusal cannotBeDoneThere) {
            return Optional.empty();
        }
    }

    /** Whether lines that met along the seam lie apart then, by more than works. */
    private boolean partsLevels(Pattern altered, GarmentMeasures now) {
        if (meeting.isEmpty()) {
            return false;
        }
        Pattern own = walk.size()
                .map(size -> PatternPart.ofSize(altered, size).alone())
                .orElse(altered);
        return levels(own, sized(now), LevelSeams.Meeting::isApart).stream().anyMatch(meeting::contains);
    }

    /** How many other seams are put out of fit by it. */
    private int putOut(GarmentMeasures now) {
        int count = 0;
        for (MateWalk other : now.mates()) {
            boolean fitted = is.before(other).map(w -> Cutting.same(w.drift())).orElse(false);
            count += fitted && !Cutting.same(other.drift()) ? 1 : 0;
        }
        return count;
    }
}
