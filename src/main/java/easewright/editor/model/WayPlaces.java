package easewright.editor.model;

import easewright.alter.PlaceText;
import easewright.alter.Refusal;
import easewright.alter.Setting;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Places chosen in the form of a way: where they lie on the table, and how a click becomes one. */
public final class WayPlaces {
    private WayPlaces() {}

    /**
     * A place that was chosen.
     *
     * @param label what it is for, in words
     */
    public record Chosen(Point at, String label) {}

    /** All places that stand in the form and can be read. */
    public static List<Chosen> of(Desk desk) {
        List<Chosen> places = new ArrayList<>();
        desk.wanted().flatMap(Wanted::inForm).ifPresent(other -> {
            for (Setting setting : other.way().settings()) {
                List<String> texts = other.texts(setting.key());
                if (setting.kind() == Setting.Kind.SLASHES) {
                    cuts(desk, texts, places);
                } else if (setting.kind() == Setting.Kind.PLACE || setting.kind() == Setting.Kind.PLACES) {
                    String key = "way." + other.method() + ".setting." + setting.key();
                    texts.forEach(t -> add(desk, t, desk.words().of(key), places));
                }
            }
        });
        return List.copyOf(places);
    }

    /** The cuts that stand in the form, from where they open to where they end. */
    public static List<Line> cuts(Desk desk) {
        List<Line> lines = new ArrayList<>();
        desk.wanted().flatMap(Wanted::inForm).ifPresent(other -> {
            List<String> ends = new ArrayList<>();
            for (Setting setting : other.way().settings()) {
                if (setting.kind() == Setting.Kind.SLASHES) {
                    other.texts(setting.key()).forEach(t -> line(desk, List.of(t.split("=")[0].split(">")), lines));
                } else if (setting.kind() == Setting.Kind.PLACE && ends.size() < 2) {
                    // Where a way asks for single places, the first two are the ends of its cut.
                    ends.addAll(other.texts(setting.key()));
                }
            }
            line(desk, ends, lines);
        });
        return List.copyOf(lines);
    }

    private static void line(Desk desk, List<String> ends, List<Line> lines) {
        if (ends.size() > 1) {
            Optional<Point> from = read(desk.pattern(), ends.get(0));
            Optional<Point> to = read(desk.pattern(), ends.get(1));
            if (from.isPresent() && to.isPresent()) {
                lines.add(new Line(from.get(), to.get()));
            }
        }
    }

    /** Both ends of each cut. */
    private static void cuts(Desk desk, List<String> texts, List<Chosen> places) {
        for (int i = 0; i < texts.size(); i++) {
            String[] ends = texts.get(i).split("=")[0].split(">");
            Map<String, Object> number = Map.of("number", i + 1);
            add(desk, ends[0], desk.words().of("editor.way.cut.opens", number), places);
            if (ends.length > 1) {
                add(desk, ends[1], desk.words().of("editor.way.cut.ends", number), places);
            }
        }
    }

    private static void add(Desk desk, String text, String label, List<Chosen> places) {
        read(desk.pattern(), text).ifPresent(p -> places.add(new Chosen(p, label)));
    }

    private static Optional<Point> read(Pattern pattern, String text) {
        try {
            return Optional.of(PlaceText.read(pattern, text, t -> Lengths.parse(t, LengthUnit.MM)));
        } catch (Refusal | Unreadable unreadable) {
            // The trial says what is wrong with it.
            return Optional.empty();
        }
    }

    /** The place as a form writes it, in the unit chosen to hundredths: a fraction would be too coarse to be read again. */
    public static String text(Desk desk, Point place) {
        LengthUnit unit = desk.unit();
        return PlaceText.write(
                desk.pattern(),
                place,
                mm -> BigDecimal.valueOf(mm / unit.mm())
                                .setScale(2, RoundingMode.HALF_UP)
                                .stripTrailingZeros()
                                .toPlainString()
                        + unit.symbol());
    }

    /**
     * The same for a setting of the form: a place in the midst of a piece that only says which part is meant is written as
     * the nearest place on that part's edges, in words rather than in figures of the drawing.
     */
    public static String text(Desk desk, String key, Point place) {
        List<Line> cuts = isOfPart(desk, key) ? cuts(desk) : List.of();
        return text(desk, cuts.isEmpty() ? place : onPart(desk.pattern(), cuts.get(0), place));
    }

    /** Where a way asks for single places, those after the ends of its cut say which part is meant. */
    private static boolean isOfPart(Desk desk, String key) {
        return desk.wanted()
                .flatMap(Wanted::inForm)
                .filter(other -> other.way().settings().stream()
                        .filter(s -> s.kind() == Setting.Kind.PLACE)
                        .skip(2)
                        .anyMatch(s -> s.key().equals(key)))
                .isPresent();
    }

    /** The place on an edge nearest to one in a piece, on the same side of the cut; the place itself where it is in none. */
    private static Point onPart(Pattern pattern, Line cut, Point place) {
        Point best = place;
        double least = Double.POSITIVE_INFINITY;
        for (Piece piece : pattern.pieces()) {
            if (piece.outline().contains(place)) {
                for (Edge edge : piece.edges()) {
                    Nearest near = edge.on(piece.outline()).nearest(place);
                    if (near.distance() < least && side(cut, near.point()) * side(cut, place) > 0) {
                        least = near.distance();
                        best = near.point();
                    }
                }
            }
        }
        return best;
    }

    /** On which side of the cut a place lies: above 0 on one, below 0 on the other. */
    private static double side(Line cut, Point place) {
        return cut.end().minus(cut.start()).cross(place.minus(cut.start()));
    }

    /** The notch, corner or line that a click means, or the very place clicked where none is near. */
    public static Point meant(Pattern pattern, Point click, double near) {
        Point best = click;
        double least = near;
        for (Piece piece : pattern.pieces()) {
            Stream<Point> marks = Stream.concat(
                    piece.notches().stream().map(Notch::at),
                    piece.edges().stream().map(Edge::from));
            for (Point mark : marks.toList()) {
                if (mark.distance(click) < least) {
                    least = mark.distance(click);
                    best = mark;
                }
            }
        }
        if (!best.equals(click)) {
            return best;
        }
        for (Piece piece : pattern.pieces()) {
            Nearest line = piece.outline().nearest(click);
            if (line.distance() < least) {
                least = line.distance();
                best = line.point();
            }
        }
        return best;
    }

    /** Places to go through by key: piece by piece each edge's start and its quarters, then notches and dart points. */
    public static List<Point> certain(Pattern pattern) {
        return pattern.pieces().stream().flatMap(p -> certain(p).stream()).toList();
    }

    /** Where among the certain places the first of each piece stands that has any. */
    public static List<Integer> firstOfPieces(Pattern pattern) {
        List<Integer> firsts = new ArrayList<>();
        int at = 0;
        for (Piece piece : pattern.pieces()) {
            int count = certain(piece).size();
            if (count > 0) {
                firsts.add(at);
            }
            at += count;
        }
        return List.copyOf(firsts);
    }

    private static List<Point> certain(Piece piece) {
        List<Point> places = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Curve run = edge.on(piece.outline());
            for (int quarter = 0; quarter < 4; quarter++) {
                places.add(run.pointAtLength(run.length() * quarter / 4));
            }
        }
        piece.notches().forEach(n -> places.add(n.at()));
        piece.darts().forEach(d -> places.add(d.point()));
        return places;
    }
}
