package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The way back from left and right pieces that a change made of one cut alike for both sides: where that change is taken
 * back, there is one piece again. That it was so is not guessed: from the one piece, the changes taken back must lead
 * again to what is now, its left and its right piece, wherever they lie.
 */
final class Rejoined {
    /** A copy lies as near to where it would be laid again as this, mm. */
    private static final double NEAR = 1;

    private final Pattern now;
    private final List<ChangeNote> later;

    /**
     * @param now   with all its changes
     * @param later those that are taken back
     */
    Rejoined(Pattern now, List<ChangeNote> later) {
        this.now = now;
        this.later = later;
    }

    /** A left and a right piece that may have been one. */
    private record Pair(Piece first, Piece second) {
        String name() {
            return RejoinedNames.withoutSide(first.name(), first.side());
        }

        /** The edges that were the fold, by the seams that hold the halves together there. */
        List<Edge> folds(Pattern pattern) {
            return first.edges().stream()
                    .filter(e -> e.role() == EdgeRole.CENTRE)
                    .filter(e -> pattern.mates().stream().anyMatch(m -> isFold(m, e)))
                    .toList();
        }

        private boolean isBetween(Mate mate, Edge edge) {
            List<EdgeRef> one = List.of(EdgeRef.of(first.id(), edge.name()));
            List<EdgeRef> other = List.of(EdgeRef.of(second.id(), edge.name()));
            return mate.first().equals(one) && mate.second().equals(other)
                    || mate.first().equals(other) && mate.second().equals(one);
        }

        /** A fold that was parted is protected and has an allowance of its own, whatever its seam is called since. */
        boolean isFold(Mate mate, Edge edge) {
            return isBetween(mate, edge)
                            && edge.isProtected()
                            && edge.allowance().isPresent()
                    || mate.name().equals(name() + " " + edge.name())
                            && mate.first().size() == 1
                            && mate.second().size() == 1
                            && mate.first().get(0).edge().equals(edge.name())
                            && mate.second().get(0).edge().equals(edge.name());
        }
    }

    /**
     * The pattern before those changes, with one piece where they made two.
     *
     * @param back the pattern before, with the pieces that are now
     */
    Pattern of(Pattern back) {
        List<Pair> pairs = pairs(back);
        if (pairs.isEmpty()) {
            return back;
        }
        Pattern all = back;
        for (Pair pair : pairs) {
            all = joined(all, pair);
        }
        if (leadsToNow(all)) {
            return all;
        }
        // Some were apart before, perhaps: those made last are tried first, since where a copy lies depends on the
        // rest.
        Pattern some = back;
        for (int i = pairs.size() - 1; i >= 0; i--) {
            Pattern tried = joined(some, pairs.get(i));
            some = leadsToNow(tried) ? tried : some;
        }
        return some;
    }

    private boolean leadsToNow(Pattern before) {
        try {
            Pattern made = laid(MadeAnew.forward(before, later));
            MadeAnew wanted = new MadeAnew(now);
            if (!wanted.sameIds(made)) {
                return false;
            }
            Pattern again = RejoinedNames.asNow(made, now);
            return wanted.same(again) && RejoinedNames.sewnAlike(again, now);
        } catch (Refusal | IllegalArgumentException doesNotLeadThere) {
            return false;
        }
    }

    /** With the copies where they lie now: their place hangs on lines that come back a little less exactly. */
    private Pattern laid(Pattern again) {
        List<String> copies = pairs(now).stream().map(p -> p.second().id()).toList();
        return again.withPieces(again.pieces().stream()
                .map(p -> copies.contains(p.id())
                        ? now.piece(p.id()).map(n -> laid(p, n)).orElse(p)
                        : p)
                .toList());
    }

    private static Piece laid(Piece copy, Piece there) {
        Box is = copy.outline().box();
        Box wanted = there.outline().box();
        Point by = new Point(wanted.minX() - is.minX(), wanted.minY() - is.minY());
        if (by.norm() > NEAR) {
            return copy;
        }
        Affine move = Affine.translation(by);
        return new PieceCopy(move::apply, (Segment s) -> s.transformed(move), false).of(copy);
    }

    private static String id(Pattern pattern, EdgeRef edge) {
        return pattern.piece(edge.piece()).map(Piece::id).orElse(edge.piece());
    }

    private static List<Pair> pairs(Pattern pattern) {
        List<Pair> pairs = new ArrayList<>();
        for (Piece first : pattern.pieces()) {
            pattern.pieces().stream()
                    .filter(second -> Renaming.isCopy(first, second))
                    .findFirst()
                    .ifPresent(second -> pairs.add(new Pair(first, second)));
        }
        return pairs;
    }

    private static Pattern joined(Pattern pattern, Pair pair) {
        List<Edge> folds = pair.folds(pattern);
        Piece whole = whole(pair, folds);
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (!piece.id().equals(pair.second().id())) {
                pieces.add(piece.id().equals(whole.id()) ? whole : piece);
            }
        }
        return pattern.withPieces(pieces).withMates(seams(pattern, pair, folds));
    }

    private static Piece whole(Pair pair, List<Edge> folds) {
        Piece first = pair.first();
        List<Edge> edges = first.edges().stream()
                .map(e -> folds.contains(e)
                        ? new Edge(e.name(), EdgeRole.FOLD, e.from(), e.to(), e.isProtected(), e.allowance())
                        : e)
                .toList();
        return first.toBuilder()
                .name(pair.name())
                .side(Side.BOTH)
                .cut(folds.isEmpty() ? 2 * first.times() : first.times(), !folds.isEmpty() || first.onFold())
                .edges(edges)
                .build();
    }

    private static List<Mate> seams(Pattern pattern, Pair pair, List<Edge> folds) {
        Map<String, String> otherSide = new HashMap<>();
        pairs(pattern).forEach(p -> {
            otherSide.put(p.first().id(), p.second().id());
            otherSide.put(p.second().id(), p.first().id());
        });
        List<Mate> seams = new ArrayList<>();
        Set<Mate> done = new HashSet<>();
        for (Mate mate : pattern.mates()) {
            boolean fold = folds.stream().anyMatch(e -> pair.isFold(mate, e));
            if (fold || done.contains(mate)) {
                continue;
            }
            Optional<Mate> twin = has(pattern, mate, pair) ? twin(pattern, mate, otherSide) : Optional.empty();
            twin.ifPresent(done::add);
            String name = twin.map(t -> RejoinedNames.ofSeam(mate, t)).orElse(mate.name());
            seams.add(new Mate(
                    name, one(pattern, mate.first(), pair), one(pattern, mate.second(), pair), mate.declaredEase()));
        }
        return seams;
    }

    /** The seam of the other side, for one of this side. */
    private static Optional<Mate> twin(Pattern pattern, Mate mate, Map<String, String> otherSide) {
        List<EdgeRef> first = there(pattern, mate.first(), otherSide);
        List<EdgeRef> second = there(pattern, mate.second(), otherSide);
        return pattern.mates().stream()
                .filter(m -> m != mate)
                .filter(m -> there(pattern, m.first(), Map.of()).equals(first)
                        && there(pattern, m.second(), Map.of()).equals(second))
                .findFirst();
    }

    private static List<EdgeRef> there(Pattern pattern, List<EdgeRef> edges, Map<String, String> otherSide) {
        return edges.stream()
                .map(e -> {
                    String id = id(pattern, e);
                    return new EdgeRef(otherSide.getOrDefault(id, id), e.edge(), e.times());
                })
                .toList();
    }

    private static boolean has(Pattern pattern, Mate mate, Pair pair) {
        List<EdgeRef> all = new ArrayList<>(mate.first());
        all.addAll(mate.second());
        return all.stream()
                .map(e -> id(pattern, e))
                .anyMatch(id ->
                        id.equals(pair.first().id()) || id.equals(pair.second().id()));
    }

    /** Edges of both halves one behind the other become that of the one piece, taken as often as both. */
    private static List<EdgeRef> one(Pattern pattern, List<EdgeRef> edges, Pair pair) {
        List<String> ids = List.of(pair.first().id(), pair.second().id());
        List<EdgeRef> one = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            EdgeRef edge = edges.get(i);
            if (!ids.contains(id(pattern, edge))) {
                one.add(edge);
                continue;
            }
            boolean both = i + 1 < edges.size()
                    && edges.get(i + 1).edge().equals(edge.edge())
                    && ids.contains(id(pattern, edges.get(i + 1)));
            one.add(new EdgeRef(pair.first().id(), edge.edge(), both ? 2 * edge.times() : edge.times()));
            i += both ? 1 : 0;
        }
        return one;
    }
}
