package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the words on the table tell: the names of pieces with how they are cut, and their levels. */
public final class Told {
    private final Set<String> lacking = new HashSet<>();
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, List<List<String>>> levels = new HashMap<>();
    private final Map<Box, String> standing = new HashMap<>();

    Told() {}

    /** Notes the words that name a piece, with what stands below them. */
    void name(String piece, String words) {
        names.put(piece, words);
    }

    /** The words that name a piece; empty if none do. */
    Optional<String> name(String piece) {
        return Optional.ofNullable(names.get(piece));
    }

    /** Notes a piece whose name or how it is cut is not written, or not all of it. */
    void nameLacks(String piece) {
        lacking.add(piece);
    }

    /** The pieces whose names, or how they are cut, are not written, or not wholly. */
    public Set<String> lacking() {
        return Set.copyOf(lacking);
    }

    /**
     * Notes the rows in which a level is told on a piece.
     *
     * @param place around them, pixels
     */
    void level(String piece, String level, List<String> rows, Box place) {
        levels.computeIfAbsent(piece, id -> new ArrayList<>()).add(rows);
        standing.put(place, level);
    }

    /** What levels are told on a piece, each in its rows. */
    List<List<String>> levels(String piece) {
        return levels.getOrDefault(piece, List.of());
    }

    /** The level that is told at a place, pixels: who presses its name means the level. */
    public Optional<String> levelAt(Point at) {
        return standing.entrySet().stream()
                .filter(e -> e.getKey().contains(at))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
