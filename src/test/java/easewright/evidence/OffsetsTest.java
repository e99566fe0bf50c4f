package easewright.evidence;

import easewright.geom.Outline;
import easewright.geom.Sketch;
import easewright.topology.Allowance;
import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Stitching and cutting lines: parallels of outlines. */
class OffsetsTest extends Topic {
    private static final Source SOURCES = Source.calculated("L + 2πd, A + Ld + πd², docs/sources.md 9");
    private static final Source MITRED = Source.calculated("mitred, docs/sources.md 9");
    private static final Source FORM = Source.calculated("closed form, sharp corners");
    private static final Source STROKE = Source.calculated("java.awt.BasicStroke and java.awt.geom.Area");

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "Allowances: parallels of outlines";
    }

    @Override
    String words() {
        return "Length L and area A of an outline's parallel at the distance d. Smooth convex outlines follow"
                + " L + 2πd and A + Ld + πd² exactly, whatever their shape; polygons are mitred; straight-sided pieces"
                + " are also compared with the strokes that the Java platform draws.";
    }

    @Override
    List<Check> checks() throws Exception {
        checks.clear();
        Outline rectangle = Sketch.outline("0,0 10,0 10,20 0,20");
        both("rectangle 10 × 20, 1.5 outwards", MITRED, 72, 299, parallel(rectangle, -1.5), 1e-9);
        both("rectangle 10 × 20, 1.5 inwards", FORM, 48, 119, parallel(rectangle, 1.5), 1e-9);
        both(
                "triangle 3, 4, 5, half its inner radius inwards",
                FORM,
                6,
                1.5,
                parallel(Sketch.outline("0,0 3,0 3,4"), 0.5),
                1e-9);
        double hexagon = 100 + 15 * 2 / Math.sqrt(3);
        both(
                "hexagon, side 100, 15 outwards",
                FORM,
                6 * hexagon,
                1.5 * Math.sqrt(3) * hexagon * hexagon,
                parallel(hexagon(), -15),
                1e-8);
        double[] unequal = {10, 15, 40, 0};
        both(
                "rectangle 100 × 200, allowances 10, 15, 40 and a fold",
                FORM,
                2 * (85 + 150),
                85 * 150,
                Allowance.of(Sketch.outline("0,0 100,0 100,200 0,200"), unequal)
                        .orElseThrow()
                        .outline(),
                1e-9);
        for (double d : new double[] {15, -15}) {
            both(
                    "circle, radius 100, " + (d > 0 ? "15 outwards" : "15 inwards"),
                    SOURCES,
                    2 * Math.PI * (100 + d),
                    Math.PI * (100 + d) * (100 + d),
                    parallel(Drawn.outline(Drawn.only("<circle r='100'/>")), -d),
                    0.01);
        }
        smooth(
                "rectangle with corners of radius 12",
                Drawn.outline(Drawn.only("<rect width='90' height='60' rx='12'/>")),
                6.35);
        smooth("ellipse 60, 40", Drawn.outline(Drawn.only("<ellipse rx='60' ry='40'/>")), 10);
        smooth("smooth outline of 24 cubics (seed 5)", Sketch.randomBlob(new Random(5), 24, 300), 15);
        smooth("the same", Sketch.randomBlob(new Random(5), 24, 300), -15);
        stroked("kite", "160,200 180,190 215.5,200 180,230", 6);
        stroked("bodice-like piece", "0,18 60,0 190,42 160,160 245,230 230,420 0,420", 10);
        stroked("piece with a hollow corner", "0,0 180,0 180,120 90,120 90,300 0,300", 15);
        return List.copyOf(checks);
    }

    private static Outline hexagon() {
        return Sketch.outline("100,0 50,86.60254037844386 -50,86.60254037844386 -100,0 -50,-86.60254037844386"
                + " 50,-86.60254037844386");
    }

    private static Outline parallel(Outline outline, double inwards) {
        double[] all = new double[outline.segments().size()];
        Arrays.fill(all, inwards);
        return Allowance.of(outline, all).orElseThrow().outline();
    }

    private void both(String subject, Source source, double length, double area, Outline got, double allowed) {
        checks.add(Check.number(subject + ": length", source, "mm", length, got.length(), allowed));
        checks.add(Check.number(subject + ": area", source, "mm²", area, Math.abs(got.signedArea()), allowed * 100));
    }

    private void smooth(String subject, Outline outline, double outwards) {
        double length = outline.length();
        double area = Math.abs(outline.signedArea());
        Outline got = parallel(outline, -outwards);
        String at = String.format(
                Locale.ROOT, "%s, %s mm %s", subject, brief(Math.abs(outwards)), outwards > 0 ? "outwards" : "inwards");
        checks.add(Check.number(at + ": length", SOURCES, "mm", length + 2 * Math.PI * outwards, got.length(), 2e-3));
        checks.add(Check.number(
                at + ": area",
                SOURCES,
                "mm²",
                area + length * outwards + Math.PI * outwards * outwards,
                Math.abs(got.signedArea()),
                2e-5 * length * 10));
    }

    private static String brief(double mm) {
        return mm == Math.rint(mm) ? String.valueOf((int) mm) : String.valueOf(mm);
    }

    private void stroked(String subject, String shape, double inwards) {
        Outline outline = Sketch.outline(shape);
        Area inside = new Area(Awt.path(outline.segments()));
        BasicStroke pen = new BasicStroke((float) (2 * inwards), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 20);
        inside.subtract(new Area(pen.createStrokedShape(Awt.path(outline.segments()))));
        checks.add(Check.number(
                String.format(Locale.ROOT, "%s, %.0f mm inwards: area", subject, inwards),
                STROKE,
                "mm²",
                Awt.polygonArea(inside),
                Math.abs(parallel(outline, inwards).signedArea()),
                0.05));
    }
}
