package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Makes a left and a right piece of one that is cut alike for both sides, so that one of them can be changed: of a pair
 * each becomes a piece of its own, and a piece on the fold becomes its two halves, joined without a seam where the fold
 * was. What is drawn stays where it is; the other side is its mirror image.
 */
final class LeftRight {
    /** Between a copy and what lies beside it, mm. */
    private static final double GAP = 40;

    /** How far a fold may be from straight to be mirrored about, mm. */
    private static final double STRAIGHT = 0.5;

    private final List<Piece> pieces;
    private final List<Level> levels;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Piece> lefts = new HashMap<>();
    private final Map<String, Piece> rights = new HashMap<>();

    private LeftRight(Pattern garment) {
        pieces = new ArrayList<>(garment.pieces());
        levels = garment.levels();
    }

    /** A garment with pieces made into left and right ones, and what there is to be told of them. */
    record Parted(Pattern garment, List<Finding> findings) {}

    /** Whether the piece is cut alike for both sides. */
    static boolean symmetric(Piece piece) {
        return piece.side() == Side.BOTH && (piece.onFold() || piece.shapes() > 1);
    }

    /**
     * The garment with the pieces parted, and the seams between them.
     *
     * @throws Refusal if a piece is neither a pair nor on a straight fold
     */
    static Parted of(Pattern garment, Set<String> ids) throws Refusal {
        LeftRight work = new LeftRight(garment);
        // Halves first: they lie best where they are joined, and copies may lie anywhere.
        List<Piece> wanted = new ArrayList<>();
        for (String id : ids) {
            wanted.add(garment.piece(id).orElseThrow());
        }
        wanted.sort(Comparator.comparing(p -> !p.onFold()));
        for (Piece piece : wanted) {
            work.part(piece);
        }
        return new Parted(garment.withPieces(work.pieces).withMates(work.mates(garment)), work.findings);
    }

    private void part(Piece piece) throws Refusal {
        // Of sleeves on the fold there are two whole ones; a front on the fold is one with two halves.
        boolean limb = levels.stream().anyMatch(l -> l.limb() && piece.countsAt(l.name()));
        boolean halves = piece.onFold() && (!limb || piece.shapes() == 1);
        if (!halves && piece.shapes() % 2 != 0) {
            throw Refusal.of("one-side-odd").with("piece", piece.name()).with("count", piece.shapes());
        }
        SideSeen seen = SideSeen.of(piece);
        Side drawn = seen.side();
        Affine mirror = halves ? acrossFold(piece) : beside(piece, acrossItself(piece));
        Piece own = halves
                ? half(piece)
                : piece.toBuilder().cut(piece.times() / 2, piece.onFold()).build();
        if (halves && overlaps(own, mirror)) {
            mirror = beside(own, mirror);
        }
        Affine map = mirror;
        Piece first = named(own, piece, drawn);
        Piece second = named(
                new PieceCopy(map::apply, (Segment s) -> s.transformed(map), true)
                        .of(own, PieceCopy.ending(drawn.other())),
                piece,
                drawn.other());
        int at = pieces.indexOf(piece);
        pieces.set(at, first);
        pieces.add(at + 1, second);
        lefts.put(piece.id(), drawn == Side.LEFT ? first : second);
        rights.put(piece.id(), drawn == Side.LEFT ? second : first);
        String code = halves ? "sides-parted-fold" : "sides-parted";
        findings.add(Finding.of(code, Severity.NOTE, piece.name())
                .with("left", lefts.get(piece.id()).name())
                .with("right", rights.get(piece.id()).name()));
        if (!seen.sure()) {
            findings.add(
                    Finding.of("side-assumed", Severity.CAUTION, piece.name()).with("drawn", first.name()));
        }
    }

    private static Piece named(Piece piece, Piece whole, Side side) {
        String word = Settings.name(side);
        return piece.toBuilder().name(whole.name() + " " + word).side(side).build();
    }

    /** The drawn half by itself: nothing is folded, and nothing is sewn where the fold was. */
    private static Piece half(Piece piece) {
        List<Edge> edges = piece.edges().stream()
                .map(e -> e.role() == EdgeRole.FOLD
                        ? new Edge(
                                e.name(),
                                EdgeRole.CENTRE,
                                e.from(),
                                e.to(),
                                e.isProtected(),
                                OptionalDouble.of(e.allowance().orElse(0)))
                        : e)
                .toList();
        return piece.toBuilder().cut(piece.times(), false).edges(edges).build();
    }

    private static Affine acrossFold(Piece piece) throws Refusal {
        Edge fold = piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.FOLD)
                .findFirst()
                .orElseThrow(() -> Refusal.of("one-side-no-fold").with("piece", piece.name()));
        Point along = fold.to().minus(fold.from()).unit();
        Point across = along.quarterTurned();
        for (Segment segment : fold.on(piece.outline()).segments()) {
            if (Math.abs(segment.at(0.5).minus(fold.from()).dot(across)) > STRAIGHT) {
                throw Refusal.of("one-side-no-fold").with("piece", piece.name());
            }
        }
        return mirror(fold.from(), along);
    }

    private static Affine acrossItself(Piece piece) {
        return mirror(piece.outline().box().centre(), piece.grainDirection());
    }

    /** About the line through a place along a direction. */
    private static Affine mirror(Point place, Point along) {
        double x = along.x();
        double y = along.y();
        Affine linear = new Affine(2 * x * x - 1, 2 * x * y, 2 * x * y, 2 * y * y - 1, 0, 0);
        return Affine.translation(place).after(linear).after(Affine.translation(place.times(-1)));
    }

    private boolean overlaps(Piece piece, Affine map) {
        Box box = room(piece, map);
        return box.minX() < 0
                || box.minY() < 0
                || pieces.stream()
                        .filter(p -> !p.id().equals(piece.id()))
                        .anyMatch(p -> room(p, Affine.IDENTITY).overlaps(box));
    }

    /** The same, moved to the right of everything, and down where it would lie above the page. */
    private Affine beside(Piece piece, Affine map) {
        double right = 0;
        for (Piece each : pieces) {
            right = Math.max(right, room(each, Affine.IDENTITY).maxX());
        }
        Box room = room(piece, map);
        return Affine.translation(right + GAP - room.minX(), Math.max(0, -room.minY()))
                .after(map);
    }

    private static Box room(Piece piece, Affine map) {
        Box room = piece.outline().transformed(map).box();
        for (Rider rider : piece.riders()) {
            for (Segment segment : rider.segments()) {
                room = room.union(segment.transformed(map).box());
            }
        }
        return room;
    }

    /** Seams between sides are sewn on either side; where a drawn half counted twice, both halves count. */
    private List<Mate> mates(Pattern garment) {
        List<Mate> mates = new ArrayList<>();
        for (Mate mate : garment.mates()) {
            List<EdgeRef> all = new ArrayList<>(mate.first());
            all.addAll(mate.second());
            List<EdgeRef> parted =
                    all.stream().filter(e -> lefts.containsKey(id(garment, e))).toList();
            Optional<Side> own = Scope.sideOf(garment, mate);
            if (parted.isEmpty()) {
                mates.add(mate);
            } else if (own.isPresent()) {
                // A left armhole takes the left one of two sleeves.
                Map<String, Piece> there = own.get() == Side.LEFT ? lefts : rights;
                mates.add(new Mate(
                        mate.name(),
                        onOne(garment, mate.first(), there),
                        onOne(garment, mate.second(), there),
                        mate.declaredEase()));
            } else if (parted.stream().allMatch(e -> e.times() % 2 == 0)) {
                mates.add(new Mate(
                        mate.name(), both(garment, mate.first()), both(garment, mate.second()), mate.declaredEase()));
            } else {
                mates.add(onOne(garment, mate, lefts, Side.LEFT));
                mates.add(onOne(garment, mate, rights, Side.RIGHT));
            }
        }
        for (Map.Entry<String, Piece> left : lefts.entrySet()) {
            Piece right = rights.get(left.getKey());
            Piece whole = garment.piece(left.getKey()).orElseThrow();
            if (whole.onFold() && !right.onFold()) {
                whole.edges().stream()
                        .filter(e -> e.role() == EdgeRole.FOLD)
                        .forEach(e -> mates.add(new Mate(
                                whole.name() + " " + e.name(),
                                List.of(EdgeRef.of(left.getValue().id(), e.name())),
                                List.of(EdgeRef.of(right.id(), e.name())),
                                0)));
            }
        }
        return mates;
    }

    private static String id(Pattern garment, EdgeRef edge) {
        return garment.piece(edge.piece()).map(Piece::id).orElse(edge.piece());
    }

    private List<EdgeRef> both(Pattern garment, List<EdgeRef> edges) {
        List<EdgeRef> all = new ArrayList<>();
        for (EdgeRef edge : edges) {
            String id = id(garment, edge);
            if (lefts.containsKey(id)) {
                all.add(new EdgeRef(lefts.get(id).id(), edge.edge(), edge.times() / 2));
                all.add(new EdgeRef(rights.get(id).id(), edge.edge(), edge.times() / 2));
            } else {
                all.add(edge);
            }
        }
        return all;
    }

    private static Mate onOne(Pattern garment, Mate mate, Map<String, Piece> own, Side side) {
        return new Mate(
                mate.name() + " " + Settings.name(side),
                onOne(garment, mate.first(), own),
                onOne(garment, mate.second(), own),
                mate.declaredEase());
    }

    private static List<EdgeRef> onOne(Pattern garment, List<EdgeRef> edges, Map<String, Piece> own) {
        return edges.stream()
                .map(e -> own.containsKey(id(garment, e))
                        ? new EdgeRef(own.get(id(garment, e)).id(), e.edge(), Math.max(1, e.times() / 2))
                        : e)
                .toList();
    }
}
