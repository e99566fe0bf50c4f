package easewright.svg;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Reads the path data of SVG's {@code d} attribute by the grammar of SVG 1.1 and 2, in double precision. Data with an
 * error gives the commands before it, as the recommendation asks, and says where it broke.
 */
public final class PathParser {
    /** Most commands, and most segments, that are read of one path. */
    static final int MOST = ShapeCollector.MOST_SEGMENTS + 1;

    private final NumberScanner in;
    private final double mmPerUnit;
    private final List<Command> commands = new ArrayList<>();

    private Point pen = Point.ORIGIN;
    private Point subPathStart = Point.ORIGIN;

    /** The last control place of the curve just drawn, for S and T; null after anything else. */
    private Point cubicControl;

    private Point quadraticControl;
    private int subPath = -1;

    /** Segments drawn so far. */
    private int segments;

    /** Whether the next drawing begins a new sub-path: after a move or a closing. */
    private boolean penLifted = true;

    private PathParser(String d, double mmPerUnit) {
        this.in = new NumberScanner(d);
        this.mmPerUnit = mmPerUnit;
    }

    /** Path data in which one unit is about a millimetre. */
    public static ParsedPath parse(String d) {
        return parse(d, 1);
    }

    /**
     * Path data in user units.
     *
     * @param mmPerUnit the largest number of mm that one unit becomes; decides into how many cubics an arc is cut
     */
    public static ParsedPath parse(String d, double mmPerUnit) {
        return new PathParser(d, mmPerUnit).read();
    }

    /** Whether the data holds more than any outline does: reading stops there. */
    private boolean tooMuch() {
        return commands.size() >= MOST || segments >= MOST;
    }

    private ParsedPath read() {
        in.skipSpace();
        char letter = in.peek();
        if (in.atEnd()) {
            return new ParsedPath(List.of(), OptionalInt.empty());
        }
        if (letter != 'M' && letter != 'm') {
            return new ParsedPath(List.of(), OptionalInt.of(in.at()));
        }
        while (!in.atEnd()) {
            int begin = in.at();
            letter = in.peek();
            if (arguments(letter) < 0 || tooMuch()) {
                return new ParsedPath(commands, OptionalInt.of(begin));
            }
            in.skip();
            if (!readRun(letter, begin)) {
                return new ParsedPath(commands, OptionalInt.of(in.at()));
            }
            in.skipSpace();
        }
        return new ParsedPath(commands, OptionalInt.empty());
    }

    /** One letter with all the sets of arguments that follow it; false where one of them is broken. */
    private boolean readRun(char letter, int begin) {
        if (letter == 'Z' || letter == 'z') {
            close(letter, begin);
            return true;
        }
        char effective = letter;
        int from = begin;
        double[] values = new double[arguments(letter)];
        in.skipSpace();
        while (true) {
            if (!readArguments(letter, values)) {
                return false;
            }
            int end = in.at();
            if (tooMuch() || !carryOut(effective, values, from, end)) {
                in.back(from);
                return false;
            }
            effective = effective == 'M' ? 'L' : effective == 'm' ? 'l' : effective;
            boolean comma = in.skipCommaSpace();
            if (!in.numberAhead()) {
                if (comma) {
                    in.back(end);
                    return false;
                }
                return true;
            }
            from = in.at();
        }
    }

    private boolean readArguments(char letter, double[] values) {
        boolean arc = letter == 'A' || letter == 'a';
        for (int i = 0; i < values.length; i++) {
            if (i > 0) {
                in.skipCommaSpace();
            }
            if (arc && (i == 3 || i == 4)) {
                char flag = in.peek();
                if (flag != '0' && flag != '1') {
                    return false;
                }
                values[i] = flag - '0';
                in.skip();
            } else {
                values[i] = in.number();
                if (Double.isNaN(values[i])) {
                    return false;
                }
            }
        }
        return true;
    }

    /** False where a place is beyond what a number can hold. */
    private boolean carryOut(char letter, double[] v, int from, int to) {
        boolean relative = letter >= 'a';
        double baseX = relative ? pen.x() : 0;
        double baseY = relative ? pen.y() : 0;
        Point[] places = places(Character.toUpperCase(letter), v, baseX, baseY);
        if (places == null) {
            return false;
        }
        Point target = places[places.length - 1];
        Point newCubicControl = null;
        Point newQuadraticControl = null;
        List<Segment> drawn;
        switch (Character.toUpperCase(letter)) {
            case 'C', 'S' -> {
                Point first = places.length == 3 ? places[0] : mirrored(cubicControl);
                newCubicControl = places[places.length - 2];
                drawn = cubic(first, newCubicControl, target);
            }
            case 'Q', 'T' -> {
                newQuadraticControl = places.length == 2 ? places[0] : mirrored(quadraticControl);
                drawn = quadratic(newQuadraticControl, target);
            }
            case 'A' -> {
                try {
                    drawn = Arcs.between(pen, target, v[0], v[1], v[2], v[3] == 1, v[4] == 1, mmPerUnit);
                } catch (IllegalArgumentException beyondNumbers) {
                    return false;
                }
            }
            case 'M' -> drawn = List.of();
            default -> drawn = pen.equals(target) ? List.of() : List.of(new Line(pen, target));
        }
        if (letter == 'M' || letter == 'm') {
            move(letter, target, from, to);
        } else {
            draw(letter, target, drawn, from, to);
        }
        cubicControl = newCubicControl;
        quadraticControl = newQuadraticControl;
        return true;
    }

    /** The places that the arguments name, the target last; null if one cannot be held. */
    private Point[] places(char letter, double[] v, double baseX, double baseY) {
        if (letter == 'H') {
            return finite(baseX + v[0]) ? new Point[] {new Point(baseX + v[0], pen.y())} : null;
        }
        if (letter == 'V') {
            return finite(baseY + v[0]) ? new Point[] {new Point(pen.x(), baseY + v[0])} : null;
        }
        int first = letter == 'A' ? 5 : 0;
        Point[] places = new Point[(v.length - first) / 2];
        for (int i = 0; i < places.length; i++) {
            double x = baseX + v[first + 2 * i];
            double y = baseY + v[first + 2 * i + 1];
            if (!finite(x) || !finite(y)) {
                return null;
            }
            places[i] = new Point(x, y);
        }
        return places;
    }

    /** Beyond this, sums and products of places would overflow. */
    private static boolean finite(double value) {
        return Math.abs(value) < 1e100;
    }

    private Point mirrored(Point control) {
        return control == null ? pen : pen.plus(pen.minus(control));
    }

    private List<Segment> cubic(Point first, Point second, Point target) {
        Cubic cubic = new Cubic(pen, first, second, target);
        return ParsedPath.hasExtent(cubic) ? List.of(cubic) : List.of();
    }

    private List<Segment> quadratic(Point control, Point target) {
        Cubic cubic = Cubic.fromQuadratic(pen, control, target);
        return ParsedPath.hasExtent(cubic) ? List.of(cubic) : List.of();
    }

    private void move(char letter, Point target, int from, int to) {
        penLifted = true;
        commands.add(new Command(letter, from, to, pen, target, List.of(), subPath + 1));
        pen = target;
        subPathStart = target;
    }

    private void draw(char letter, Point target, List<Segment> drawn, int from, int to) {
        if (penLifted && !drawn.isEmpty()) {
            subPath++;
            penLifted = false;
        }
        segments += drawn.size();
        commands.add(new Command(letter, from, to, pen, target, drawn, penLifted ? subPath + 1 : subPath));
        pen = target;
    }

    private void close(char letter, int begin) {
        List<Segment> drawn = pen.equals(subPathStart) || penLifted ? List.of() : List.of(new Line(pen, subPathStart));
        draw(letter, subPathStart, drawn, begin, begin + 1);
        penLifted = true;
        cubicControl = null;
        quadraticControl = null;
    }

    private static int arguments(char letter) {
        return switch (letter) {
            case 'M', 'm', 'L', 'l', 'T', 't' -> 2;
            case 'H', 'h', 'V', 'v' -> 1;
            case 'C', 'c' -> 6;
            case 'S', 's', 'Q', 'q' -> 4;
            case 'A', 'a' -> 7;
            case 'Z', 'z' -> 0;
            default -> -1;
        };
    }
}
