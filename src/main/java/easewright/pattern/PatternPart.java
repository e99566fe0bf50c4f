package easewright.pattern;

import easewright.geom.Curve;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Some pieces of a pattern, to be measured and changed as if they were all: those of one size, or of one side. Pieces
 * of no size belong to every size, and pieces of no side to either. What is left out stays what it is.
 */
public final class PatternPart {
    private final Pattern whole;
    private final Pattern alone;

    /** Ids in the part of pieces that have another one in the whole, by that. */
    private final Map<String, String> ids;

    /** How pieces lie that lie elsewhere in the whole, by their ids there. */
    private final Map<String, Mirrored> laid;

    private PatternPart(Pattern whole, Pattern alone) {
        this(whole, alone, Map.of(), Map.of());
    }

    private PatternPart(Pattern whole, Pattern alone, Map<String, String> ids, Map<String, Mirrored> laid) {
        this.whole = whole;
        this.alone = alone;
        this.ids = ids;
        this.laid = laid;
    }

    /** The sizes that a pattern comes in, in the order of its pieces; empty where no piece has a size. */
    public static List<String> sizes(Pattern pattern) {
        Set<String> sizes = new LinkedHashSet<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.size().isPresent()) {
                sizes.add(piece.size().get());
            }
        }
        return List.copyOf(sizes);
    }

    /** Whether a pattern comes in more than one size, so that its pieces are never all of one garment. */
    public static boolean severalSizes(Pattern pattern) {
        Optional<String> first = Optional.empty();
        for (Piece piece : pattern.pieces()) {
            if (piece.size().isPresent() && first.isEmpty()) {
                first = piece.size();
            } else if (piece.size().isPresent() && !piece.size().equals(first)) {
                return true;
            }
        }
        return false;
    }

    /** All of it. */
    public static PatternPart whole(Pattern whole) {
        return new PatternPart(whole, whole);
    }

    /** The garment in one size, for its own wearer. */
    public static PatternPart ofSize(Pattern whole, String size) {
        PatternPart part = of(whole, p -> p.size().isEmpty() || p.size().get().equals(size));
        return new PatternPart(whole, part.alone.withBody(whole.body(Optional.of(size))));
    }

    /** The garments in some sizes, each for its own wearer; the whole where none is named. */
    public static PatternPart ofSizes(Pattern whole, Collection<String> sizes) {
        return switch (sizes.size()) {
            case 0 -> whole(whole);
            case 1 -> ofSize(whole, sizes.iterator().next());
            default ->
                of(whole, p -> p.size().isEmpty() || sizes.contains(p.size().get()));
        };
    }

    /**
     * One side of a garment: the pieces cut for it, and those cut alike for both. The copies for the other side go by
     * the ids of the pieces that they are copies of and lie where these lie, so that a change is the same on either side.
     */
    public static PatternPart ofSide(Pattern whole, Side side) {
        PatternPart part = of(whole, p -> p.side().belongsTo(side));
        Map<String, String> ids = new LinkedHashMap<>();
        Map<String, Mirrored> laid = new LinkedHashMap<>();
        for (Piece twin : whole.pieces()) {
            Optional<Piece> copy = twin.side() == side.other() && side != Side.BOTH
                    ? part.alone.piece(PieceCopy.id(twin.id(), PieceCopy.ending(side)))
                    : Optional.empty();
            if (copy.isPresent()) {
                ids.put(copy.get().id(), twin.id());
                Mirrored.on(twin, copy.get()).ifPresent(m -> laid.put(copy.get().id(), m));
            }
        }
        if (ids.isEmpty()) {
            return part;
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : part.alone.pieces()) {
            Piece lies = laid.containsKey(piece.id()) ? laid.get(piece.id()).laid(piece) : piece;
            pieces.add(
                    ids.containsKey(piece.id())
                            ? lies.toBuilder().id(ids.get(piece.id())).build()
                            : lies);
        }
        List<Mate> mates = part.alone.mates().stream()
                .map(m -> new Mate(m.name(), called(m.first(), ids), called(m.second(), ids), m.declaredEase()))
                .toList();
        return new PatternPart(whole, part.alone.withPieces(pieces).withMates(mates), ids, laid);
    }

    private static List<EdgeRef> called(List<EdgeRef> edges, Map<String, String> ids) {
        return edges.stream()
                .map(e -> new EdgeRef(ids.getOrDefault(e.piece(), e.piece()), e.edge(), e.times()))
                .toList();
    }

    /** The id in the whole of a piece of the part. */
    public String idOf(String inPart) {
        for (Map.Entry<String, String> id : ids.entrySet()) {
            if (id.getValue().equals(inPart)) {
                return id.getKey();
            }
        }
        return inPart;
    }

    /** The id in the part of a piece of the whole; empty for one that is left out. */
    public Optional<String> idInPart(String inWhole) {
        String id = ids.getOrDefault(inWhole, inWhole);
        boolean copied = !ids.containsKey(inWhole) && ids.containsValue(inWhole);
        return alone.pieces().stream()
                .map(Piece::id)
                .filter(p -> p.equals(id) && !copied)
                .findFirst();
    }

    /** Every garment that the pattern holds by its size, or the whole by none where it comes in one. */
    public static Map<Optional<String>, PatternPart> bySize(Pattern pattern) {
        if (!severalSizes(pattern)) {
            return Map.of(Optional.empty(), whole(pattern));
        }
        Map<Optional<String>, PatternPart> garments = new LinkedHashMap<>();
        for (String size : sizes(pattern)) {
            garments.put(Optional.of(size), ofSize(pattern, size));
        }
        return garments;
    }

    /** The same garments as patterns of their own. */
    public static List<Pattern> garments(Pattern pattern) {
        return bySize(pattern).values().stream().map(PatternPart::alone).toList();
    }

    /** The pieces that a condition holds for, with the levels marked on them and the seams between them. */
    static PatternPart of(Pattern whole, Predicate<Piece> taken) {
        List<Piece> in = new ArrayList<>();
        for (Piece piece : whole.pieces()) {
            if (taken.test(piece)) {
                in.add(piece);
            }
        }
        if (in.size() == whole.pieces().size()) {
            return new PatternPart(whole, whole);
        }
        List<Level> levels = whole.levels().stream()
                .filter(l -> isOnAny(in, l) || !isOnAny(whole.pieces(), l))
                .toList();
        Pattern alone = whole.withPieces(in).withLevels(levels);
        Set<String> ids = new HashSet<>();
        in.forEach(p -> ids.add(p.id()));
        List<Mate> mates = whole.mates().stream()
                .filter(m -> holds(ids, alone, whole, m.first()) && holds(ids, alone, whole, m.second()))
                .toList();
        return new PatternPart(whole, alone.withMates(mates));
    }

    private static boolean isOnAny(List<Piece> pieces, Level level) {
        for (Piece piece : pieces) {
            if (piece.level(level.name()).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether none of the edges is of a piece that is left out.
     *
     * @param ids of the pieces that are not: nearly all edges are told by them, which is quick
     */
    private static boolean holds(Set<String> ids, Pattern alone, Pattern whole, List<EdgeRef> edges) {
        for (EdgeRef edge : edges) {
            if (ids.contains(edge.piece())) {
                continue;
            }
            boolean known = whole.pieces().stream().anyMatch(p -> p.isCalled(edge.piece()));
            if (known && alone.piece(edge.piece()).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** The part as a pattern of its own. */
    public Pattern alone() {
        return alone;
    }

    /**
     * The whole pattern with what became of the pieces of the part, and of the seams between them where they changed;
     * everything else as it was. A piece that is new stands behind the one before it.
     *
     * @param changed the part after a change
     */
    public Pattern back(Pattern changed) {
        Map<String, Piece> now = new LinkedHashMap<>();
        for (int i = 0; i < changed.pieces().size(); i++) {
            Piece piece = changed.pieces().get(i);
            String id = idOf(piece.id());
            now.put(id, id.equals(piece.id()) ? piece : asInWhole(piece, id));
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : whole.pieces()) {
            pieces.add(now.getOrDefault(piece.id(), piece));
        }
        String last = null;
        for (Map.Entry<String, Piece> each : now.entrySet()) {
            String before = last;
            if (whole.pieces().stream().noneMatch(p -> p.id().equals(each.getKey()))) {
                int at = 0;
                for (int i = 0; i < pieces.size(); i++) {
                    at = pieces.get(i).id().equals(before) ? i + 1 : at;
                }
                pieces.add(at, each.getValue());
            }
            last = each.getKey();
        }
        return seams(changed, whole.withPieces(pieces));
    }

    /** The very object of the whole where nothing changed. */
    private Piece asInWhole(Piece piece, String id) {
        boolean unchanged = alone.pieces().stream().anyMatch(p -> p == piece);
        if (unchanged) {
            return whole.piece(id).orElseThrow();
        }
        Piece lies = laid.containsKey(id) ? laid.get(id).laidBack(piece) : piece;
        return lies.toBuilder().id(id).build();
    }

    /** A run on a piece of the part, where it lies in the whole. */
    public Curve inWhole(String pieceInPart, Curve run) {
        Mirrored mirrored = laid.get(idOf(pieceInPart));
        return mirrored == null
                ? run
                : new Curve(run.segments().stream().map(mirrored::back).toList());
    }

    private Pattern seams(Pattern changed, Pattern now) {
        if (changed.mates().equals(alone.mates())) {
            return now;
        }
        List<Mate> mates = new ArrayList<>();
        for (Mate mate : whole.mates()) {
            boolean gone = alone.mates().contains(mate) && !changed.mates().contains(mate);
            if (!gone || sewnElsewhere(mate)) {
                mates.add(mate);
            }
        }
        changed.mates().stream().filter(m -> !mates.contains(m)).forEach(mates::add);
        return now.withMates(mates);
    }

    /** Whether a seam is sewn in other sizes too, by the names of its pieces. */
    private boolean sewnElsewhere(Mate mate) {
        for (String size : sizes(whole)) {
            Pattern other = ofSize(whole, size).alone;
            if (!other.pieces().equals(alone.pieces()) && other.mates().contains(mate)) {
                return true;
            }
        }
        return false;
    }
}
