package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.UprightSquare;
import easewright.pattern.Caption;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * A drawn square or ruler line by which the size of the drawing can be proved.
 *
 * @param line   one side of the square, or the ruler line, where it is drawn
 * @param square whether it is a square
 * @param stated what is written beside it, mm; empty for a square without words
 * @param words  the words beside it; may be empty
 * @param piece  id of the piece that is this square, if one was taken for it
 */
public record KnownLength(Line line, boolean square, OptionalDouble stated, String words, Optional<String> piece) {
    /** Sides of a square agree this well, relatively. */
    private static final double EQUAL = 0.004;

    /** Most lines that are looked at: a drawing with more of them has no ruler that anybody would find. */
    private static final int MOST = 3000;

    private static final Pattern TO_CHECK = Pattern.compile(
            "\\b(test|check|control|calibrat\\w*|scale|scaling|gauge|square|print(ed|ing)?|measures?)\\b",
            Pattern.CASE_INSENSITIVE);

    /** A figure of more lines, as traced from a scan, is no square. */
    private static final int MOST_SIDES = 400;

    /** The length as drawn at the sheet's scale, mm. */
    public double drawn() {
        return line.length();
    }

    /** Whether the words agree with the drawing, within what a pen can show (0.5 %). */
    public boolean agrees() {
        return stated.isPresent() && Math.abs(drawn() / stated.getAsDouble() - 1) < 0.005;
    }

    /** All of them, those with words first, and squares before lines. */
    public static List<KnownLength> on(Sheet sheet) {
        List<KnownLength> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.riders().isEmpty() && piece.edges().isEmpty()) {
                square(piece.outline().segments(), sheet, Optional.of(piece.id()))
                        .ifPresent(found::add);
            }
        }
        Map<String, List<Segment>> shapes = new LinkedHashMap<>();
        sheet.loose().forEach(rider -> add(rider, shapes));
        sheet.pattern().pieces().forEach(p -> p.riders().forEach(rider -> add(rider, shapes)));
        if (shapes.size() > MOST) {
            return List.copyOf(found);
        }
        for (List<Segment> lines : shapes.values()) {
            square(lines, sheet, Optional.empty()).or(() -> ruler(lines, sheet)).ifPresent(found::add);
        }
        found.sort(Comparator.comparing((KnownLength k) -> k.stated().isEmpty()).thenComparing(k -> !k.square()));
        return List.copyOf(found);
    }

    /** Strokes of one drawn element lie under its id, whatever their number. */
    private static void add(Rider rider, Map<String, List<Segment>> shapes) {
        String id = rider.id().replaceFirst("#\\d+$", "");
        List<Segment> all = shapes.computeIfAbsent(id, i -> new ArrayList<>());
        if (all.size() <= MOST_SIDES) {
            all.addAll(rider.segments());
        }
    }

    private static Optional<KnownLength> square(List<Segment> sides, Sheet sheet, Optional<String> piece) {
        Optional<UprightSquare> square = UprightSquare.of(sides, EQUAL / 2);
        if (square.isEmpty()) {
            return Optional.empty();
        }
        Box box = square.get().box();
        double side = square.get().side();
        Optional<Caption> words = beside(
                sheet,
                c -> box.grown(side / 2).contains(c.middle()) || isBegunBeside(c, box, side / 2)
                        ? box.centre().distance(c.middle())
                        : Double.POSITIVE_INFINITY,
                false);
        Point middle = new Point(box.centre().x(), box.maxY());
        Point half = new Point(side / 2, 0);
        Line shown = new Line(middle.minus(half), middle.plus(half));
        return Optional.of(new KnownLength(shown, true, length(words), words(words), piece));
    }

    /** Long words, of which only one end is near, are about a square only if they speak of what it is there for. */
    private static boolean isBegunBeside(Caption caption, Box box, double near) {
        return box.distance(caption.nearest(box.centre())) <= near
                && TO_CHECK.matcher(caption.words()).find();
    }

    private static Optional<KnownLength> ruler(List<Segment> lines, Sheet sheet) {
        if (lines.size() != 1 || !(lines.get(0) instanceof Line line) || line.length() == 0) {
            return Optional.empty();
        }
        Optional<Caption> words = beside(
                sheet,
                c -> {
                    double away = away(line, c.middle());
                    return away <= 3 * c.height() ? away : Double.POSITIVE_INFINITY;
                },
                true);
        return words.map(c -> new KnownLength(line, false, length(words), c.words(), Optional.empty()));
    }

    private static double away(Line line, Point p) {
        return line.at(line.nearest(p)).distance(p);
    }

    /** The nearest caption that states a length. */
    private static Optional<Caption> beside(Sheet sheet, ToDoubleFunction<Caption> distance, boolean nothingElse) {
        return sheet.captions().stream()
                .filter(c -> nothingElse
                        ? WrittenLength.only(c.words()).isPresent()
                        : WrittenLength.in(c.words()).isPresent())
                .filter(c -> Double.isFinite(distance.applyAsDouble(c)))
                .min(Comparator.comparingDouble(distance));
    }

    private static OptionalDouble length(Optional<Caption> words) {
        return words.map(c -> WrittenLength.in(c.words())).orElse(OptionalDouble.empty());
    }

    private static String words(Optional<Caption> words) {
        return words.map(Caption::words).orElse("");
    }
}
