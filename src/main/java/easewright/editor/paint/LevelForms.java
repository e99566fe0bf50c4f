package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The label of each level of one piece in the forms in which it may be set. What is seen of a level is found once for all
 * of them; a level of which too little is seen has no label in any.
 */
final class LevelForms {
    /** A level shorter than this goes without a label, pixels; and one that is worked at. */
    private static final double SHORT = 40;

    private static final double SHORTEST = 24;

    /** What lies so far from a level is on the paper beside it, or off it, pixels. */
    private static final double EDGE = 6;

    /** A long name is shortened to so many letters where there is no room for it. */
    private static final int LETTERS = 12;

    private final Viewport view;
    private final TableScene.PieceSight sight;
    private final SeenTable table;
    private final Map<String, Optional<Seen>> lines = new HashMap<>();
    private final Map<TableScene.LevelSight, Map<Form, Optional<LevelLabel>>> set = new IdentityHashMap<>();

    LevelForms(Viewport view, TableScene.PieceSight sight, SeenTable table) {
        this.view = view;
        this.sight = sight;
        this.table = table;
    }

    /** How the label of a level at work may be set, the best first. */
    enum Form {
        ONE_ROW,
        TWO_ROWS,
        COMPACT
    }

    /**
     * Where words about a level find their place, whatever they are.
     *
     * @param length of the level, pixels
     * @param line   what is seen of it, pixels
     * @param off    the way off the paper
     */
    private record Seen(double length, Line line, Optional<Point> off) {}

    /** Its name and its figures: the same label whenever it is asked for. */
    Optional<LevelLabel> of(TableScene.LevelSight level, Form form) {
        return set.computeIfAbsent(level, l -> new EnumMap<>(Form.class)).computeIfAbsent(form, f -> label(level, f));
    }

    private Optional<LevelLabel> label(TableScene.LevelSight level, Form form) {
        return switch (form) {
            case ONE_ROW -> label(level, List.of(level.label()), false);
            case TWO_ROWS -> label(level, List.of(level.head(LETTERS), level.figures()), false);
            case COMPACT -> label(level, List.of(level.head(LETTERS), level.figures()), true);
        };
    }

    /** Its name alone. */
    Optional<LevelLabel> named(TableScene.LevelSight level) {
        return label(level, List.of(level.name()), false);
    }

    /** Its name alone, shortened if it is long. */
    Optional<LevelLabel> shortened(TableScene.LevelSight level) {
        return label(level, List.of(level.name(LETTERS)), false);
    }

    private Optional<LevelLabel> label(TableScene.LevelSight level, List<String> rows, boolean compact) {
        return lines.computeIfAbsent(level.level(), name -> seen(level))
                .map(s -> new LevelLabel(rows, level.chosen(), compact, s.length(), s.line(), s.off()));
    }

    private Optional<Seen> seen(TableScene.LevelSight level) {
        Optional<Line> line = LevelPainter.middle(level)
                .filter(widest -> widest.length() * view.scale() > SHORT)
                .or(() -> LevelPainter.extent(level)
                        .filter(all -> all.length() * view.scale() > (level.chosen() ? SHORTEST : SHORT)));
        return line.flatMap(l -> table.seen(view.toScreen(l.start()), view.toScreen(l.end()))
                .filter(seen -> seen.length() > 0)
                .map(seen -> new Seen(l.length() * view.scale(), seen, offPaper(l))));
    }

    /** The way off the paper, up or down, from a level along the edge of its piece: there its label hides no dart. */
    private Optional<Point> offPaper(Line span) {
        Point middle = view.toScreen(span.at(0.5));
        List<Point> ways = List.of(new Point(0, -1), new Point(0, 1));
        List<Point> off = ways.stream()
                .filter(way -> {
                    Point there = middle.plus(way.times(EDGE));
                    return !sight.piece().outline().contains(view.toTable(there.x(), there.y()));
                })
                .toList();
        return off.size() == 1 ? Optional.of(off.get(0)) : Optional.empty();
    }
}
