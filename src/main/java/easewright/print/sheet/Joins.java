package easewright.print.sheet;

import easewright.print.sheet.TileGrid.Tile;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Numbers of the sheets and letters of the joins between them, in reading order. */
final class Joins {
    private final Map<Tile, Integer> numbers = new TreeMap<>();
    private final Map<Tile, String> right = new TreeMap<>();
    private final Map<Tile, String> below = new TreeMap<>();

    static Joins of(Set<Tile> tiles) {
        Joins joins = new Joins();
        int next = 0;
        for (Tile tile : tiles) {
            joins.numbers.put(tile, joins.numbers.size() + 1);
            if (tiles.contains(tile.right())) {
                joins.right.put(tile, letters(next++));
            }
            if (tiles.contains(tile.below())) {
                joins.below.put(tile, letters(next++));
            }
        }
        return joins;
    }

    /** A, B, … Z, AA, AB … */
    static String letters(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }

    int number(Tile tile) {
        return numbers.get(tile);
    }

    Optional<String> right(Tile tile) {
        return Optional.ofNullable(right.get(tile));
    }

    Optional<String> below(Tile tile) {
        return Optional.ofNullable(below.get(tile));
    }

    Optional<String> left(Tile tile) {
        return Optional.ofNullable(right.get(tile.left()));
    }

    Optional<String> above(Tile tile) {
        return Optional.ofNullable(below.get(tile.above()));
    }
}
