package easewright.svg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Draws the sheet {@code src/test/resources/comparison/shapes.svg}: 240 paths of all commands and 120 other shapes
 * under stacked transforms, copies and inner drawings. How the other programs' figures beside it were made:
 *
 * <pre>
 * java … easewright.svg.ComparisonShapes src/test/resources/comparison/shapes.svg
 * python3 lengths.py shapes.svg > lengths.tsv
 * inkscape --query-all shapes.svg > boxes.csv
 * </pre>
 */
final class ComparisonShapes {
    static final int PATHS = 240;
    static final int OTHERS = 120;

    private final Random random = new Random(71);
    private final StringBuilder out = new StringBuilder();

    private ComparisonShapes() {}

    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), new ComparisonShapes().sheet());
    }

    private String sheet() {
        out.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"420mm\" height=\"594mm\" viewBox=\"-10 -20 840 1188\">\n");
        out.append("<style>path,rect,circle,ellipse,line,polyline,polygon{fill:none;stroke:none}</style>\n");
        for (int i = 0; i < PATHS; i++) {
            out.append("<path id=\"p")
                    .append(i)
                    .append("\" d=\"")
                    .append(path())
                    .append("\"/>\n");
        }
        for (int i = 0; i < OTHERS; i++) {
            int groups = random.nextInt(3);
            for (int g = 0; g < groups; g++) {
                out.append("<g transform=\"").append(transform()).append("\">");
            }
            other("s" + i);
            out.append("</g>".repeat(groups)).append("\n");
        }
        return out.append("</svg>\n").toString();
    }

    private String n(double low, double high) {
        return String.format(
                Locale.ROOT, "%." + (1 + random.nextInt(4)) + "f", low + (high - low) * random.nextDouble());
    }

    private String at() {
        return n(50, 750) + (random.nextBoolean() ? "," : " ") + n(50, 1100);
    }

    private String by() {
        return n(-90, 90) + " " + n(-90, 90);
    }

    private String path() {
        StringBuilder d = new StringBuilder("M" + at());
        int commands = 2 + random.nextInt(7);
        int kinds = random.nextInt(6) == 0 ? 12 : 10;
        for (int i = 0; i < commands; i++) {
            d.append(
                    switch (random.nextInt(kinds)) {
                        case 0 -> "L" + at();
                        case 1 -> "l" + by();
                        case 2 -> "h" + n(-90, 90);
                        case 3 -> "V" + n(50, 1100);
                        case 4 -> "C" + at() + " " + at() + " " + at();
                        case 5 -> "c" + by() + " " + by() + " " + by();
                        case 6 -> "s" + by() + " " + by();
                        case 7 -> "q" + by() + " " + by();
                        case 8 -> "t" + by();
                        case 10 ->
                            "a" + n(20, 200) + " " + n(20, 200) + " " + n(-180, 180) + " " + random.nextInt(2) + " "
                                    + random.nextInt(2) + " " + by();
                        default ->
                            "A" + n(40, 90) + " " + n(30, 60) + " " + n(0, 90) + " " + random.nextInt(2) + " "
                                    + random.nextInt(2) + " " + at();
                        case 9 -> random.nextInt(3) == 0 ? "l" + by() + "zm" + by() + "l" + by() : "l" + by();
                    });
        }
        return d + (random.nextBoolean() ? "Z" : "");
    }

    private String transform() {
        return switch (random.nextInt(6)) {
            case 0 -> "translate(" + by() + ")";
            case 1 -> "rotate(" + n(-180, 180) + ")";
            case 2 -> "rotate(" + n(-180, 180) + " " + at() + ")";
            case 3 -> "scale(" + n(0.3, 1.6) + " " + n(0.3, 1.6) + ")";
            case 4 -> "skewX(" + n(-40, 40) + ") translate(" + by() + ")";
            default ->
                "matrix(" + n(0.5, 1.2) + " " + n(-.4, .4) + " " + n(-.4, .4) + " " + n(0.5, 1.2) + " " + by() + ")";
        };
    }

    private void other(String id) {
        String start = " id=\"" + id + "\"";
        out.append(
                switch (random.nextInt(8)) {
                    case 0 ->
                        "<rect" + start + " x=\"" + n(0, 400) + "\" y=\"" + n(0, 400) + "\" width=\"" + n(5, 200)
                                + "\" height=\"" + n(5, 200) + "\"/>";
                    case 1 ->
                        "<rect" + start + " x=\"" + n(0, 400) + "\" y=\"" + n(0, 400) + "\" width=\"" + n(50, 200)
                                + "\" height=\"" + n(50, 200) + "\" rx=\"" + n(1, 40) + "\" ry=\"" + n(1, 40) + "\"/>";
                    case 2 ->
                        "<circle" + start + " cx=\"" + n(0, 400) + "\" cy=\"" + n(0, 400) + "\" r=\"" + n(1, 150)
                                + "\"/>";
                    case 3 ->
                        "<ellipse" + start + " cx=\"" + n(0, 400) + "\" cy=\"" + n(0, 400) + "\" rx=\"" + n(1, 150)
                                + "\" ry=\"" + n(1, 150) + "\" transform=\"" + transform() + "\"/>";
                    case 4 ->
                        "<line" + start + " x1=\"" + n(0, 400) + "\" y1=\"" + n(0, 400) + "\" x2=\"" + n(0, 400)
                                + "\" y2=\"" + n(0, 400) + "\"/>";
                    case 5 -> "<polygon" + start + " points=\"" + at() + " " + at() + " " + at() + " " + at() + "\"/>";
                    case 6 ->
                        "<svg x=\"" + n(0, 99) + "\" y=\"" + n(0, 99)
                                + "\" width=\"300\" height=\"200\" viewBox=\"0 0 100 100\" overflow=\"visible\"><rect"
                                + start + " x=\"" + n(0, 40) + "\" y=\"" + n(0, 40) + "\" width=\"" + n(5, 50)
                                + "\" height=\"" + n(5, 50) + "\"/></svg>";
                    default -> "<path" + start + " d=\"" + path() + "\" transform=\"" + transform() + "\"/>";
                });
    }
}
