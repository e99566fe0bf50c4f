package easewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rows of text set in columns as wide as their widest cell. A column of figures is set by its decimal points, all with
 * as many places as the longest has, or by its fractions. What does not fit into a last column of words goes on below.
 */
final class Table {
    private static final Pattern FIGURE =
            Pattern.compile("(?<whole>[+\u2212]?[0-9]*)(?:\\.(?<places>[0-9]+)| ?(?<fraction>[0-9]+/[0-9]+))?");
    private static final Pattern FRACTION_ONLY = Pattern.compile("(?<sign>[+\u2212]?)(?<fraction>[0-9]+/[0-9]+)");
    private static final String GAP = "  ";
    private static final int NARROWEST = 24;

    private final List<List<String>> rows = new ArrayList<>();
    private boolean headed;

    /** What stands above the columns. */
    Table head(String... cells) {
        headed = true;
        rows.add(0, List.of(cells));
        return this;
    }

    Table row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    boolean isEmpty() {
        return rows.size() == (headed ? 1 : 0);
    }

    void print(PrintWriter out) {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        List<List<String>> set = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            set.add(column(i));
        }
        int before = 0;
        for (int i = 0; i < columns - 1; i++) {
            before += GAP.length() + Page.length(set.get(i).get(0));
        }
        int room = Math.max(NARROWEST, Page.WIDTH - before - GAP.length());
        for (int r = 0; r < rows.size(); r++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns - 1; i++) {
                line.append(GAP).append(set.get(i).get(r));
            }
            String indent = GAP + " ".repeat(before);
            boolean first = true;
            String cell = set.get(columns - 1).get(r).stripTrailing();
            for (String part : Page.length(cell) <= room ? List.of(cell) : Page.wrapped(cell, room)) {
                String start = first ? line + GAP : indent;
                out.println((start + part).stripTrailing());
                first = false;
            }
        }
    }

    /** A column with all its cells of one width. */
    private List<String> column(int index) {
        List<String> cells = new ArrayList<>();
        for (List<String> row : rows) {
            cells.add(index < row.size() ? row.get(index) : "");
        }
        List<String> body = new ArrayList<>(cells.subList(headed ? 1 : 0, cells.size()));
        boolean figures = body.stream().anyMatch(c -> !c.isEmpty())
                && body.stream().allMatch(c -> FIGURE.matcher(c).matches());
        if (figures) {
            body = figures(body);
        }
        if (headed) {
            body.add(0, cells.get(0));
        }
        int width = body.stream().mapToInt(Page::length).max().orElse(0);
        List<String> padded = new ArrayList<>();
        for (String cell : body) {
            String pad = " ".repeat(width - Page.length(cell));
            padded.add(figures ? pad + cell : cell + pad);
        }
        return padded;
    }

    /** Figures with the same number of places, or with their fractions one below the other. */
    private static List<String> figures(List<String> cells) {
        List<String> wholes = new ArrayList<>();
        List<String> rests = new ArrayList<>();
        boolean fractions = cells.stream().anyMatch(c -> c.indexOf('/') >= 0);
        for (String cell : cells) {
            Matcher only = FRACTION_ONLY.matcher(cell);
            Matcher figure = FIGURE.matcher(cell);
            if (only.matches()) {
                wholes.add("");
                String sign = only.group("sign");
                rests.add((sign.isEmpty() ? " " : sign) + only.group("fraction"));
            } else if (figure.matches()) {
                wholes.add(figure.group("whole"));
                String fraction = figure.group("fraction");
                String places = figure.group("places");
                rests.add(fraction != null ? " " + fraction : places != null ? "." + places : "");
            }
        }
        int most = rests.stream().mapToInt(String::length).max().orElse(0);
        List<String> set = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String rest = rests.get(i);
            boolean empty = cells.get(i).isEmpty();
            if (empty || fractions) {
                rest += " ".repeat(most - rest.length());
            } else if (rest.length() < most) {
                rest = (rest.isEmpty() ? "." : rest) + "0".repeat(most - Math.max(1, rest.length()));
            }
            set.add(wholes.get(i) + rest);
        }
        return set;
    }
}
