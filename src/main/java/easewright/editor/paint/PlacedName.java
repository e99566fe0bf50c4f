package easewright.editor.paint;

import easewright.geom.Point;
import java.util.Collection;

/**
 * The name of a piece that has found its place. All names of a table are read together and are set in letters of one size,
 * those for which the smallest piece has room that can bear them.
 *
 * @param middle pixels
 * @param turn   radians
 * @param letters in which it is written
 */
record PlacedName(NameSetting way, Point middle, double turn, NameLetters letters) {
    /**
     * The size for all of them. The lowest letters are for pieces that have room for no others, and for all only where most
     * of them are so small.
     *
     * @param first the largest that is thought of
     */
    static int common(int first, Collection<PlacedName> names) {
        long lowest = names.stream()
                .filter(name -> name.way().size() == NameSetting.SMALLEST)
                .count();
        if (2 * lowest > names.size()) {
            return NameSetting.SMALLEST;
        }
        return names.stream()
                .mapToInt(name -> name.way().size())
                .filter(size -> size < NameSetting.SMALLEST)
                .reduce(first, Math::max);
    }

    /** Draws it in letters of this size, or in its own where these are smaller. */
    void paint(int size) {
        letters.write(way.size() < size ? way.smaller(size) : way, middle, turn);
    }
}
