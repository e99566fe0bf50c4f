package easewright.editor.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/**
 * One way to set the name of a piece: words in rows about one middle.
 *
 * @param wide  of the longest row, pixels
 * @param high  of all rows, pixels
 * @param size  which of the sizes of letters it is set in, the largest first
 * @param whole whether all of the name is there
 */
record NameSetting(List<Row> rows, double wide, double high, int size, boolean whole) {
    /** The sizes of letters: few, so that the names of one table go together. */
    private static final double[] SIZES = {15, 12, 10};

    /** Of the smaller words that go with names of these sizes. */
    private static final double[] SMALL = {11, 10, 10};

    static final int SMALLEST = SIZES.length - 1;

    /** Between two words beside each other, as a part of their size. */
    private static final double GAP = 0.6;

    /** How high words are, as a part of their size: most letters have no part below the line. */
    private static final double HIGH = 1;

    /** How high a name and the words below it are. */
    private static final double TWO_HIGH = 2.4;

    /** From row to row where there are more. */
    private static final double PITCH = 1.15;

    NameSetting {
        rows = List.copyOf(rows);
    }

    /**
     * Words with their middle.
     *
     * @param x     from the middle of all, pixels
     * @param y     the same
     * @param quiet not of the name itself
     */
    record Row(String words, Font font, double x, double y, boolean quiet) {}

    /** All of them in one row. */
    String words() {
        return rows.stream().map(Row::words).collect(Collectors.joining(" "));
    }

    static double least() {
        return HIGH * SIZES[SMALLEST];
    }

    /** The same in smaller letters: it has room wherever this one has. */
    NameSetting smaller(int lower) {
        if (rows.size() == 2 && rows.get(0).y() == rows.get(1).y()) {
            return beside(rows.get(0).words(), rows.get(1).words(), lower);
        }
        double part = SIZES[lower] / SIZES[size];
        List<Row> less = rows.stream()
                .map(row -> new Row(
                        row.words(),
                        row.quiet() ? plain(lower) : bold(lower),
                        row.x() * part,
                        row.y() * part,
                        row.quiet()))
                .toList();
        return new NameSetting(less, wide, high * part, lower, whole);
    }

    static Font bold(int size) {
        return Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, SIZES[size]);
    }

    static Font plain(int size) {
        return Font.font(SMALL[size]);
    }

    /** In one row with nothing else. */
    static NameSetting alone(String name, int size, boolean whole) {
        return rows(List.of(name), List.of(), size, whole);
    }

    /** The name, and below it what goes with it. */
    static NameSetting above(String name, String below, int size) {
        double letters = SIZES[size];
        Row upper = new Row(name, bold(size), 0, -letters * 0.55, false);
        Row lower = new Row(below, plain(size), 0, letters * 0.6, true);
        double wide = Math.max(Ruler.width(name, upper.font()), Ruler.width(below, lower.font()));
        return new NameSetting(List.of(upper, lower), wide, TWO_HIGH * letters, size, true);
    }

    /** On a narrow piece such as a band: the name and beside it what goes with it. */
    static NameSetting beside(String name, String behind, int size) {
        double first = Ruler.width(name, bold(size));
        double second = Ruler.width(behind, plain(size));
        double wide = first + GAP * SIZES[size] + second;
        Row left = new Row(name, bold(size), (first - wide) / 2, 0, false);
        Row right = new Row(behind, plain(size), (wide - second) / 2, 0, true);
        return new NameSetting(List.of(left, right), wide, HIGH * SIZES[size], size, true);
    }

    /** A name in several rows, and below it what goes with it, in none or several. */
    static NameSetting rows(List<String> names, List<String> below, int size, boolean whole) {
        double pitch = PITCH * SIZES[size];
        int many = names.size() + below.size();
        List<Row> rows = new ArrayList<>();
        double wide = 0;
        for (int i = 0; i < many; i++) {
            boolean quiet = i >= names.size();
            String words = quiet ? below.get(i - names.size()) : names.get(i);
            Font font = quiet ? plain(size) : bold(size);
            rows.add(new Row(words, font, 0, (i - (many - 1) / 2.0) * pitch, quiet));
            wide = Math.max(wide, Ruler.width(words, font));
        }
        return new NameSetting(rows, wide, HIGH * SIZES[size] + (many - 1) * pitch, size, whole);
    }
}
