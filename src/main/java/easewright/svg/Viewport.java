package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Severity;
import java.util.Map;
import java.util.Optional;

/**
 * The inside of an inner svg element or of a symbol drawn through use.
 *
 * @param toMm   user units inside to mm
 * @param width  what 100 % across is inside, in user units
 * @param height what 100 % down is inside
 */
record Viewport(Affine toMm, double width, double height) {
    /** Empty where nothing is drawn: a size of 0 or one that cannot be read. */
    static Optional<Viewport> of(Frame frame, Map<String, String> style, Affine toMm, Notes notes) {
        Element element = frame.element();
        double wholeX = frame.viewportWidth();
        double wholeY = frame.viewportHeight();
        Optional<Point> corner =
                element.name.equals("svg") ? corner(element, style, wholeX, wholeY) : Optional.of(Point.ORIGIN);
        Optional<Double> width = size(frame, style, "width", wholeX);
        Optional<Double> height = size(frame, style, "height", wholeY);
        if (corner.isEmpty() || width.isEmpty() || height.isEmpty()) {
            notes.add("inner-drawing-left-out", Severity.CAUTION, ShapeNames.readable(element.id()));
            return Optional.empty();
        }
        Affine map = toMm.after(Affine.translation(corner.get()));
        String boxText = element.get("viewBox");
        if (boxText == null) {
            return Optional.of(new Viewport(map, width.get(), height.get()));
        }
        Optional<ViewBox> box = ViewBox.parse(boxText);
        if (box.isEmpty()) {
            notes.add("view-box-invalid", Severity.CAUTION, ShapeNames.readable(element.id()));
            return Optional.of(new Viewport(map, width.get(), height.get()));
        }
        ViewBox b = box.get();
        // Where the outer size is unknown, 100 % of it is as well: the box is then taken as it is.
        double w = width.get() > 0 ? width.get() : b.width();
        double h = height.get() > 0 ? height.get() : b.height();
        return Optional.of(
                new Viewport(map.after(b.into(w, h, element.get("preserveAspectRatio"))), b.width(), b.height()));
    }

    /** The x and y of an element, 0 where absent; empty if unreadable. */
    static Optional<Point> corner(Element element, Map<String, String> style, double wholeX, double wholeY) {
        Optional<Double> x = first(style.getOrDefault("x", element.get("x")), wholeX);
        Optional<Double> y = first(style.getOrDefault("y", element.get("y")), wholeY);
        return x.isPresent() && y.isPresent() ? Optional.of(new Point(x.get(), y.get())) : Optional.empty();
    }

    /** The first of a list of lengths (texts have one per letter). */
    private static Optional<Double> first(String text, double whole) {
        if (text == null || text.isBlank()) {
            return Optional.of(0.0);
        }
        Optional<Length> length = Length.parse(text.strip().split("[\\s,]", 2)[0]);
        return length.isEmpty() ? Optional.empty() : Optional.of(length.get().units(whole));
    }

    private static Optional<Double> size(Frame frame, Map<String, String> style, String name, double whole) {
        String text = frame.target() ? frame.via().use().get(name) : null;
        if (text == null) {
            text = style.getOrDefault(name, frame.element().get(name));
        }
        if (text == null || text.strip().equals("auto")) {
            return Optional.of(whole);
        }
        return Length.parse(text).filter(length -> length.value() > 0).map(length -> length.units(whole));
    }
}
