package easewright.svg;

import easewright.geom.Line;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The edits that give one drawn element its new geometry. A path, polygon or polyline changes within the one
 * attribute that holds its places; anything whose new form its own attributes cannot say becomes a path.
 */
final class ShapeRewriter {
    private static final Map<String, Set<String>> GEOMETRY = Map.of(
            "polygon", Set.of("points"),
            "polyline", Set.of("points"),
            "rect", Set.of("x", "y", "width", "height", "rx", "ry"),
            "circle", Set.of("cx", "cy", "r"),
            "ellipse", Set.of("cx", "cy", "rx", "ry"),
            "line", Set.of("x1", "y1", "x2", "y2"));

    private final SourceText source;
    private final DrawnShape shape;
    private final Tag tag;

    ShapeRewriter(SourceText source, DrawnShape shape) {
        this.source = source;
        this.shape = shape;
        this.tag = source.tag(shape.element());
    }

    /** Whether the element must become a path to take the geometry. */
    static boolean becomesPath(DrawnShape shape, Map<Integer, List<Segment>> targets) {
        return switch (shape.tag()) {
            case "path" -> false;
            case "polygon", "polyline" ->
                !targets.values().stream().allMatch(all -> all.stream().allMatch(Line.class::isInstance));
            case "line" -> !targets.values().stream().allMatch(all -> all.size() == 1 && all.get(0) instanceof Line);
            default -> true;
        };
    }

    /**
     * @param targets new geometry in mm by number of sub-path
     * @throws IllegalArgumentException if the element does not hold what was read from it
     * @throws ArithmeticException      if its transform cannot be undone
     */
    List<Edit> edits(Map<Integer, List<Segment>> targets) {
        return becomesPath(shape, targets) ? asPath(targets.get(0)) : asItIs(targets);
    }

    private List<Edit> asItIs(Map<Integer, List<Segment>> targets) {
        return switch (shape.tag()) {
            case "path" -> within("d", data -> PathRewriter.edits(data, shape.subPaths(), shape.toMm(), targets));
            case "line" -> line((Line) targets.get(0).get(0));
            default ->
                within(
                        "points",
                        data -> PointsRewriter.edits(
                                data, shape.tag().equals("polygon"), shape.toMm(), targets.get(0)));
        };
    }

    /** Edits inside one attribute's value. */
    private List<Edit> within(String name, java.util.function.Function<String, List<Edit>> rewriter) {
        Tag.Attribute attribute = tag.attribute(name)
                .orElseThrow(() -> new IllegalArgumentException("The element has no attribute " + name));
        if (attribute.raw().indexOf('&') >= 0) {
            // Characters written as references: positions in the value are not positions in the text.
            String value = XmlText.unescape(attribute.raw());
            String changed = Splices.applied(value, rewriter.apply(value));
            return List.of(new Edit(attribute.valueFrom(), attribute.valueTo(), XmlText.escape(changed)));
        }
        List<Edit> edits = new ArrayList<>();
        for (Edit edit : rewriter.apply(attribute.raw())) {
            edits.add(new Edit(attribute.valueFrom() + edit.from(), attribute.valueFrom() + edit.to(), edit.text()));
        }
        return edits;
    }

    private List<Edit> line(Line target) {
        Landing landing = new Landing(shape.toMm());
        String[] from = landing.numbers(target.start());
        String[] to = landing.numbers(target.end());
        Line old = (Line) shape.subPaths().get(0).segments().get(0);
        List<Edit> edits = new ArrayList<>();
        if (!old.start().equals(target.start())) {
            edits.add(setting("x1", from[0]));
            edits.add(setting("y1", from[1]));
        }
        if (!old.end().equals(target.end())) {
            edits.add(setting("x2", to[0]));
            edits.add(setting("y2", to[1]));
        }
        return edits;
    }

    /** Sets an attribute, adding it after the element's name where it is missing. */
    Edit setting(String name, String value) {
        String escaped = XmlText.escape(value);
        return tag.attribute(name)
                .map(a -> new Edit(a.valueFrom(), a.valueTo(), escaped))
                .orElseGet(() -> new Edit(tag.afterName(), tag.afterName(), " " + name + "=\"" + escaped + "\""));
    }

    private List<Edit> asPath(List<Segment> target) {
        if (!tag.localName().equals(shape.tag())) {
            throw new IllegalArgumentException("The element is not the one that was read");
        }
        List<Edit> edits = new ArrayList<>();
        String name = tag.prefix() + "path";
        edits.add(new Edit(tag.from() + 1, tag.afterName(), name + " d=\"" + data(target) + "\""));
        for (Tag.Attribute attribute : tag.attributes()) {
            // A stray d meant nothing on the old element, and would be a second one on the new.
            if (GEOMETRY.get(shape.tag()).contains(attribute.name())
                    || attribute.name().equals("d")) {
                edits.add(attribute.takenOut());
            }
        }
        if (!tag.selfClosed()) {
            edits.add(new Edit(tag.endFrom() + 2, tag.endFrom() + 2 + tag.name().length(), name));
        }
        return edits;
    }

    private String data(List<Segment> target) {
        Landing landing = new Landing(shape.toMm());
        boolean closed = shape.subPaths().get(0).closed();
        int last = target.size() - 1;
        int drawn = closed && target.get(last) instanceof Line ? last : last + 1;
        StringBuilder out = new StringBuilder("M" + landing.pair(target.get(0).start()));
        for (Segment segment : target.subList(0, drawn)) {
            out.append(' ').append(landing.command(segment));
        }
        return out.append(closed ? " Z" : "").toString();
    }
}
