package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Severity;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** An element's own transform: a CSS transform beats the attribute, and single properties come before it. */
final class ElementTransform {
    private final Frame frame;
    private final Map<String, String> style;

    private ElementTransform(Frame frame, Map<String, String> style) {
        this.frame = frame;
        this.style = style;
    }

    /** Empty, with a finding, where it is not understood: the place of what it moves is then unknown. */
    static Optional<Affine> of(Frame frame, Map<String, String> style, Notes notes) {
        String attribute = frame.element().get("transform");
        boolean styled = style.containsKey("transform")
                || style.containsKey("translate")
                || style.containsKey("rotate")
                || style.containsKey("scale");
        if (attribute == null && !styled) {
            return Optional.of(Affine.IDENTITY);
        }
        Optional<Affine> map = new ElementTransform(frame, style).map(attribute);
        if (map.isEmpty()) {
            notes.add("transform-unreadable", Severity.CAUTION, ShapeNames.called(frame.element()));
        }
        return map;
    }

    /** CSS Transforms 2: origin, translate, rotate, scale, transform, and back from the origin. */
    private Optional<Affine> map(String attribute) {
        String css = style.get("transform");
        Optional<Affine> list = css != null
                ? Transforms.parse(css, reference())
                : Transforms.parse(attribute == null ? "none" : attribute, Optional.empty());
        Optional<Affine> all = single("translate")
                .flatMap(t -> single("rotate").map(t::after))
                .flatMap(t -> single("scale").map(t::after))
                .flatMap(t -> list.map(t::after));
        String origin = style.getOrDefault("transform-origin", frame.element().get("transform-origin"));
        if (all.isEmpty() || origin == null || isTranslation(all.get())) {
            return all;
        }
        return origin(origin)
                .map(o -> Affine.translation(o).after(all.get()).after(Affine.translation(-o.x(), -o.y())));
    }

    /** A shift does not depend on where the origin lies. */
    private static boolean isTranslation(Affine map) {
        return map.a() == 1 && map.b() == 0 && map.c() == 0 && map.d() == 1;
    }

    /** One of the single properties, written as the function of the same name. */
    private Optional<Affine> single(String property) {
        String text = style.get(property);
        if (text == null || text.strip().equals("none")) {
            return Optional.of(Affine.IDENTITY);
        }
        String arguments = String.join(",", text.strip().split("\\s+"));
        return Transforms.parse(property + "(" + arguments + ")", reference());
    }

    /** What percentages are of; only that of the view box is known before its content is drawn. */
    private Optional<Point> reference() {
        return Optional.of(new Point(frame.viewportWidth(), frame.viewportHeight()));
    }

    private Optional<Point> origin(String text) {
        String box = style.getOrDefault("transform-box", frame.element().get("transform-box"));
        String[] parts = text.strip().toLowerCase(Locale.ROOT).split("\\s+");
        if (parts.length > 3 || parts.length == 3 && !parts[2].matches("0(px)?")) {
            return Optional.empty();
        }
        String first = parts[0];
        String second = parts.length > 1 ? parts[1] : "center";
        if (first.equals("top") || first.equals("bottom") || second.equals("left") || second.equals("right")) {
            String swapped = first;
            first = second;
            second = swapped;
        }
        boolean ownBox = box != null && !box.strip().equals("view-box");
        boolean relative = !isPlainLength(first) || !isPlainLength(second);
        if (ownBox || relative && !(frame.viewportWidth() > 0 && frame.viewportHeight() > 0)) {
            return Optional.empty();
        }
        OptionalDouble x = along(first, "left", "right", frame.viewportWidth());
        OptionalDouble y = along(second, "top", "bottom", frame.viewportHeight());
        return x.isPresent() && y.isPresent()
                ? Optional.of(new Point(x.getAsDouble(), y.getAsDouble()))
                : Optional.empty();
    }

    private static boolean isPlainLength(String text) {
        return Length.parse(text).filter(l -> !l.percent()).isPresent();
    }

    private static OptionalDouble along(String text, String least, String most, double whole) {
        if (text.equals(least)) {
            return OptionalDouble.of(0);
        }
        if (text.equals("center")) {
            return OptionalDouble.of(whole / 2);
        }
        if (text.equals(most)) {
            return OptionalDouble.of(whole);
        }
        return Length.parse(text)
                .map(length -> OptionalDouble.of(length.units(whole)))
                .orElse(OptionalDouble.empty());
    }
}
