package easewright.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds words that were turned into shapes, each letter large enough to be taken for a piece. Letters stand in a row on
 * one line, near to each other and about as high as each other; they are drawn with a stroke that is thin for their
 * height; half of them or more are hollow; and beside the largest outline on the sheet they are small. Tabs, pockets and
 * belt loops laid in a row are broad or full. Measures are common practice of lettering.
 */
final class LetterRows {
    /** Fewer in a row are no word. */
    private static final int LEAST = 3;

    /** Letters higher than this, mm, stand closer: facings are of such a size. */
    private static final double LARGE = 60;

    /** As part of the longest side of the largest outline. */
    private static final double HIGHEST = 0.3;

    private static final double LARGEST_AREA = 0.1;

    /** Stroke by height: bold capitals reach about a quarter. */
    private static final double THICKEST = 0.28;

    /** Facings are broader than this, mm. */
    private static final double BROADEST = 30;

    /** Between two letters, by height: a space among them. */
    private static final double WIDEST_GAP = 0.9;

    private static final double WIDEST_LARGE_GAP = 0.5;

    /** How unlike in height two letters of a row may be. */
    private static final double HEIGHTS = 2.2;

    /** How near to the line letters stand, by height, but for a few that go below it. */
    private static final double ON_THE_LINE = 0.1;

    private static final double BELOW_THE_LINE = 0.4;

    private static final double MOSTLY = 0.6;

    private static final double THIN = 0.8;

    /** Short words are lettering if they stand this near to a longer one, by height. */
    private static final double NEAR = 2.5;

    /** More outlines than this are no words but a picture. */
    private static final int MOST = 1500;

    private LetterRows() {}

    private static final class Row {
        private final List<Glyph> glyphs = new ArrayList<>();

        /** Of the highest letter, mm. */
        private double height;

        /** On which most of them stand, mm down the page. */
        private double line;

        private Row(Glyph first) {
            add(first);
        }

        private void add(Glyph glyph) {
            glyphs.add(glyph);
            height = Math.max(height, glyph.box().height());
            double[] feet =
                    glyphs.stream().mapToDouble(g -> g.box().maxY()).sorted().toArray();
            line = feet[feet.length / 2];
        }

        boolean goesOn(Glyph next) {
            Glyph last = glyphs.get(glyphs.size() - 1);
            double high = Math.max(height, next.box().height());
            double low = Math.min(last.box().height(), next.box().height());
            double gap = next.box().minX() - last.box().maxX();
            double widest = (high > LARGE ? WIDEST_LARGE_GAP : WIDEST_GAP) * high;
            return high <= HEIGHTS * low
                    && gap <= widest
                    && gap >= -0.2 * high
                    && Math.abs(next.box().maxY() - line) <= BELOW_THE_LINE * high;
        }

        boolean isWord() {
            long onLine = glyphs.stream()
                    .filter(g -> Math.abs(g.box().maxY() - line) <= ON_THE_LINE * height)
                    .count();
            return glyphs.size() >= LEAST
                    && onLine >= MOSTLY * glyphs.size()
                    && letters().size() >= THIN * glyphs.size()
                    && hollow() >= Math.max(2, glyphs.size() / 2.0);
        }

        /** Those drawn with a thin stroke: what is broad stands beside the word by chance. */
        private List<Glyph> letters() {
            double thickest = Math.min(BROADEST, THICKEST * height);
            return glyphs.stream().filter(g -> g.stroke() <= thickest).toList();
        }

        private long hollow() {
            return glyphs.stream().filter(Glyph::hollow).count();
        }

        /** A short word above, below or beside a longer one. */
        boolean goesWith(Row word) {
            double high = word.height;
            return height <= 1.3 * high
                    && height >= high / 1.5
                    && letters().size() == glyphs.size()
                    && glyphs.stream()
                            .anyMatch(g -> word.glyphs.stream()
                                    .anyMatch(w -> w.box().grown(NEAR * high).overlaps(g.box())));
        }
    }

    /** The shapes and sub-paths that are letters, as {@code List.of(shape, subPath)}. */
    static Set<List<Integer>> in(List<DrawnShape> shapes, List<PieceOutline> outlines) {
        Optional<Area> largest = outlines.stream().map(PieceOutline::area).max(Comparator.comparingDouble(Area::area));
        if (largest.isEmpty()) {
            return Set.of();
        }
        double side = Math.max(largest.get().box().width(), largest.get().box().height());
        List<Glyph> glyphs = new ArrayList<>();
        for (int i = 0; i < shapes.size() && glyphs.size() <= MOST; i++) {
            if (shapes.get(i).shown()) {
                Glyph.of(shapes.get(i), i).stream()
                        .filter(g -> g.area() <= LARGEST_AREA * largest.get().area())
                        .filter(g -> Math.max(g.box().width(), g.box().height()) <= HIGHEST * side)
                        .forEach(glyphs::add);
            }
        }
        if (glyphs.size() > MOST) {
            return Set.of();
        }
        Set<List<Integer>> letters = new HashSet<>();
        // Words may be written down or up the sheet.
        for (int quarter : new int[] {0, 1, 3}) {
            List<Glyph> turned = glyphs;
            for (int i = 0; i < quarter; i++) {
                turned = turned.stream().map(Glyph::turned).toList();
            }
            words(turned).forEach(g -> letters.add(List.of(g.shape(), g.subPath())));
        }
        return letters;
    }

    private static List<Glyph> words(List<Glyph> glyphs) {
        List<Row> rows = rows(glyphs);
        List<Row> words = new ArrayList<>(rows.stream().filter(Row::isWord).toList());
        int before = 0;
        List<Row> rest = new ArrayList<>(rows);
        rest.removeAll(words);
        while (words.size() > before) {
            before = words.size();
            List<Row> more = rest.stream()
                    .filter(row -> words.stream().anyMatch(row::goesWith))
                    .toList();
            words.addAll(more);
            rest.removeAll(more);
        }
        return words.stream().flatMap(row -> row.letters().stream()).toList();
    }

    private static List<Row> rows(List<Glyph> glyphs) {
        List<Glyph> fromLeft = new ArrayList<>(glyphs);
        fromLeft.sort(Comparator.comparingDouble(g -> g.box().minX()));
        List<Row> rows = new ArrayList<>();
        for (Glyph glyph : fromLeft) {
            Optional<Row> row = rows.stream().filter(r -> r.goesOn(glyph)).findFirst();
            if (row.isPresent()) {
                row.get().add(glyph);
            } else {
                rows.add(new Row(glyph));
            }
        }
        return rows;
    }
}
