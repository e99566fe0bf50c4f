package easewright.evidence;

import easewright.geom.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Circle skirts: seams that are arcs. */
class CircleSkirtsTest extends Topic {
    private static final Source W10 = Source.calculated("worked example W10, docs/sources.md 4.6");
    private static final double[] SHARES = {1, 0.75, 0.5, 0.25};
    private static final String[] NAMES = {"full", "three-quarter", "half", "quarter"};
    private static final double[] INCH_HEMS = {178.796, 141.097, 103.398, 65.699};
    private static final double[] CM_HEMS = {448.991, 354.743, 260.496, 166.248};

    @Override
    String title() {
        return "Circle skirts";
    }

    @Override
    String words() {
        return "Drawn with SVG arcs of the radius W/(2πk), then measured: the waist W must come back, and the hem be"
                + " as the closed form has it.";
    }

    @Override
    List<Check> checks() throws Exception {
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < SHARES.length; i++) {
            add(checks, NAMES[i], SHARES[i], 28, 24, "in", 25.4, INCH_HEMS[i]);
            add(checks, NAMES[i], SHARES[i], 72, 60, "cm", 10, CM_HEMS[i]);
        }
        return checks;
    }

    private static void add(
            List<Check> checks,
            String name,
            double share,
            double waist,
            double length,
            String unit,
            double mm,
            double hem)
            throws Exception {
        double r = waist * mm / (2 * Math.PI * share);
        String subject =
                String.format(Locale.ROOT, "%s circle, waist %.0f %s, length %.0f %s", name, waist, unit, length, unit);
        checks.add(Check.number(subject + ": waist seam", W10, unit, waist, arc(r, share) / mm, 1e-4));
        checks.add(Check.number(subject + ": hem", W10, unit, hem, arc(r + length * mm, share) / mm, 6e-4));
    }

    /** Length of the arc that an SVG path draws around a share of a circle, closed over the centre. */
    private static double arc(double r, double share) throws Exception {
        double end = 2 * Math.PI * share;
        double middle = end / 2;
        String d = String.format(
                Locale.ROOT,
                "M%.9f 0A%.9f %.9f 0 0 1 %.9f %.9fA%.9f %.9f 0 0 1 %.9f %.9fL0 0z",
                r,
                r,
                r,
                r * Math.cos(middle),
                r * Math.sin(middle),
                r,
                r,
                r * Math.cos(end),
                r * Math.sin(end));
        Outline outline = Drawn.outline(Drawn.only("<path d='" + d + "'/>"));
        return outline.length() - 2 * r;
    }
}
