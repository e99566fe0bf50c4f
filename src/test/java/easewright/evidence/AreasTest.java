package easewright.evidence;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Sketch;
import easewright.svg.DrawnShape;
import easewright.svg.SubPath;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.List;

/** Areas of outlines by closed forms and by Apache Commons Geometry. */
class AreasTest extends Topic {
    private static final Source FORM = Source.calculated("closed form");
    private static final Source SOURCES = Source.calculated("docs/sources.md 9");
    private static final Source COMMONS = Source.calculated("Apache Commons Geometry 1.0, chords extrapolated");

    @Override
    String title() {
        return "Areas";
    }

    @Override
    String words() {
        return "Closed forms, and every closed outline without a crossing of `src/test/resources/evidence/shapes.svg` against the areas"
                + " that Apache Commons Geometry finds for 160 and for 320 chords, extrapolated.";
    }

    @Override
    List<Check> checks() throws Exception {
        List<Check> checks = new ArrayList<>(List.of(
                Check.number(
                        "four Bézier quarter circles",
                        SOURCES,
                        "",
                        3.142472333,
                        4 * CurveLengthsTest.quarter().sweptArea(),
                        5e-10),
                area("rectangle 13 × 23", SOURCES, 299, "0,0 13,0 13,23 0,23"),
                area("the same drawn the other way", FORM, -299, "0,0 0,23 13,23 13,0"),
                area(
                        "under y = x², 0 to 1",
                        FORM,
                        1 / 3.0,
                        "0,0 1,0 1,1 (0.66666666666666667,0.33333333333333333 0.33333333333333333,0) z"),
                area("triangle 3, 4, 5", FORM, 6, "0,0 3,0 3,4"),
                area("under the cubic (0,0)(0,1)(1,1)(1,0): 3/5", FORM, -0.6, "0,0 (0,1 1,1) 1,0")));
        Outline far = Sketch.outline("0,0 13,0 13,23 0,23").transformed(Affine.translation(100_000, -70_000));
        checks.add(Check.number("rectangle 13 × 23, 120 m from the origin", FORM, "", 299, far.signedArea(), 1e-6));
        checks.add(Check.number(
                "SVG ellipse 25, 15",
                FORM,
                "mm²",
                Math.PI * 25 * 15,
                Math.abs(Drawn.outline(Drawn.only("<ellipse rx='25' ry='15'/>")).signedArea()),
                1e-2));
        checks.add(Check.number(
                "SVG rectangle 60 × 40 with corners 8, 12",
                FORM,
                "mm²",
                2400 - (4 - Math.PI) * 8 * 12,
                Math.abs(Drawn.outline(Drawn.only("<rect width='60' height='40' rx='8' ry='12'/>"))
                        .signedArea()),
                1e-2));
        for (DrawnShape shape : Drawn.shapes().shapes()) {
            for (SubPath path : shape.subPaths()) {
                if (path.closed() && Validity.isSimple(path.outline().orElseThrow())) {
                    Outline outline = path.outline().orElseThrow();
                    checks.add(Check.number(
                            shape.id() + (shape.subPaths().indexOf(path) > 0 ? ", the hole" : ""),
                            COMMONS,
                            "mm²",
                            Commons.area(outline),
                            Math.abs(outline.signedArea()),
                            1e-5));
                }
            }
        }
        return checks;
    }

    private static Check area(String subject, Source source, double expected, String shape) {
        return Check.number(subject, source, "", expected, Sketch.outline(shape).signedArea(), 1e-10);
    }
}
