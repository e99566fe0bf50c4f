package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Places of a pattern as they are written: {@code piece/edge/start}, {@code piece/edge/end}, {@code piece/notch},
 * {@code piece/edge@120mm} (along the drawn edge from its start), {@code piece/edge@40%} of its length,
 * {@code piece/edge@hip} (where the level meets the edge), or {@code x,y} in mm of the drawing.
 */
public final class PlaceText {
    /** A place this close to a named one is that one, mm. */
    private static final double SAME = 1e-6;

    private PlaceText() {}

    /**
     * The place meant.
     *
     * @throws Refusal if the text has none of the forms, or names what the pattern does not have
     * @throws X       if a length in it cannot be read
     */
    public static <X extends Exception> Point read(Pattern pattern, String text, LengthReader<X> lengths)
            throws Refusal, X {
        String plain = text.strip();
        int slash = plain.lastIndexOf('/');
        if (slash <= 0) {
            return coordinates(plain);
        }
        int at = plain.lastIndexOf('@');
        if (at > slash) {
            return along(
                    pattern,
                    KnownNames.edgeRef(pattern, plain.substring(0, at).strip()),
                    plain.substring(at + 1).strip(),
                    lengths);
        }
        String last = plain.substring(slash + 1).strip().toLowerCase(Locale.ROOT);
        if (plain.indexOf('/') < slash && List.of("start", "end").contains(last)) {
            Edge edge = edge(pattern, KnownNames.edgeRef(pattern, plain.substring(0, slash)));
            return last.equals("start") ? edge.from() : edge.to();
        }
        Piece piece = KnownNames.piece(pattern, plain.substring(0, slash).strip());
        return KnownNames.notch(piece, plain.substring(slash + 1).strip()).at();
    }

    /**
     * How a place is written for a person: by a name where it has one, else along the nearest edge to a tenth of a
     * millimetre, and by its coordinates only where it lies on no edge.
     */
    public static String write(Pattern pattern, Point place) {
        return write(pattern, place, mm -> decimal(mm) + "mm");
    }

    /** The same with lengths along an edge written as told, by what a length in mm is given for. */
    public static String write(Pattern pattern, Point place, DoubleFunction<String> length) {
        String best = decimal(place.x()) + "," + decimal(place.y());
        double least = Shift.ON_OUTLINE;
        for (Piece piece : pattern.pieces()) {
            for (Notch notch : piece.notches()) {
                if (notch.at().distance(place) <= SAME) {
                    return piece.name() + "/" + notch.name();
                }
            }
            for (Edge edge : piece.edges()) {
                String name = piece.name() + "/" + edge.name();
                if (edge.from().distance(place) <= SAME) {
                    return name + "/start";
                }
                if (edge.to().distance(place) <= SAME) {
                    return name + "/end";
                }
                Curve run = edge.on(piece.outline());
                var near = run.nearest(place);
                if (near.distance() < least) {
                    least = near.distance();
                    best = name + "@" + length.apply(run.lengthTo(near.place()));
                }
            }
        }
        return best;
    }

    private static <X extends Exception> Point along(
            Pattern pattern, EdgeRef ref, String where, LengthReader<X> lengths) throws Refusal, X {
        Piece piece = pattern.piece(ref.piece()).orElseThrow();
        Edge edge = edge(pattern, ref);
        Optional<Level> level = pattern.levels().stream()
                .filter(l -> l.name().equalsIgnoreCase(where))
                .findFirst();
        if (level.isPresent()) {
            return LevelReach.of(piece, edge, level.get())
                    .map(LevelReach::drawn)
                    .orElseThrow(() -> Refusal.of("edge-not-at-level")
                            .with("piece", piece.name())
                            .with("edge", edge.name())
                            .with("level", level.get().name()));
        }
        Curve run = edge.on(piece.outline());
        double length = run.length();
        double mm = where.endsWith("%")
                ? length * number(where.substring(0, where.length() - 1), where) / 100
                : lengths.mm(where);
        if (!(mm >= 0 && mm <= length + SAME)) {
            throw Refusal.of("place-off-edge")
                    .with("text", where)
                    .with("edge", edge.name())
                    .with("piece", piece.name())
                    .with("length", length);
        }
        return run.pointAtLength(mm);
    }

    private static Point coordinates(String text) throws Refusal {
        String[] xy = text.split(",", -1);
        if (xy.length != 2) {
            throw Refusal.of("place-form").with("text", text);
        }
        return new Point(number(xy[0], text), number(xy[1], text));
    }

    private static double number(String digits, String text) throws Refusal {
        try {
            double value = Double.parseDouble(digits.strip());
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            throw Refusal.of("place-form").with("text", text);
        }
        throw Refusal.of("place-form").with("text", text);
    }

    private static Edge edge(Pattern pattern, EdgeRef ref) {
        return pattern.edge(ref).orElseThrow();
    }

    private static String decimal(double mm) {
        BigDecimal rounded =
                BigDecimal.valueOf(mm).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
