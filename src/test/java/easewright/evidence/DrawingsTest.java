package easewright.evidence;

import easewright.geom.Box;
import easewright.svg.Drawing;
import easewright.svg.DrawnShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One drawing, read by the program and by others. */
class DrawingsTest extends Topic {
    private static final Source PROPERTIES = Source.calculated("svg-path-properties 2.1.0 (npm), recorded");
    private static final Source INKSCAPE = Source.calculated("Inkscape 1.2.2, --query-all, recorded");
    private static final Source JAVA = Source.calculated("Apache Batik 1.19 and java.awt.geom.CubicCurve2D");
    private static final Pattern PATH = Pattern.compile("<path id=\"([^\"]+)\" d=\"([^\"]+)\"");
    private static final double PX = 25.4 / 96;

    @Override
    String title() {
        return "Drawings read by other programs";
    }

    @Override
    String words() {
        return "`src/test/resources/evidence/shapes.svg`, one unit a millimetre. Lengths of its paths by the library"
                + " svg-path-properties (arcs there are good to about five digits), and again by Apache Batik's path"
                + " parser with the curves of the Java platform, halved nine times and ten times and extrapolated (left"
                + " out: arcs, which Batik turns into approximate curves). Boxes by Inkscape, which prints six digits; of left, top, width and height the one that"
                + " differs most is shown. What the two programs said is recorded beside the drawing, with the command.";
    }

    @Override
    List<Check> checks() throws Exception {
        Drawing drawing = Drawn.shapes();
        List<Check> checks = new ArrayList<>();
        for (Map.Entry<String, double[]> row :
                Drawn.recorded("svg-path-properties.csv").entrySet()) {
            boolean arc = row.getKey().endsWith("-arc");
            checks.add(Check.number(
                    "length of " + row.getKey(),
                    PROPERTIES,
                    "mm",
                    row.getValue()[0],
                    Drawn.length(drawing.shape(row.getKey()).orElseThrow()),
                    arc ? 5e-3 : 1e-9));
        }
        Matcher path = PATH.matcher(Drawn.resource("shapes.svg"));
        while (path.find()) {
            DrawnShape shape = drawing.shape(path.group(1)).orElseThrow();
            boolean plain = shape.toMm().determinant() == 1 && !path.group(1).endsWith("-arc");
            if (plain) {
                double expected = Awt.length(Awt.parsed(path.group(2)));
                checks.add(Check.number("length of " + path.group(1), JAVA, "mm", expected, Drawn.length(shape), 1e-8));
            }
        }
        double threeQuarters = Drawn.length(drawing.shape("far-arc").orElseThrow());
        checks.add(Check.number(
                "length of far-arc: 45π", Source.calculated("closed form"), "mm", 45 * Math.PI, threeQuarters, 1e-3));
        for (Map.Entry<String, double[]> row :
                Drawn.recorded("inkscape-query-all.csv").entrySet()) {
            checks.add(box(
                    row.getKey(),
                    row.getValue(),
                    Drawn.box(drawing.shape(row.getKey()).orElseThrow())));
        }
        return checks;
    }

    private static Check box(String id, double[] px, Box box) {
        String[] names = {"left", "top", "width", "height"};
        double[] got = {box.minX(), box.minY(), box.width(), box.height()};
        int worst = 0;
        for (int i = 1; i < 4; i++) {
            // A difference within rounding of the last one shown keeps its place, so that the page is the same
            // anywhere.
            if (Math.abs(px[i] * PX - got[i]) > Math.abs(px[worst] * PX - got[worst]) + 1e-7) {
                worst = i;
            }
        }
        return Check.number("box of " + id + ", " + names[worst], INKSCAPE, "mm", px[worst] * PX, got[worst], 2e-3);
    }
}
