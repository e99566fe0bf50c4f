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

    private static final OptionalInt WHOLE = OptionalInt.empty();

    private final NumberScanner in;
    private final double mmPerUnit;
    private final Taker taker;

    /** What the command being read draws. */
    private final List<Segment> drawn = new ArrayList<>();

    private int commands;

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

    /** Is handed the commands one by one. */
    @FunctionalInterface
    interface Taker {
        /**
         * One command, as {@link Command} describes it.
         *
         * @param drawn used again for the next command
         */
        void take(char letter, int from, int to, Point start, Point end, List<Segment> drawn, int subPath);
    }

    private PathParser(String d, double mmPerUnit, Taker taker) {
        this.in = new NumberScanner(d);
        this.mmPerUnit = mmPerUnit;
        this.taker = taker;
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
        List<Command> commands = new ArrayList<>();
        OptionalInt brokenAt = parse(
                d,
                mmPerUnit,
                (letter, from, to, start, end, drawn, subPath) ->
                        commands.add(new Command(letter, from, to, start, end, drawn, subPath)));
        return new ParsedPath(commands, brokenAt);
    }

    /** The same, command by command; gives where the data breaks off. */
    static OptionalInt parse(String d, double mmPerUnit, Taker taker) {
        return new PathParser(d, mmPerUnit, taker).read();
    }

    /** Whether the data holds more than any outline does: reading stops there. */
    private boolean tooMuch() {
        return commands >= MOST || segments >= MOST;
    }

    private OptionalInt read() {
        in.skipSpace();
        char letter = in.peek();
        if (in.atEnd()) {
            return WHOLE;
        }
        if (letter != 'M' && letter != 'm') {
            return OptionalInt.of(in.at());
        }
        while (!in.atEnd()) {
            int begin = in.at();
            letter = in.peek();
            if (arguments(letter) < 0 || tooMuch()) {
                return OptionalInt.of(begin);
            }
            in.skip();
            if (!readRun(letter, begin)) {
                return OptionalInt.of(in.at());
            }
            in.skipSpace();
        }
        return WHOLE;
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
        char kind = relative ? (char) (letter - 'a' + 'A') : letter;
        Point target = switch (kind) {
            case 'H' -> place(baseX + v[0], pen.y());
            case 'V' -> place(pen.x(), baseY + v[0]);
            default -> place(baseX + v[v.length - 2], baseY + v[v.length - 1]);
        };
        if (target == null) {
            return false;
        }
        Point control1 = null;
        Point control2 = null;
        drawn.clear();
        switch (kind) {
            case 'C', 'S' -> {
                control1 = kind == 'C' ? place(baseX + v[0], baseY + v[1]) : mirrored(cubicControl);
                control2 = place(baseX + v[v.length - 4], baseY + v[v.length - 3]);
                if (control1 == null || control2 == null) {
                    return false;
                }
                extended(new Cubic(pen, control1, control2, target));
            }
            case 'Q', 'T' -> {
                control1 = kind == 'Q' ? place(baseX + v[0], baseY + v[1]) : mirrored(quadraticControl);
                if (control1 == null) {
                    return false;
                }
                extended(Cubic.fromQuadratic(pen, control1, target));
            }
            case 'A' -> {
                try {
                    drawn.addAll(Arcs.between(pen, target, v[0], v[1], v[2], v[3] == 1, v[4] == 1, mmPerUnit));
                } catch (IllegalArgumentException beyondNumbers) {
                    return false;
                }
            }
            case 'M' -> penLifted = true;
            default -> line(target);
        }
        if (kind == 'M') {
            subPathStart = target;
        }
        done(letter, target, from, to);
        cubicControl = control2;
        quadraticControl = control2 == null ? control1 : null;
        return true;
    }

    /** A place, or null where it is beyond what a number can hold. */
    private static Point place(double x, double y) {
        return finite(x) && finite(y) ? new Point(x, y) : null;
    }

    /** Beyond this, sums and products of places would overflow. */
    private static boolean finite(double value) {
        return Math.abs(value) < 1e100;
    }

    private Point mirrored(Point control) {
        return control == null ? pen : pen.plus(pen.minus(control));
    }

    private void extended(Cubic cubic) {
        if (cubic.hasLength()) {
            drawn.add(cubic);
        }
    }

    private void line(Point target) {
        if (!pen.equals(target)) {
            drawn.add(new Line(pen, target));
        }
    }

    private void done(char letter, Point target, int from, int to) {
        if (penLifted && !drawn.isEmpty()) {
            subPath++;
            penLifted = false;
        }
        segments += drawn.size();
        commands++;
        taker.take(letter, from, to, pen, target, drawn, penLifted ? subPath + 1 : subPath);
        pen = target;
    }

    private void close(char letter, int begin) {
        drawn.clear();
        if (!penLifted) {
            line(subPathStart);
        }
        done(letter, subPathStart, begin, begin + 1);
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
