package easewright.editor.paint;

import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All ways to set the name of a piece, the best first. They are the same in frame after frame: those of lately seen
 * pieces are remembered.
 *
 * @param whole   with all of the name, in one row or several, and what stands below it
 * @param narrow  the same in few rows, to stand along a piece that is higher than wide
 * @param stacked the same in many short rows
 * @param cut     with as much of the name as there is room for, dots for the rest, and what stands below it
 * @param bare    of a name below which an instruction stands, all of it or a part without that
 */
record NameSettings(
        List<NameSetting> whole,
        List<NameSetting> narrow,
        List<NameSetting> stacked,
        List<NameSetting> cut,
        List<NameSetting> bare) {
    /** Smaller letters than these are not written above others in two sizes. */
    private static final int LEAST_OF_TWO = 1;

    /** Shorter words are not parted into rows, letters. */
    private static final int LONG = 9;

    private static final int MOST_ROWS = 4;

    /** In so many rows stands at most what is below a name. */
    private static final int MOST_BELOW = 3;

    /** How many letters of a name that is cut may stand in a row, and in how many rows, the most first. */
    private static final int[] LETTERS = {26, 20, 16, 13, 10, 8};

    private static final int[] CUT_ROWS = {3, 2, 1};

    private static final int REMEMBERED = 1024;

    private static final Map<Key, NameSettings> KNOWN = Lately.asked(REMEMBERED);

    /** What the ways are made of. */
    private record Key(String name, String plain, Optional<String> size, String below, boolean needed) {}

    NameSettings {
        whole = List.copyOf(whole);
        narrow = List.copyOf(narrow);
        stacked = List.copyOf(stacked);
        cut = List.copyOf(cut);
        bare = List.copyOf(bare);
    }

    /** Those for a piece. */
    static NameSettings of(TableScene.PieceSight sight) {
        Piece piece = sight.piece();
        // A title that is not its name speaks for several sizes.
        Optional<String> size = sight.title().equals(piece.name()) ? piece.size() : Optional.empty();
        Key key = new Key(sight.title(), piece.plainName(), size, sight.subtitle(), sight.instructs());
        return KNOWN.computeIfAbsent(key, NameSettings::of);
    }

    /** All of them; names that are as long and of as many words have the same ways in the same order. */
    List<NameSetting> all() {
        return Stream.of(whole, narrow, stacked, cut, bare)
                .flatMap(List::stream)
                .toList();
    }

    private static NameSettings of(Key key) {
        List<NameSetting> whole = new ArrayList<>();
        List<NameSetting> narrow = new ArrayList<>();
        for (int size = 0; size <= NameSetting.SMALLEST; size++) {
            NameSetting inOneRow = NameSetting.beside(key.name(), key.below(), size);
            if (size <= LEAST_OF_TWO) {
                whole.add(NameSetting.above(key.name(), key.below(), size));
            }
            whole.add(inOneRow);
            narrow.add(inOneRow);
            if (size >= LEAST_OF_TWO) {
                addRows(key, 1, size, whole);
                if (key.needed()) {
                    addRows(key, 2, size, whole);
                }
            }
        }
        List<NameSetting> stacked = new ArrayList<>();
        addRows(key, MOST_BELOW, NameSetting.SMALLEST, stacked);
        List<NameSetting> bare = new ArrayList<>();
        List<NameSetting> alone = key.needed() ? bare : whole;
        for (int size = 0; size <= NameSetting.SMALLEST; size++) {
            NameSetting inOneRow = NameSetting.alone(key.name(), size, true);
            alone.add(inOneRow);
            if (!key.needed()) {
                narrow.add(inOneRow);
            }
            if (size >= LEAST_OF_TWO) {
                addRows(key, 0, size, alone);
            }
        }
        // On a very small piece of several sizes.
        key.size().ifPresent(size -> alone.add(NameSetting.above(key.plain(), size, NameSetting.SMALLEST)));
        if (key.needed()) {
            bare.addAll(cut(key.name(), List.of()));
        }
        return new NameSettings(whole, narrow, stacked, cut(key.name(), key.needed() ? below(key) : List.of()), bare);
    }

    /** The name in all numbers of rows that it can be parted into, with what is below it in so many, if it has as many. */
    private static void addRows(Key key, int below, int size, List<NameSetting> settings) {
        List<String> under = below == 0 ? List.of() : NameRows.even(key.below(), below);
        if (under.size() < below || below > 1 && key.below().length() < LONG) {
            return;
        }
        if (below > 1 || below == 1 && size > LEAST_OF_TWO) {
            settings.add(NameSetting.rows(List.of(key.name()), under, size, true));
        }
        if (key.name().length() >= LONG) {
            for (int many = 2; many <= MOST_ROWS; many++) {
                List<String> rows = NameRows.even(key.name(), many);
                if (rows.size() == many) {
                    settings.add(NameSetting.rows(rows, under, size, true));
                }
            }
        } else if (size == NameSetting.SMALLEST && below > 0) {
            // Of several sizes.
            key.size().ifPresent(own -> settings.add(NameSetting.rows(List.of(key.plain(), own), under, size, true)));
        }
    }

    private static List<String> below(Key key) {
        return NameRows.even(key.below(), key.below().length() < LONG ? 1 : 2);
    }

    private static List<NameSetting> cut(String name, List<String> below) {
        List<NameSetting> cut = new ArrayList<>();
        for (int letters : LETTERS) {
            for (int many : CUT_ROWS) {
                List<String> rows = NameRows.cut(name, many, letters);
                if (rows.size() == many) {
                    cut.add(NameSetting.rows(rows, below, NameSetting.SMALLEST, NameRows.isWhole(rows)));
                }
            }
        }
        return cut;
    }
}
