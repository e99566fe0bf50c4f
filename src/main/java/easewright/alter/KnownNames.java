package easewright.alter;

import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds what a person names in a pattern, whatever the capitals; where it is unknown, the refusal lists what is known. */
final class KnownNames {
    private KnownNames() {}

    static Level level(Pattern pattern, String name) throws Refusal {
        Optional<Level> found = named(pattern.levels(), Level::name, name);
        if (found.isPresent()) {
            return found.get();
        }
        List<String> known = pattern.levels().stream().map(Level::name).toList();
        throw known.isEmpty()
                ? Refusal.of("no-level-marked").with("level", name)
                : Refusal.of("level-not-known").with("level", name).with("known", known);
    }

    static Piece piece(Pattern pattern, String name) throws Refusal {
        Optional<Piece> exact = pattern.piece(name);
        if (exact.isPresent()) {
            return exact.get();
        }
        List<Piece> alike = pattern.pieces().stream()
                .filter(p -> p.id().equalsIgnoreCase(name) || p.name().equalsIgnoreCase(name))
                .toList();
        if (alike.isEmpty()) {
            alike = pattern.pieces().stream()
                    .filter(p -> p.plainName().equalsIgnoreCase(name))
                    .toList();
        }
        if (alike.size() == 1) {
            return alike.get(0);
        }
        throw Refusal.of("piece-not-known")
                .with("piece", name)
                .with("known", pattern.pieces().stream().map(Piece::name).toList());
    }

    static Edge edge(Piece piece, String name) throws Refusal {
        return named(piece.edges(), Edge::name, name)
                .orElseThrow(() -> Refusal.of("edge-not-known")
                        .with("edge", name)
                        .with("piece", piece.name())
                        .with("known", piece.edges().stream().map(Edge::name).toList()));
    }

    static Notch notch(Piece piece, String name) throws Refusal {
        return named(piece.notches(), Notch::name, name)
                .orElseThrow(() -> Refusal.of("notch-not-known")
                        .with("notch", name)
                        .with("piece", piece.name())
                        .with("known", piece.notches().stream().map(Notch::name).toList()));
    }

    static Dart dart(Piece piece, String name) throws Refusal {
        return named(piece.darts(), Dart::name, name)
                .orElseThrow(() -> Refusal.of("dart-not-known")
                        .with("dart", name)
                        .with("piece", piece.name())
                        .with("known", piece.darts().stream().map(Dart::name).toList()));
    }

    /** The edge meant by {@code piece/edge}, by the piece's id. */
    static EdgeRef edgeRef(Pattern pattern, String text) throws Refusal {
        int slash = text.lastIndexOf('/');
        if (slash <= 0) {
            throw Refusal.of("edge-form").with("text", text);
        }
        Piece piece = piece(pattern, text.substring(0, slash).strip());
        return EdgeRef.of(
                piece.id(), edge(piece, text.substring(slash + 1).strip()).name());
    }

    /** A name that some piece knows: a notch, a level or an edge. */
    static String mark(Pattern pattern, String name) throws Refusal {
        List<String> names = new ArrayList<>();
        pattern.levels().forEach(l -> names.add(l.name()));
        for (Piece piece : pattern.pieces()) {
            piece.notches().forEach(n -> names.add(n.name()));
            piece.edges().forEach(e -> names.add(e.name()));
        }
        return named(names, Function.identity(), name)
                .orElseThrow(() -> Refusal.of("keep-not-known")
                        .with("text", name)
                        .with("known", names.stream().distinct().toList()));
    }

    private static <T> Optional<T> named(List<T> all, Function<T, String> names, String wanted) {
        Optional<T> exact =
                all.stream().filter(each -> names.apply(each).equals(wanted)).findFirst();
        return exact.isPresent()
                ? exact
                : all.stream()
                        .filter(each -> names.apply(each).equalsIgnoreCase(wanted))
                        .findFirst();
    }
}
