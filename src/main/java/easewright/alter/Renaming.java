package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.SetAside;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Other names for what is marked. All that speaks of it goes along, the records of changes too: they could not be made
 * anew otherwise.
 *
 * @param pieces for each piece, by its id, its edges, darts and notches that are called otherwise
 * @param seams  the seams that are, by their present names
 */
public record Renaming(Map<String, OnPiece> pieces, Map<String, String> seams) {
    /** New names by present ones. */
    record OnPiece(Map<String, String> edges, Map<String, String> darts, Map<String, String> notches) {
        boolean isNone() {
            return edges.isEmpty() && darts.isEmpty() && notches.isEmpty();
        }
    }

    /** An edge, and with it that of the copy for the other side, if the piece has one. */
    public static Pattern edge(Pattern pattern, Piece piece, String old, String now) {
        OnPiece names = new OnPiece(Map.of(old, now), Map.of(), Map.of());
        return withCopy(
                pattern,
                piece,
                names,
                p -> p.edge(old).isPresent() && p.edge(now).isEmpty());
    }

    /** A dart, likewise. */
    public static Pattern dart(Pattern pattern, Piece piece, String old, String now) {
        OnPiece names = new OnPiece(Map.of(), Map.of(old, now), Map.of());
        return withCopy(
                pattern,
                piece,
                names,
                p -> p.darts().stream().noneMatch(d -> d.name().equals(now)));
    }

    /** Every notch of that name on a piece, likewise. */
    public static Pattern notch(Pattern pattern, Piece piece, String old, String now) {
        return withCopy(pattern, piece, new OnPiece(Map.of(), Map.of(), Map.of(old, now)), p -> true);
    }

    /** A seam. */
    public static Pattern seam(Pattern pattern, String old, String now) {
        return new Renaming(Map.of(), Map.of(old, now)).of(pattern);
    }

    private static Pattern withCopy(Pattern pattern, Piece piece, OnPiece names, Predicate<Piece> fits) {
        Map<String, OnPiece> all = new LinkedHashMap<>();
        all.put(piece.id(), names);
        pattern.pieces().stream()
                .filter(other -> isCopy(piece, other) || isCopy(other, piece))
                .filter(fits)
                .forEach(other -> all.put(other.id(), names));
        return new Renaming(all, Map.of()).of(pattern);
    }

    /** Whether a piece is what a change for one side made of another. */
    static boolean isCopy(Piece piece, Piece copy) {
        return piece.side() != Side.BOTH
                && copy.side() == piece.side().other()
                && copy.id().equals(PieceCopy.id(piece.id(), PieceCopy.ending(copy.side())));
    }

    /**
     * An earlier state of a pattern with the names that are there now, as far as it can be told which is which: by the
     * order in which a piece has its edges, darts and notches, and by the edges that a seam sews.
     */
    static Pattern asNow(Pattern then, Pattern now) {
        Map<String, OnPiece> pieces = new LinkedHashMap<>();
        for (Piece piece : then.pieces()) {
            withId(now, piece.id())
                    .map(is -> between(piece, is))
                    .filter(n -> !n.isNone())
                    .ifPresent(names -> pieces.put(piece.id(), names));
        }
        Pattern called = pieces.isEmpty() ? then : new Renaming(pieces, Map.of()).of(then);
        Map<String, String> seams = new LinkedHashMap<>();
        for (Mate mate : called.mates()) {
            now.mates().stream()
                    .filter(m -> sewsTheSame(called, mate, now, m) && !isParted(called, mate, now))
                    .map(Mate::name)
                    .filter(name -> !name.equals(mate.name()))
                    .findFirst()
                    .ifPresent(name -> seams.put(mate.name(), name));
        }
        return seams.isEmpty() ? called : new Renaming(Map.of(), seams).of(called);
    }

    private static OnPiece between(Piece then, Piece now) {
        return new OnPiece(
                between(
                        then.edges().stream().map(Edge::name).toList(),
                        now.edges().stream().map(Edge::name).toList()),
                between(
                        then.darts().stream().map(Dart::name).toList(),
                        now.darts().stream().map(Dart::name).toList()),
                between(
                        then.notches().stream().map(Notch::name).toList(),
                        now.notches().stream().map(Notch::name).toList()));
    }

    private static Map<String, String> between(List<String> then, List<String> now) {
        Map<String, String> names = new LinkedHashMap<>();
        if (then.size() == now.size()) {
            for (int i = 0; i < then.size(); i++) {
                if (!then.get(i).equals(now.get(i))) {
                    names.put(then.get(i), now.get(i));
                }
            }
        }
        return names;
    }

    /** Whether two seams, each of its pattern, sew the same edges. */
    static boolean sewsTheSame(Pattern one, Mate mate, Pattern other, Mate otherMate) {
        return ids(one, mate.first()).equals(ids(other, otherMate.first()))
                && ids(one, mate.second()).equals(ids(other, otherMate.second()));
    }

    /** Whether a piece that is sewn there was made into a left and a right one: the seam of one side is not the whole one. */
    private static boolean isParted(Pattern then, Mate mate, Pattern now) {
        return Stream.of(mate.first(), mate.second())
                .flatMap(List::stream)
                .flatMap(e -> then.piece(e.piece()).stream())
                .anyMatch(was -> withId(now, was.id())
                        .filter(is -> is.side() == was.side())
                        .isEmpty());
    }

    /** Edges by the ids of their pieces: in a file they may stand by name. */
    private static List<EdgeRef> ids(Pattern pattern, List<EdgeRef> edges) {
        return edges.stream()
                .map(e -> new EdgeRef(pattern.piece(e.piece()).map(Piece::id).orElse(e.piece()), e.edge(), e.times()))
                .toList();
    }

    private static Optional<Piece> withId(Pattern pattern, String id) {
        return pattern.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /** A pattern with these names. */
    Pattern of(Pattern pattern) {
        UnaryOperator<ChangeNote> notes = note -> note(pattern, note);
        return pattern.withPieces(pattern.pieces().stream()
                        .map(p -> pieces.containsKey(p.id()) ? piece(p, pieces.get(p.id())) : p)
                        .toList())
                .withMates(pattern.mates().stream().map(m -> mate(pattern, m)).toList())
                .withChanges(pattern.changes().stream().map(notes).toList())
                .withAside(pattern.aside().stream()
                        .map(a -> new SetAside(a.before(), notes.apply(a.note())))
                        .toList());
    }

    private static Piece piece(Piece piece, OnPiece names) {
        return piece.toBuilder()
                .edges(piece.edges().stream()
                        .map(e -> new Edge(
                                called(names.edges(), e.name()),
                                e.role(),
                                e.from(),
                                e.to(),
                                e.isProtected(),
                                e.allowance()))
                        .toList())
                .levels(piece.levels().stream()
                        .map(l -> level(l, names.edges()))
                        .toList())
                .darts(piece.darts().stream()
                        .map(d -> new Dart(
                                called(names.darts(), d.name()),
                                d.mouth1(),
                                d.mouth2(),
                                d.point(),
                                d.otherPoint(),
                                d.edge().map(e -> called(names.edges(), e))))
                        .toList())
                .notches(piece.notches().stream()
                        .map(n -> new Notch(called(names.notches(), n.name()), n.at()))
                        .toList())
                .build();
    }

    private static LevelMark level(LevelMark mark, Map<String, String> edges) {
        return mark.along().filter(edges::containsKey).isEmpty()
                ? mark
                : mark.placed(mark.through(), mark.along().map(edges::get), mark.turn(), mark.reference());
    }

    private static String called(Map<String, String> names, String name) {
        return names.getOrDefault(name, name);
    }

    private Mate mate(Pattern pattern, Mate mate) {
        return new Mate(
                called(seams, mate.name()),
                mate.first().stream().map(e -> ref(pattern, e)).toList(),
                mate.second().stream().map(e -> ref(pattern, e)).toList(),
                mate.declaredEase());
    }

    private EdgeRef ref(Pattern pattern, EdgeRef ref) {
        return onPiece(pattern, ref.piece())
                .map(names -> new EdgeRef(ref.piece(), called(names.edges(), ref.edge()), ref.times()))
                .orElse(ref);
    }

    /** A name may mean the piece in each of its sizes; then only what is called otherwise on all of them is. */
    private Optional<OnPiece> onPiece(Pattern pattern, String idOrName) {
        if (pieces.containsKey(idOrName)) {
            return Optional.of(pieces.get(idOrName));
        }
        List<Piece> meant =
                pattern.pieces().stream().filter(p -> p.isCalled(idOrName)).toList();
        boolean all = !meant.isEmpty() && meant.stream().allMatch(p -> pieces.containsKey(p.id()));
        return all ? Optional.of(pieces.get(meant.get(0).id())) : Optional.empty();
    }

    private ChangeNote note(Pattern pattern, ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>();
        Map<String, List<String>> listed = new LinkedHashMap<>();
        note.settings().forEach((key, value) -> {
            String plain = key.replaceFirst("\\.\\d+$", "");
            Optional<Setting.Kind> kind =
                    Ways.of(note.method()).flatMap(way -> way.setting(plain)).map(Setting::kind);
            if (kind.equals(Optional.of(Setting.Kind.NAMES))) {
                List<String> all = listed.computeIfAbsent(plain, k -> new ArrayList<>());
                for (String mark : marks(pattern, value)) {
                    if (!all.contains(mark)) {
                        all.add(mark);
                        settings.put(plain + "." + all.size(), mark);
                    }
                }
            } else {
                settings.put(key, setting(pattern, note, kind, key, value));
            }
        });
        return new ChangeNote(note.method(), settings);
    }

    private String setting(Pattern pattern, ChangeNote note, Optional<Setting.Kind> kind, String key, String value) {
        if (note.method().equals(Trued.METHOD)) {
            return trued(pattern, note, key, value);
        }
        if (kind.isEmpty()) {
            return value;
        }
        return switch (kind.get()) {
            case EDGE, SHARES -> path(pattern, value, OnPiece::edges);
            case DARTS -> path(pattern, value, OnPiece::darts);
            case NAME -> marks(pattern, value).get(0);
            default -> value;
        };
    }

    private String trued(Pattern pattern, ChangeNote note, String key, String value) {
        Optional<OnPiece> there =
                Optional.ofNullable(note.settings().get(Trued.PIECE)).flatMap(piece -> onPiece(pattern, piece));
        return switch (key) {
            case Trued.MATE -> called(seams, value);
            case Trued.EDGE -> path(pattern, value, OnPiece::edges);
            case Trued.DART -> there.map(names -> called(names.darts(), value)).orElse(value);
            case Trued.NOTCH ->
                there.map(names -> called(names.notches(), value)).orElse(value);
            default -> value;
        };
    }

    /** {@code piece/edge} or {@code piece/dart}. */
    private String path(Pattern pattern, String value, Function<OnPiece, Map<String, String>> kind) {
        int slash = value.lastIndexOf('/');
        if (slash <= 0) {
            return value;
        }
        return onPiece(pattern, value.substring(0, slash))
                .map(names -> value.substring(0, slash + 1) + called(kind.apply(names), value.substring(slash + 1)))
                .orElse(value);
    }

    /** What a level, and a notch or an edge on whatever piece, that had one name are called now: the old name first. */
    private List<String> marks(Pattern pattern, String name) {
        Set<String> now = new LinkedHashSet<>();
        if (pattern.level(name).isPresent()) {
            now.add(name);
        }
        for (Piece piece : pattern.pieces()) {
            Optional<OnPiece> names = Optional.ofNullable(pieces.get(piece.id()));
            if (piece.edges().stream().anyMatch(e -> e.name().equals(name))) {
                now.add(names.map(n -> called(n.edges(), name)).orElse(name));
            }
            if (piece.notches().stream().anyMatch(n -> n.name().equals(name))) {
                now.add(names.map(n -> called(n.notches(), name)).orElse(name));
            }
        }
        List<String> all = new ArrayList<>(now);
        if (all.isEmpty() || all.remove(name)) {
            all.add(0, name);
        }
        return all;
    }
}
