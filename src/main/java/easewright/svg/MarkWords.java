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

    private MarkWords() {}

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <E extends Enum<E>> Optional<E> value(Class<E> type, String word) {
        for (E value : type.getEnumConstants()) {
            if (spells(value.name(), word)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    private static boolean spells(String name, String word) {
        if (name.length() != word.length()) {
            return false;
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (word.charAt(i) != (c == '_' ? '-' : Character.toLowerCase(c))) {
                return false;
            }
        }
        return true;
    }

    static String place(Point p) {
        return Decimals.exact(p.x()) + " " + Decimals.exact(p.y());
    }

    /** A place, mm; none if the text is not two numbers. */
    static Optional<Point> place(String text) {
        String pair = text.strip();
        NumberScanner in = new NumberScanner(pair);
        double x = plain(in, pair);
        int end = in.at();
        in.skipCommaSpace();
        double y = in.at() > end ? plain(in, pair) : Double.NaN;
        boolean whole = in.atEnd() && !Double.isNaN(x) && !Double.isNaN(y);
        return whole ? Optional.of(new Point(x, y)) : Optional.empty();
    }

    /** A plain number. */
    static Optional<Double> number(String text) {
        String stripped = text.strip();
        NumberScanner in = new NumberScanner(stripped);
        double value = plain(in, stripped);
        return in.atEnd() && !Double.isNaN(value) ? Optional.of(value) : Optional.empty();
    }

    /** The sides of an upright box: left, upper, right, lower; none if the text is not four numbers. */
    static Optional<double[]> sides(String text) {
        String stripped = text.strip();
        NumberScanner in = new NumberScanner(stripped);
        double[] sides = new double[4];
        for (int i = 0; i < 4; i++) {
            sides[i] = plain(in, stripped);
            int end = in.at();
            while (in.peek() == ',' || NumberScanner.isSpace(in.peek())) {
                in.skip();
            }
            if (Double.isNaN(sides[i]) || i < 3 && in.at() == end) {
                return Optional.empty();
            }
        }
        return in.atEnd() ? Optional.of(sides) : Optional.empty();
    }

    /** How often, from 1 to 9999. */
    static Optional<Integer> count(String text) {
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            if (i > 3 || !NumberScanner.isDigit(text.charAt(i)) || text.charAt(0) == '0') {
                return Optional.empty();
            }
            count = 10 * count + text.charAt(i) - '0';
        }
        return count == 0 ? Optional.empty() : Optional.of(count);
    }

    /** A number of digits with at most one point among, before or behind them; NaN if none begins here. */
    private static double plain(NumberScanner in, String text) {
        int begin = in.at();
        double value = in.number();
        if (Double.isNaN(value)) {
            return value;
        }
        if (in.peek() == '.' && text.indexOf('.', begin) == in.at()) {
            in.skip();
        }
        for (int i = begin; i < in.at(); i++) {
            if (text.charAt(i) == 'e' || text.charAt(i) == 'E') {
                return Double.NaN;
            }
        }
        return value;
    }

    /** A length with or without a unit, as mm: {@code 15}, {@code 15mm}, {@code 1.5cm}, {@code 5/8in}. */
    static Optional<Double> length(String text) {
        Optional<Double> plain = number(text);
        if (plain.isPresent()) {
            return plain;
        }
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

    /** The same for lines that need not join. */
    static String path(List<Segment> segments) {
        StringBuilder out = new StringBuilder();
        Point at = null;
        for (Segment segment : segments) {
            if (!segment.start().equals(at)) {
                out.append(out.isEmpty() ? "M" : " M").append(Landing.exactPair(segment.start()));
            }
            out.append(' ').append(Landing.exactCommand(segment));
            at = segment.end();
        }
        return out.toString();
    }

    /** The lines that path data in mm stands for; none if it holds anything else. */
    static Optional<List<Segment>> lines(String data) {
        ParsedPath parsed = PathParser.parse(data);
        List<Segment> segments = new ArrayList<>();
        parsed.commands().forEach(command -> segments.addAll(command.segments()));
        return parsed.brokenAt().isPresent() || segments.isEmpty() ? Optional.empty() : Optional.of(segments);
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
