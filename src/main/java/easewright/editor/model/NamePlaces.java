package easewright.editor.model;

import easewright.editor.paint.NamePlace;
import easewright.editor.paint.TableScene;
import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.measure.LevelWidth;
import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Remembers where the name of each piece has room: looking for that takes longer than painting it. */
final class NamePlaces {
    /** Of a letter, as a part of its height. */
    private static final double WIDTH = 0.6;

    private final Map<Piece, NamePlace> known = new IdentityHashMap<>();
    private boolean heeding;

    /** Whether words written on the drawing are to be seen, so that names are to keep clear of them. */
    void heedWords(boolean heed) {
        if (heed != heeding) {
            heeding = heed;
            known.clear();
        }
    }

    /**
     * The place of a name.
     *
     * @param piece as it was before a change is tried, so that names do not jump about
     */
    NamePlace of(Desk desk, Piece piece) {
        return known.computeIfAbsent(piece, p -> NamePlace.on(p, levels(desk, p), boxes(words(desk, p))));
    }

    void forgetAllBut(List<Piece> present) {
        if (known.size() > present.size()) {
            Set<Piece> kept = Collections.newSetFromMap(new IdentityHashMap<>());
            kept.addAll(present);
            known.keySet().removeIf(p -> !kept.contains(p));
        }
    }

    /** The words written on the piece, where they are to be seen. */
    List<TableScene.Written> words(Desk desk, Piece piece) {
        if (!heeding || desk.file().isEmpty()) {
            return List.of();
        }
        SvgFile svg = desk.file().get().svg();
        double grown =
                desk.pattern().scale().mmPerUnitX() / svg.drawing().scale().mmPerUnitX();
        Box paper = piece.outline().box();
        String name = letters(piece.plainName());
        return svg.texts().stream()
                .filter(c -> paper.contains(c.middle().times(grown)))
                .map(c -> new TableScene.Written(
                        around(c, grown),
                        c.height() * grown,
                        !name.isEmpty() && letters(String.join(" ", c.lines())).contains(name)))
                .toList();
    }

    /** The words written beside all pieces, where they are to be seen. */
    List<Caption> wordsBeside(Desk desk, Pattern shown) {
        if (!heeding || desk.file().isEmpty()) {
            return List.of();
        }
        SvgFile svg = desk.file().get().svg();
        double grown = shown.scale().mmPerUnitX() / svg.drawing().scale().mmPerUnitX();
        return svg.texts().stream()
                .map(c -> new Caption(c.lines(), c.middle().times(grown), c.height() * grown))
                .filter(c ->
                        shown.pieces().stream().noneMatch(p -> p.outline().box().contains(c.middle())))
                .toList();
    }

    private static String letters(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    private static Box around(Caption words, double grown) {
        Point middle = words.middle().times(grown);
        double high = words.height() * grown;
        double wide = WIDTH
                * high
                * words.lines().stream().mapToInt(String::length).max().orElse(0);
        return new Box(
                middle.x() - wide / 2,
                middle.y() - 0.6 * high,
                middle.x() + wide / 2,
                middle.y() + (1.2 * words.lines().size() - 0.6) * high);
    }

    /** Around those that stay: a name gives way to the one that is written here. */
    private static List<Box> boxes(List<TableScene.Written> words) {
        return words.stream()
                .filter(w -> !w.names())
                .map(TableScene.Written::box)
                .toList();
    }

    private static List<Line> levels(Desk desk, Piece piece) {
        return desk.reading().measures().girths().stream()
                .flatMap(g -> g.parts().stream())
                .filter(part -> part.pieceId().equals(piece.id()))
                .map(LevelWidth::spans)
                .flatMap(List::stream)
                .filter(s -> !s.from().equals(s.to()))
                .map(s -> new Line(s.from(), s.to()))
                .toList();
    }
}
