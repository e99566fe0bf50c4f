package easewright.svg;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How values are spelled in the marks block. */
final class MarkWords {
    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)";
    private static final Pattern LENGTH = Pattern.compile(
            "(?:(" + NUMBER + ")|([+-]?)(?:(\\d+)\\s+)?(\\d+)/(\\d+))\\s*(mm|cm|in)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern PAIR = Pattern.compile("(" + NUMBER + ")\\s*[\\s,]\\s*(" + NUMBER + ")");

    private MarkWords() {}

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <E extends Enum<E>> Optional<E> value(Class<E> type, String word) {
        for (E value : type.getEnumConstants()) {
            if (word(value).equals(word)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    static String place(Point p) {
        return Decimals.exact(p.x()) + " " + Decimals.exact(p.y());
    }

    /** A place, mm; none if the text is not two numbers. */
    static Optional<Point> place(String text) {
        Matcher pair = PAIR.matcher(text.strip());
        if (!pair.matches()) {
            return Optional.empty();
        }
        double x = Double.parseDouble(pair.group(1));
        double y = Double.parseDouble(pair.group(2));
        return Double.isFinite(x) && Double.isFinite(y) ? Optional.of(new Point(x, y)) : Optional.empty();
    }

    /** A plain number. */
    static Optional<Double> number(String text) {
        return text.strip().matches(NUMBER) ? finite(Double.parseDouble(text.strip())) : Optional.empty();
    }

    /** A length with or without a unit, as mm: {@code 15}, {@code 15mm}, {@code 1.5cm}, {@code 5/8in}. */
    static Optional<Double> length(String text) {
        Matcher m = LENGTH.matcher(text.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        double number;
        if (m.group(1) != null) {
            number = Double.parseDouble(m.group(1));
        } else {
            double whole = m.group(3) == null ? 0 : Double.parseDouble(m.group(3));
            number = whole + Double.parseDouble(m.group(4)) / Double.parseDouble(m.group(5));
            number = m.group(2).equals("-") ? -number : number;
        }
        String unit = m.group(6) == null ? "mm" : m.group(6).toLowerCase(Locale.ROOT);
        return finite(
                switch (unit) {
                    case "cm" -> number * 10;
                    case "in" -> number * 25.4;
                    default -> number;
                });
    }

    private static Optional<Double> finite(double value) {
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }

    /** Path data in mm, number for number. */
    static String path(Outline outline) {
        StringBuilder out = new StringBuilder(
                "M" + Landing.exactPair(outline.segments().get(0).start()));
        for (Segment segment : outline.segments()) {
            out.append(' ').append(Landing.exactCommand(segment));
        }
        return out.append(" Z").toString();
    }

    /** The closed outline that path data in mm stands for; none if it is not exactly one. */
    static Optional<Outline> outline(String data) {
        ParsedPath parsed = PathParser.parse(data);
        List<Segment> segments = new ArrayList<>();
        for (Command command : parsed.commands()) {
            if (command.subPath() != 0) {
                return Optional.empty();
            }
            segments.addAll(command.segments());
        }
        try {
            return parsed.brokenAt().isPresent() ? Optional.empty() : Optional.of(new Outline(segments));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
