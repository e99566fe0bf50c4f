package easewright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A whole paper pattern: pieces and what is known of them.
 *
 * @param wishes  wanted ease by level name; a part of the body makes the length that it is of {@code body}
 * @param changes the changes already made, oldest first
 * @param aside   changes that were made once and are switched off, in the order in which they would stand
 * @param bodies  whom each size is made for, by size; where none is given, the one body counts
 * @param garment what it is said to be, in a word of the ease tables or several with commas between; empty where nobody
 *                said, and then its marks show it
 * @param noPieces ids of drawn outlines of which somebody said that they are no pieces
 */
public record Pattern(
        List<Piece> pieces,
        List<Level> levels,
        List<Mate> mates,
        Body body,
        Cloth cloth,
        Map<String, Wish> wishes,
        Scale scale,
        List<ChangeNote> changes,
        List<SetAside> aside,
        Map<String, Body> bodies,
        String garment,
        Set<String> noPieces) {
    /**
     * @throws IllegalArgumentException if two pieces share an id or two levels a name, or a change set aside has its
     *     place behind the end of the list
     */
    public Pattern {
        pieces = List.copyOf(pieces);
        levels = List.copyOf(levels);
        mates = List.copyOf(mates);
        wishes = made(wishes, body);
        changes = List.copyOf(changes);
        bodies = Map.copyOf(bodies);
        aside = aside.stream().sorted(Comparator.comparingInt(SetAside::before)).toList();
        int made = changes.size();
        if (aside.stream().anyMatch(a -> a.before() > made)) {
            throw new IllegalArgumentException("A change set aside has its place behind the end of the list");
        }
        Set<String> names = new HashSet<>();
        for (Piece piece : pieces) {
            if (!names.add(piece.id())) {
                throw new IllegalArgumentException("Two pieces have the same id");
            }
        }
        // What has become a piece all the same is none of them any more.
        noPieces = noPieces.stream().filter(id -> !names.contains(id)).collect(Collectors.toUnmodifiableSet());
        names.clear();
        for (Level level : levels) {
            if (!names.add(level.name())) {
                throw new IllegalArgumentException("Two levels have the same name");
            }
        }
    }

    private static Map<String, Wish> made(Map<String, Wish> wishes, Body body) {
        boolean lengths = true;
        for (Wish wish : wishes.values()) {
            lengths &= wish.percent().isEmpty();
        }
        if (lengths) {
            return Map.copyOf(wishes);
        }
        Map<String, Wish> made = new TreeMap<>();
        wishes.forEach((level, wish) -> made.put(level, wish.made(body.girth(level))));
        return Map.copyOf(made);
    }

    private static Map<String, Wish> lengths(Map<String, Double> mm) {
        Map<String, Wish> wishes = new TreeMap<>();
        mm.forEach((level, ease) -> wishes.put(level, Wish.of(ease)));
        return wishes;
    }

    /**
     * A pattern with no change set aside, no size with a body of its own, and nothing said of what it is.
     *
     * @param wishes wanted ease by level name, mm
     */
    public Pattern(
            List<Piece> pieces,
            List<Level> levels,
            List<Mate> mates,
            Body body,
            Cloth cloth,
            Map<String, Double> wishes,
            Scale scale,
            List<ChangeNote> changes) {
        this(pieces, levels, mates, body, cloth, lengths(wishes), scale, changes, List.of(), Map.of(), "", Set.of());
    }

    /** Pieces and a scale, and nothing else known. */
    public static Pattern bare(List<Piece> pieces, Scale scale) {
        return new Pattern(pieces, List.of(), List.of(), Body.UNKNOWN, Cloth.WOVEN, Map.of(), scale, List.of());
    }

    /** The piece with the id, or else the only one with that name, or else the only one that is {@link Piece#plainName so called}. */
    public Optional<Piece> piece(String idOrName) {
        Piece named = null;
        Piece called = null;
        int names = 0;
        int calls = 0;
        for (Piece piece : pieces) {
            if (piece.id().equals(idOrName)) {
                return Optional.of(piece);
            }
            if (piece.name().equals(idOrName)) {
                names++;
                named = piece;
            } else if ((piece.size().isPresent() || piece.side() != Side.BOTH)
                    && piece.name().contains(idOrName)
                    && piece.plainName().equals(idOrName)) {
                calls++;
                called = piece;
            }
        }
        Piece found = names == 1 ? named : names == 0 && calls == 1 ? called : null;
        return Optional.ofNullable(found);
    }

    /** Some of its pieces, bare of all else but the levels that are marked on them and the seams that they are sewn in. */
    public Pattern only(List<Piece> some) {
        List<Level> marked = levels.stream()
                .filter(l -> some.stream().anyMatch(p -> p.level(l.name()).isPresent()))
                .toList();
        List<Mate> sewn = mates.stream()
                .filter(m -> Stream.concat(m.first().stream(), m.second().stream())
                        .anyMatch(ref -> some.stream().anyMatch(p -> p.isCalled(ref.piece()))))
                .toList();
        return bare(some, scale).withLevels(marked).withMates(sewn);
    }

    /** Whom a size is made for. */
    public Body body(Optional<String> size) {
        return size.map(bodies::get).orElse(body);
    }

    public Optional<Level> level(String name) {
        for (Level level : levels) {
            if (level.name().equals(name)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    /** The piece and edge a reference means. */
    public Optional<Edge> edge(EdgeRef ref) {
        return piece(ref.piece()).flatMap(p -> p.edge(ref.edge()));
    }

    /** Names of the notches that are sewn with those of one size, or for a piece of every size: all of them. */
    public Set<String> notchNames(Optional<String> size) {
        return pieces.stream()
                .filter(p -> size.isEmpty() || p.size().isEmpty() || p.size().equals(size))
                .flatMap(p -> p.notches().stream())
                .map(Notch::name)
                .collect(Collectors.toSet());
    }

    /** The same pattern with the piece of the same id replaced. */
    public Pattern withPiece(Piece changed) {
        return withPieces(pieces.stream()
                .map(p -> p.id().equals(changed.id()) ? changed : p)
                .toList());
    }

    public Pattern withPieces(List<Piece> changed) {
        return new Pattern(
                changed, levels, mates, body, cloth, wishes, scale, changes, aside, bodies, garment, noPieces);
    }

    public Pattern withLevels(List<Level> changed) {
        return new Pattern(
                pieces, changed, mates, body, cloth, wishes, scale, changes, aside, bodies, garment, noPieces);
    }

    public Pattern withMates(List<Mate> changed) {
        return new Pattern(
                pieces, levels, changed, body, cloth, wishes, scale, changes, aside, bodies, garment, noPieces);
    }

    public Pattern withBody(Body changed) {
        return new Pattern(
                pieces, levels, mates, changed, cloth, wishes, scale, changes, aside, bodies, garment, noPieces);
    }

    /** With whom a size is made for; nobody of its own if the body is {@link Body#UNKNOWN}. */
    public Pattern withBody(String size, Body changed) {
        Map<String, Body> more = new TreeMap<>(bodies);
        more.remove(size);
        if (!changed.equals(Body.UNKNOWN)) {
            more.put(size, changed);
        }
        return withBodies(more);
    }

    public Pattern withBodies(Map<String, Body> bySize) {
        return new Pattern(
                pieces, levels, mates, body, cloth, wishes, scale, changes, aside, bySize, garment, noPieces);
    }

    public Pattern withCloth(Cloth changed) {
        return new Pattern(
                pieces, levels, mates, body, changed, wishes, scale, changes, aside, bodies, garment, noPieces);
    }

    /** The same said to be such a garment; with an empty text nothing is said any more. */
    public Pattern withGarment(String said) {
        return new Pattern(
                pieces, levels, mates, body, cloth, wishes, scale, changes, aside, bodies, said.strip(), noPieces);
    }

    /** The same with one more outline that is no piece. */
    public Pattern withNoPiece(String id) {
        Set<String> more = new HashSet<>(noPieces);
        more.add(id);
        return new Pattern(pieces, levels, mates, body, cloth, wishes, scale, changes, aside, bodies, garment, more);
    }

    public Pattern withScale(Scale changed) {
        return new Pattern(
                pieces, levels, mates, body, cloth, wishes, changed, changes, aside, bodies, garment, noPieces);
    }

    public Pattern withWish(String level, double easeMm) {
        return withWish(level, Wish.of(easeMm));
    }

    public Pattern withWish(String level, Wish wish) {
        Map<String, Wish> more = new TreeMap<>(wishes);
        more.put(level, wish);
        return withWishes(more);
    }

    /** With other changes made; what is set aside behind the end of a shorter list comes to stand at its end. */
    public Pattern withChanges(List<ChangeNote> made) {
        List<SetAside> kept = aside.stream()
                .map(a -> new SetAside(Math.min(a.before(), made.size()), a.note()))
                .toList();
        return new Pattern(pieces, levels, mates, body, cloth, wishes, scale, made, kept, bodies, garment, noPieces);
    }

    public Pattern withAside(List<SetAside> off) {
        return new Pattern(pieces, levels, mates, body, cloth, wishes, scale, changes, off, bodies, garment, noPieces);
    }

    public Pattern withWishes(Map<String, Wish> changed) {
        return new Pattern(
                pieces, levels, mates, body, cloth, changed, scale, changes, aside, bodies, garment, noPieces);
    }

    public Pattern withChange(ChangeNote made) {
        List<ChangeNote> more = new ArrayList<>(changes);
        more.add(made);
        return withChanges(more);
    }

    /**
     * Spelt out for a short run, as in {@link easewright.geom.Point}: first what nearly every change alters, last the
     * pieces, which take longest to compare.
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern p
                && changes.equals(p.changes)
                && aside.equals(p.aside)
                && scale.equals(p.scale)
                && body.equals(p.body)
                && cloth.equals(p.cloth)
                && wishes.equals(p.wishes)
                && bodies.equals(p.bodies)
                && garment.equals(p.garment)
                && noPieces.equals(p.noPieces)
                && levels.equals(p.levels)
                && mates.equals(p.mates)
                && pieces.equals(p.pieces);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * pieces.hashCode() + levels.hashCode()) + changes.hashCode();
    }
}
