package easewright.editor.paint;

import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All ways to set the name of a piece, the best first. They are the same in frame after frame: those of lately seen
 * pieces are remembered.
 *
 * @param whole  with all of the name, in one row or several
 * @param narrow the same in few rows, to stand along a piece that is higher than wide
 * @param cut    with as much of it as there is room for, and dots for the rest
 */
record NameSettings(List<NameSetting> whole, List<NameSetting> narrow, List<NameSetting> cut) {
    /** Smaller letters than these are not written above others in two sizes. */
    private static final int LEAST_OF_TWO = 2;

    /** A shorter name is not parted into rows, letters. */
    private static final int LONG = 9;

    private static final int MOST_ROWS = 4;

    /** How many letters of a name that is cut may stand in a row, and in how many rows, the most first. */
    private static final int[] LETTERS = {26, 20, 16, 13, 10, 8};

    private static final int[] CUT_ROWS = {3, 2, 1};

    private static final int REMEMBERED = 1024;

    private static final Map<Key, NameSettings> KNOWN = Lately.asked(REMEMBERED);

    /** What the ways are made of. */
    private record Key(String name, Side side, Optional<String> size, String subtitle) {}

    NameSettings {
        whole = List.copyOf(whole);
        narrow = List.copyOf(narrow);
        cut = List.copyOf(cut);
    }

    /** Those for a piece. */
    static NameSettings of(TableScene.PieceSight sight) {
        Piece piece = sight.piece();
        // A title that is not its name speaks for several sizes.
        Optional<String> size = sight.title().equals(piece.name()) ? piece.size() : Optional.empty();
        Key key = new Key(sight.title(), piece.side(), size, sight.subtitle());
        return KNOWN.computeIfAbsent(key, k -> of(k, piece.plainName()));
    }

    private static NameSettings of(Key key, String plain) {
        List<NameSetting> whole = new ArrayList<>();
        List<NameSetting> narrow = new ArrayList<>();
        for (int size = 0; size <= NameSetting.SMALLEST; size++) {
            NameSetting inOneRow = NameSetting.beside(key.name(), key.subtitle(), size);
            if (size <= LEAST_OF_TWO) {
                whole.add(NameSetting.above(key.name(), key.subtitle(), size));
            }
            whole.add(inOneRow);
            if (size > 0) {
                narrow.add(inOneRow);
            }
            if (size >= LEAST_OF_TWO) {
                addRows(key.name(), key.subtitle(), size, whole);
            }
        }
        for (int size = 0; size <= NameSetting.SMALLEST; size++) {
            NameSetting alone = NameSetting.alone(key.name(), size, true);
            whole.add(alone);
            if (size > 0) {
                narrow.add(alone);
            }
            if (size >= LEAST_OF_TWO) {
                addRows(key.name(), "", size, whole);
            }
        }
        // On a very small piece of several sizes.
        key.size().ifPresent(size -> whole.add(NameSetting.above(plain, size, NameSetting.SMALLEST)));
        return new NameSettings(whole, narrow, cut(key.name()));
    }

    private static void addRows(String name, String below, int size, List<NameSetting> settings) {
        if (name.length() >= LONG) {
            for (int many = 2; many <= MOST_ROWS; many++) {
                List<String> rows = NameRows.even(name, many);
                if (rows.size() == many) {
                    settings.add(NameSetting.rows(rows, below, size, true));
                }
            }
        }
    }

    private static List<NameSetting> cut(String name) {
        List<NameSetting> cut = new ArrayList<>();
        for (int letters : LETTERS) {
            for (int many : CUT_ROWS) {
                List<String> rows = NameRows.cut(name, many, letters);
                if (rows.size() == many) {
                    cut.add(NameSetting.rows(rows, "", NameSetting.SMALLEST, NameRows.isWhole(rows)));
                }
            }
        }
        return cut;
    }
}
