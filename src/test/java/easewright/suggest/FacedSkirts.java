package easewright.suggest;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.Locale;
import java.util.Random;

/** Sheets of our own: a skirt with a dart in the waist of front and back, and a facing drawn to each waist. */
final class FacedSkirts {
    private final Random random;
    private final StringBuilder sheet = new StringBuilder();
    private double x = 20;

    FacedSkirts(Random random) {
        this.random = random;
    }

    /** A sheet of such a width that nothing lies on another. */
    String sheet() {
        return String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' width='%1$.0fmm' height='900mm' viewBox='0 0 %1$.0f 900'>%2$s</svg>",
                x + 100,
                sheet);
    }

    /** How long the waists of a front and a back are with their darts closed, mm. */
    record Waists(double front, double back) {}

    /** A front, cut on the fold, and a back, cut twice. */
    Waists skirt() {
        return new Waists(half("Front skirt", "cut 1 on fold"), half("Back skirt", "cut 2"));
    }

    /** Half a skirt; gives the length of its waist with the dart closed, mm. */
    private double half(String name, String cut) {
        double wide = 190 + 60 * random.nextDouble();
        double intake = 18 + 16 * random.nextDouble();
        Cubic waist = waist(wide, 8 + 10 * random.nextDouble());
        double at = 0.38 + 0.12 * random.nextDouble();
        double half = intake / wide / 2;
        Segment one = waist.between(0, at - half);
        Segment two = waist.between(at + half, 1);
        Point tip = one.end().towards(two.start(), 0.5).plus(new Point(0, 90 + 40 * random.nextDouble()));
        double hip = wide + 30;
        String path = "M" + at(one.start()) + curve(one) + " L" + at(tip) + " L" + at(two.start()) + curve(two)
                + String.format(
                        Locale.ROOT,
                        " C%s %s %s V620 H%.4f Z",
                        at(waist.end().plus(new Point(14, 70))),
                        at(new Point(hip, 110)),
                        at(new Point(hip, 210)),
                        x);
        piece(path, name, cut, 400);
        x += hip + 60;
        return one.length() + two.length();
    }

    /** A facing whose upper edge is so long. */
    void facing(String name, String cut, double length, double deep) {
        facing(name, cut, length, deep, deep);
    }

    /** The same, so deep at its ends: where they differ much it is no strip, of which one edge would be known as free. */
    void facing(String name, String cut, double length, double deep, double deepAtEnd) {
        double low = 1;
        double high = 2 * length;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean shorter = waist(middle, 10).length() < length;
            low = shorter ? middle : low;
            high = shorter ? high : middle;
        }
        Cubic upper = waist(low, 10);
        Cubic lower = new Cubic(
                upper.end().plus(new Point(8, deepAtEnd)),
                upper.control2().plus(new Point(6, deepAtEnd)),
                upper.control1().plus(new Point(3, deep)),
                upper.start().plus(new Point(0, deep)));
        piece("M" + at(upper.start()) + curve(upper) + " L" + at(lower.start()) + curve(lower) + " Z", name, cut, 30);
        x += low + 80;
    }

    private static Cubic waist(double wide, double rise) {
        return new Cubic(
                new Point(0, 0), new Point(0.35 * wide, 0), new Point(0.7 * wide, -0.5 * rise), new Point(wide, -rise));
    }

    private void piece(String path, String name, String cut, double down) {
        sheet.append(String.format(
                Locale.ROOT,
                "<path d='%s' fill='none' stroke='black'/><text x='%.1f' y='%.1f' font-size='9'>%s"
                        + "<tspan x='%.1f' dy='11'>%s</tspan></text>",
                path,
                x + 20,
                60 + down,
                name,
                x + 20,
                cut));
    }

    private String at(Point p) {
        return String.format(Locale.ROOT, "%.4f,%.4f", x + p.x(), 60 + p.y());
    }

    private String curve(Segment segment) {
        Cubic c = (Cubic) segment;
        return " C" + at(c.control1()) + " " + at(c.control2()) + " " + at(c.end());
    }
}
