package easewright.evidence;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.svg.Drawing;
import easewright.svg.DrawingReader;
import easewright.svg.DrawnShape;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Drawings read by the program, and what other programs made of the same drawing, recorded beside it. */
final class Drawn {
    private Drawn() {}

    /** A file of {@code src/test/resources/evidence}. */
    static String resource(String name) throws IOException {
        try (InputStream in = Drawn.class.getResourceAsStream("/evidence/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static Drawing shapes() throws IOException, SvgProblem {
        return DrawingReader.read(resource("shapes.svg").getBytes(StandardCharsets.UTF_8), "shapes.svg");
    }

    /** The only shape of a drawing in which one unit is one millimetre. */
    static DrawnShape only(String markup) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='1000mm' viewBox='0 0 1000 1000'>"
                + markup + "</svg>";
        return DrawingReader.read(svg.getBytes(StandardCharsets.UTF_8), "drawing.svg")
                .shapes()
                .get(0);
    }

    static List<Segment> segments(DrawnShape shape) {
        return shape.subPaths().stream().flatMap(s -> s.segments().stream()).toList();
    }

    static double length(DrawnShape shape) {
        return segments(shape).stream().mapToDouble(Segment::length).sum();
    }

    static Box box(DrawnShape shape) {
        return segments(shape).stream().map(Segment::box).reduce(Box::union).orElseThrow();
    }

    static Outline outline(DrawnShape shape) {
        return shape.subPaths().get(0).outline().orElseThrow();
    }

    /** Recorded figures by name: lines of a name and numbers between commas; # starts a remark. */
    static Map<String, double[]> recorded(String name) throws IOException {
        Map<String, double[]> rows = new LinkedHashMap<>();
        for (String line : resource(name).lines().toList()) {
            if (!line.startsWith("#")) {
                String[] columns = line.split(",");
                double[] numbers = new double[columns.length - 1];
                for (int i = 0; i < numbers.length; i++) {
                    numbers[i] = Double.parseDouble(columns[i + 1]);
                }
                rows.put(columns[0], numbers);
            }
        }
        return rows;
    }
}
