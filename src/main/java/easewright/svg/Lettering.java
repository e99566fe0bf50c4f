package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Caption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How large the words of a text element are written, and about where their middle lies. */
final class Lettering {
    private final Element text;
    private final Styles styles;

    Lettering(Element text, Styles styles) {
        this.text = text;
        this.styles = styles;
    }

    /**
     * @param at where the text is anchored, in its own units
     */
    Caption caption(Point at, Frame frame) {
        List<String> lines = lines();
        double size = size();
        double width = Caption.LETTER * size * lines.get(0).length();
        Affine toMm = frame.toMm();
        Point middle = toMm.apply(at.plus(new Point(width * toMiddle(), -size / 3)));
        return new Caption(lines, middle, size * Math.sqrt(Math.abs(toMm.determinant())));
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String line : text.text.toString().split(String.valueOf(TreeBuilder.LINE_BREAK))) {
            String clean = ShapeNames.clean(line);
            if (!clean.isEmpty()) {
                lines.add(clean);
            }
        }
        return lines;
    }

    /** How far from the anchor to the middle, in widths. */
    private double toMiddle() {
        return switch (inherited("text-anchor", "start").toLowerCase(Locale.ROOT)) {
            case "middle" -> 0;
            case "end" -> -0.5;
            default -> 0.5;
        };
    }

    private double size() {
        double usual = 16;
        return Length.parse(inherited("font-size", ""))
                .filter(size -> !size.percent() && size.value() > 0 && size.value() < 1e6)
                .map(size -> size.units(0))
                .orElse(usual);
    }

    /** A property of the text's first run, or else of whatever is around the text. */
    private String inherited(String property, String initial) {
        Element first = text.children.stream()
                .filter(child -> child.name.equals("tspan"))
                .findFirst()
                .orElse(text);
        for (Element each = first; each != null; each = each.parent) {
            String value = styles.of(each).getOrDefault(property, each.get(property));
            if (value != null && !value.isBlank() && !value.strip().equals("inherit")) {
                return value.strip();
            }
        }
        return initial;
    }
}
