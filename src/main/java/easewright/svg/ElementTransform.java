package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Severity;
import java.util.Map;
import java.util.Optional;

/** An element's own transform: a CSS transform beats the attribute. */
final class ElementTransform {
    private ElementTransform() {}

    /** Empty, with a finding, where it is not understood: the place of what it moves is then unknown. */
    static Optional<Affine> of(Element element, Map<String, String> style, Notes notes, String piece) {
        String css = style.get("transform");
        String text = css != null ? css : element.get("transform");
        boolean more = style.containsKey("translate") || style.containsKey("rotate") || style.containsKey("scale");
        if (text == null && !more) {
            return Optional.of(Affine.IDENTITY);
        }
        Optional<Affine> map = more ? Optional.empty() : Transforms.parse(text, css != null);
        String originText = style.getOrDefault("transform-origin", element.get("transform-origin"));
        if (map.isPresent() && originText != null) {
            map = aboutOrigin(map.get(), originText, style.get("transform-box"));
        }
        if (map.isEmpty()) {
            notes.add("transform-unreadable", Severity.CAUTION, piece);
        }
        return map;
    }

    private static Optional<Affine> aboutOrigin(Affine map, String originText, String box) {
        String[] parts = originText.strip().split("[\\s,]+");
        boolean ownBox = box != null && !box.equals("view-box");
        if (parts.length < 2 || ownBox) {
            return map.equals(Affine.IDENTITY) ? Optional.of(map) : Optional.empty();
        }
        Optional<Length> x = Length.parse(parts[0]).filter(l -> !l.percent());
        Optional<Length> y = Length.parse(parts[1]).filter(l -> !l.percent());
        if (x.isEmpty() || y.isEmpty()) {
            return Optional.empty();
        }
        Point origin = new Point(x.get().units(0), y.get().units(0));
        return Optional.of(Affine.translation(origin).after(map).after(Affine.translation(-origin.x(), -origin.y())));
    }
}
