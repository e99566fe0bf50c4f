package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** What one shape element draws, in mm; what is wrong with it goes to the notes under the shape's name. */
final class ShapeGeometry {
    /** Properties that say an outline's form in place of the element's own attributes. */
    private static final Set<String> ELSEWHERE = Set.of("d", "x", "y", "width", "height", "r", "rx", "ry", "cx", "cy");

    private final Element element;
    private final Map<String, String> style;
    private final Affine toMm;
    private final double viewportWidth;
    private final double viewportHeight;
    private final Element source;
    private final Notes notes;
    private boolean broken;

    /**
     * @param style          what style says of the element
     * @param viewportWidth  what 100 % across is, in user units
     * @param viewportHeight what 100 % down is
     * @param source         the element by which the shape is called in findings
     */
    ShapeGeometry(
            Element element,
            Map<String, String> style,
            Affine toMm,
            double viewportWidth,
            double viewportHeight,
            Element source,
            Notes notes) {
        this.element = element;
        this.style = style;
        this.toMm = toMm;
        this.viewportWidth = viewportWidth;
        this.viewportHeight = viewportHeight;
        this.source = source;
        this.notes = notes;
    }

    /** A path of more commands than any outline has. */
    static final class TooMany extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    static boolean draws(String tag) {
        return switch (tag) {
            case "path", "polygon", "polyline", "rect", "circle", "ellipse", "line" -> true;
            default -> false;
        };
    }

    /**
     * The sub-paths, not yet joined where they nearly close.
     *
     * @throws IllegalArgumentException if a place is too far away for a number to hold
     */
    List<SubPath> subPaths() {
        List<SubPath> drawn = switch (element.name) {
            case "path" -> path();
            case "polygon" -> points(true);
            case "polyline" -> points(false);
            case "rect" -> rect();
            case "circle" -> circle();
            case "ellipse" -> ellipse();
            default -> line();
        };
        return broken ? List.of() : drawn;
    }

    /** Whether the geometry stands in a style rather than in the element's own attributes. */
    boolean styled() {
        for (String property : style.keySet()) {
            if (ELSEWHERE.contains(property)) {
                return true;
            }
        }
        return false;
    }

    private List<SubPath> path() {
        String d = styledPath().orElseGet(() -> element.get("d"));
        if (d == null || d.strip().equals("none")) {
            return List.of();
        }
        StrokeMaker strokes = new StrokeMaker(toMm);
        OptionalInt brokenAt = PathParser.parse(d, Stretch.largest(toMm), strokes);
        if (strokes.commands() >= PathParser.MOST) {
            throw new TooMany();
        }
        if (brokenAt.isPresent()) {
            notes.add(Finding.of("path-broken", Severity.FAULT, ShapeNames.called(source))
                    .with("at", brokenAt.getAsInt() + 1));
        }
        return strokes.paths();
    }

    /** CSS may hold the data as {@code d: path("…")}. */
    private Optional<String> styledPath() {
        String d = style.get("d");
        if (d == null || !d.startsWith("path(") || !d.endsWith(")")) {
            return Optional.empty();
        }
        String inside = d.substring("path(".length(), d.length() - 1).strip();
        boolean quoted = inside.length() > 1 && (inside.startsWith("\"") || inside.startsWith("'"));
        return Optional.of(quoted ? inside.substring(1, inside.length() - 1) : inside);
    }

    private List<SubPath> points(boolean closed) {
        String text = element.get("points");
        if (text == null) {
            return List.of();
        }
        List<Point> corners = new ArrayList<>();
        NumberScanner in = new NumberScanner(text);
        in.skipSpace();
        boolean complete = true;
        while (complete && !in.atEnd()) {
            double x = in.number();
            in.skipCommaSpace();
            double y = in.number();
            complete = !Double.isNaN(x) && !Double.isNaN(y);
            if (complete) {
                corners.add(new Point(x, y));
                in.skipCommaSpace();
            }
        }
        if (!complete) {
            notes.add(Finding.of("points-broken", Severity.FAULT, ShapeNames.called(source))
                    .with("good", corners.size()));
        }
        List<Segment> lines = new ArrayList<>();
        for (int i = 1; i < corners.size(); i++) {
            lines.add(new Line(corners.get(i - 1), corners.get(i)));
        }
        if (closed && corners.size() > 1) {
            lines.add(new Line(corners.get(corners.size() - 1), corners.get(0)));
        }
        return inMm(lines, closed);
    }

    private List<SubPath> rect() {
        double x = value("x", viewportWidth, 0);
        double y = value("y", viewportHeight, 0);
        double width = size("width", viewportWidth);
        double height = size("height", viewportHeight);
        OptionalDouble givenRx = radius("rx", viewportWidth);
        OptionalDouble givenRy = radius("ry", viewportHeight);
        if (broken || width == 0 || height == 0) {
            return List.of();
        }
        double rx = Math.min(givenRx.orElse(givenRy.orElse(0)), width / 2);
        double ry = Math.min(givenRy.orElse(givenRx.orElse(0)), height / 2);
        if (rx == 0 || ry == 0) {
            rx = 0;
            ry = 0;
        }
        // The order of corners is that of the recommendation's equivalent path.
        double[][] sides = {
            {x + rx, y, x + width - rx, y, x + width, y + ry},
            {x + width, y + ry, x + width, y + height - ry, x + width - rx, y + height},
            {x + width - rx, y + height, x + rx, y + height, x, y + height - ry},
            {x, y + height - ry, x, y + ry, x + rx, y}
        };
        double mmPerUnit = Stretch.largest(toMm);
        List<Segment> segments = new ArrayList<>();
        for (double[] side : sides) {
            Point corner = new Point(side[2], side[3]);
            segments.add(new Line(new Point(side[0], side[1]), corner));
            segments.addAll(Arcs.between(corner, new Point(side[4], side[5]), rx, ry, 0, false, true, mmPerUnit));
        }
        return inMm(segments, true);
    }

    private List<SubPath> circle() {
        double r = size("r", Math.hypot(viewportWidth, viewportHeight) / Math.sqrt(2));
        return ellipse(r, r);
    }

    private List<SubPath> ellipse() {
        OptionalDouble rx = radius("rx", viewportWidth);
        OptionalDouble ry = radius("ry", viewportHeight);
        return ellipse(rx.orElse(ry.orElse(0)), ry.orElse(rx.orElse(0)));
    }

    private List<SubPath> ellipse(double rx, double ry) {
        Point centre = new Point(value("cx", viewportWidth, 0), value("cy", viewportHeight, 0));
        if (broken || rx == 0 || ry == 0) {
            return List.of();
        }
        return inMm(Arcs.ellipse(centre, rx, ry, Stretch.largest(toMm)), true);
    }

    private List<SubPath> line() {
        Point from = new Point(value("x1", viewportWidth, 0), value("y1", viewportHeight, 0));
        Point to = new Point(value("x2", viewportWidth, 0), value("y2", viewportHeight, 0));
        return inMm(List.of(new Line(from, to)), false);
    }

    private List<SubPath> inMm(List<Segment> segments, boolean closed) {
        List<Segment> moved = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            Segment inMm = segment.transformed(toMm);
            if (inMm.hasLength()) {
                moved.add(inMm);
            }
        }
        return moved.isEmpty() ? List.of() : List.of(new SubPath(moved, closed));
    }

    /** A size that may be left out (0) but not negative. */
    private double size(String name, double whole) {
        double size = value(name, whole, 0);
        if (size < 0) {
            notes.add(Finding.of("size-negative", Severity.CAUTION, ShapeNames.called(source))
                    .with("what", name));
            broken = true;
        }
        return size;
    }

    private OptionalDouble radius(String name, double whole) {
        String text = style.getOrDefault(name, element.get(name));
        if (text == null || text.strip().equals("auto")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(size(name, whole));
    }

    /** A length in user units; one that cannot be read leaves the whole shape out. */
    private double value(String name, double whole, double absent) {
        String text = style.getOrDefault(name, element.get(name));
        if (text == null || text.strip().equals("auto")) {
            return absent;
        }
        Optional<Length> length = Length.parse(text);
        if (length.isEmpty()) {
            notes.add(Finding.of("number-unreadable", Severity.CAUTION, ShapeNames.called(source))
                    .with("what", name));
            broken = true;
            return 0;
        }
        return length.get().units(whole);
    }
}
