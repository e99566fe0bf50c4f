package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Segment;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;

/** Small drawings for tests. */
final class Drawn {
    private Drawn() {}

    static Drawing read(String svg) {
        return read(svg, OptionalDouble.empty());
    }

    static Drawing read(String svg, OptionalDouble mmPerUnit) {
        try {
            return DrawingReader.read(svg.getBytes(StandardCharsets.UTF_8), "test.svg", mmPerUnit);
        } catch (SvgProblem e) {
            throw new AssertionError(e);
        }
    }

    /** A root with the given attributes around the body. */
    static String svg(String attributes, String body) {
        return "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
                + "xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' " + attributes + ">" + body + "</svg>";
    }

    /** One unit is one millimetre. */
    static Drawing mm(String body) {
        return read(svg("width='1000mm' height='500mm' viewBox='0 0 1000 500'", body));
    }

    static double length(DrawnShape shape) {
        return shape.subPaths().stream()
                .flatMap(sub -> sub.segments().stream())
                .mapToDouble(Segment::length)
                .sum();
    }

    static Box box(DrawnShape shape) {
        return shape.subPaths().stream()
                .flatMap(sub -> sub.segments().stream())
                .map(Segment::box)
                .reduce(Box::union)
                .orElseThrow();
    }

    static List<String> ids(Drawing drawing) {
        return drawing.shapes().stream().map(DrawnShape::id).toList();
    }

    static List<String> codes(Drawing drawing) {
        return drawing.findings().stream().map(f -> f.code()).distinct().toList();
    }
}
