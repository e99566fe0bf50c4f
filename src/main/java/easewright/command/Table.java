package easewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Rows of text set in columns as wide as their widest cell. */
final class Table {
    private final List<List<String>> rows = new ArrayList<>();

    Table row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    void print(PrintWriter out) {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                int width = row.get(i).codePointCount(0, row.get(i).length());
                if (i == widths.size()) {
                    widths.add(width);
                } else {
                    widths.set(i, Math.max(widths.get(i), width));
                }
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                String cell = row.get(i);
                line.append("  ").append(cell);
                line.append(" ".repeat(widths.get(i) - cell.codePointCount(0, cell.length())));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
