package easewright.editor.mark;

import easewright.alter.Renaming;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.suggest.SeamNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What can be done to seams that are sewn together. */
public final class MateEdits {
    private MateEdits() {}

    /**
     * Two edges sewn together, named after them, and after their pieces where another seam is called so. Half of a piece that is sewn to a whole one counts twice.
     *
     * @throws MarkRefused {@code edge-to-itself}, {@code sewn-already}
     */
    public static Pattern sew(Pattern pattern, EdgeRef first, EdgeRef second) throws MarkRefused {
        if (first.equals(second)) {
            throw new MarkRefused("edge-to-itself", Map.of());
        }
        for (Mate mate : pattern.mates()) {
            boolean one = has(mate.first(), first, pattern) && has(mate.second(), second, pattern);
            boolean two = has(mate.first(), second, pattern) && has(mate.second(), first, pattern);
            if (one || two) {
                throw new MarkRefused("sewn-already", Map.of("name", mate.name()));
            }
        }
        Mate bare = new Mate(SeamNames.stem(first, second), List.of(first), List.of(second), 0);
        Mate named = new Mate(SeamNames.of(bare, pattern), bare.first(), bare.second(), 0);
        List<Mate> mates = new ArrayList<>(pattern.mates());
        mates.add(HalvesSewn.counted(pattern, named));
        return pattern.withMates(mates);
    }

    static boolean has(List<EdgeRef> side, EdgeRef wanted, Pattern pattern) {
        return side.stream()
                .anyMatch(e -> e.edge().equals(wanted.edge())
                        && pattern.piece(e.piece())
                                .map(Piece::id)
                                .equals(pattern.piece(wanted.piece()).map(Piece::id)));
    }

    /**
     * @throws MarkRefused {@code name-empty}, {@code name-taken}
     */
    public static Pattern rename(Pattern pattern, String name, String newName) throws MarkRefused {
        String wanted = newName.strip();
        if (wanted.isEmpty()) {
            throw new MarkRefused("name-empty", Map.of());
        }
        if (!wanted.equals(name)
                && pattern.mates().stream().anyMatch(m -> m.name().equals(wanted))) {
            throw new MarkRefused("name-taken", Map.of("name", wanted));
        }
        return Renaming.seam(pattern, name, wanted);
    }

    /** By how much the first side is meant to be longer than the second, mm. */
    public static Pattern ease(Pattern pattern, String name, double mm) {
        return replaced(pattern, name, m -> new Mate(m.name(), m.first(), m.second(), mm));
    }

    /** Adds an edge to a side, counting as often as those that are there for the same reason. */
    public static Pattern addEdge(Pattern pattern, String name, boolean toFirst, EdgeRef edge) {
        return replaced(pattern, name, m -> {
            List<EdgeRef> side = new ArrayList<>(toFirst ? m.first() : m.second());
            if (!has(side, edge, pattern)) {
                side.add(HalvesSewn.like(pattern, side, edge));
            }
            return toFirst
                    ? new Mate(m.name(), side, m.second(), m.declaredEase())
                    : new Mate(m.name(), m.first(), side, m.declaredEase());
        });
    }

    /**
     * Takes an edge off a side.
     *
     * @throws MarkRefused {@code last-edge-of-seam}
     */
    public static Pattern removeEdge(Pattern pattern, String name, boolean ofFirst, EdgeRef edge) throws MarkRefused {
        Mate mate = pattern.mates().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name));
        if ((ofFirst ? mate.first() : mate.second()).size() < 2) {
            throw new MarkRefused("last-edge-of-seam", Map.of("name", name));
        }
        return replaced(pattern, name, m -> {
            List<EdgeRef> side = new ArrayList<>(ofFirst ? m.first() : m.second());
            side.remove(edge);
            return ofFirst
                    ? new Mate(m.name(), side, m.second(), m.declaredEase())
                    : new Mate(m.name(), m.first(), side, m.declaredEase());
        });
    }

    /** How often the drawn edge counts in the sum of its side. */
    public static Pattern times(Pattern pattern, String name, EdgeRef edge, int times) {
        EdgeRef now = new EdgeRef(edge.piece(), edge.edge(), times);
        return replaced(
                pattern,
                name,
                m -> new Mate(
                        m.name(),
                        m.first().stream().map(e -> e.equals(edge) ? now : e).toList(),
                        m.second().stream().map(e -> e.equals(edge) ? now : e).toList(),
                        m.declaredEase()));
    }

    /** Lets the halves that are sewn to a whole piece count as often as they are in the garment. */
    public static Pattern countHalves(Pattern pattern, String name) {
        return replaced(pattern, name, m -> HalvesSewn.counted(pattern, m));
    }

    public static Pattern remove(Pattern pattern, String name) {
        return pattern.withMates(
                pattern.mates().stream().filter(m -> !m.name().equals(name)).toList());
    }

    private static Pattern replaced(Pattern pattern, String name, UnaryOperator<Mate> change) {
        return pattern.withMates(pattern.mates().stream()
                .map(m -> m.name().equals(name) ? change.apply(m) : m)
                .toList());
    }
}
