package easewright.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Shapes for tests, written as text. Points are {@code x,y} with blanks between them and are joined by straight
 * lines; two control points in brackets before a point make the stretch to it a cubic:
 *
 * <pre>{@code Sketch.outline("0,0 10,0 (12,3 14,5) 10,20 0,20")}</pre>
 *
 * An outline closes with a straight line to its first point; to close it with a curve, write {@code z} for the first
 * point at the end: {@code "0,0 10,0 (12,8 5,9) z"}.
 */
public final class Sketch {
    private Sketch() {}

    public static Outline outline(String text) {
        List<Segment> segments = segments(text);
        Point first = segments.get(0).start();
        Point last = segments.get(segments.size() - 1).end();
        if (!last.equals(first)) {
            segments.add(new Line(last, first));
        }
        return new Outline(segments);
    }

    public static Curve curve(String text) {
        return new Curve(segments(text));
    }

    public static Point point(String text) {
        String[] xy = text.split(",");
        return new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
    }

    private static List<Segment> segments(String text) {
        List<Segment> segments = new ArrayList<>();
        List<Point> controls = new ArrayList<>();
        Point first = null;
        Point at = null;
        boolean inBracket = false;
        for (String word : text.replace("(", " ( ").replace(")", " ) ").strip().split("\\s+")) {
            if (word.equals("(") || word.equals(")")) {
                inBracket = word.equals("(");
                continue;
            }
            Point next = word.equals("z") ? first : point(word);
            if (inBracket) {
                controls.add(next);
                continue;
            }
            if (at == null) {
                first = next;
            } else if (controls.isEmpty()) {
                segments.add(new Line(at, next));
            } else {
                segments.add(new Cubic(at, controls.get(0), controls.get(1), next));
            }
            controls.clear();
            at = next;
        }
        return segments;
    }

    /** A cubic with all its places in a square of the given side. */
    public static Cubic randomCubic(Random random, double side) {
        return new Cubic(
                randomPoint(random, side),
                randomPoint(random, side),
                randomPoint(random, side),
                randomPoint(random, side));
    }

    public static Point randomPoint(Random random, double side) {
        return new Point(random.nextDouble() * side, random.nextDouble() * side);
    }

    /**
     * A smooth closed outline of cubics around a centre, without self-crossing: radius wavers by at most a quarter.
     *
     * @param segments number of cubics, at least 4
     */
    public static Outline randomBlob(Random random, int segments, double radius) {
        double[] phase = {random.nextDouble() * 6, random.nextDouble() * 6};
        List<Segment> parts = new ArrayList<>();
        double step = 2 * Math.PI / segments;
        for (int i = 0; i < segments; i++) {
            double to = i + 1 == segments ? 0 : (i + 1) * step;
            parts.add(Cubic.hermite(
                    blob(phase, radius, i * step),
                    blobSlope(phase, radius, i * step).times(step),
                    blob(phase, radius, to),
                    blobSlope(phase, radius, to).times(step)));
        }
        return new Outline(parts);
    }

    private static Point blob(double[] phase, double radius, double angle) {
        double r = radius * (1 + 0.15 * Math.sin(2 * angle + phase[0]) + 0.1 * Math.sin(3 * angle + phase[1]));
        return new Point(r * Math.cos(angle), r * Math.sin(angle));
    }

    private static Point blobSlope(double[] phase, double radius, double angle) {
        double r = radius * (1 + 0.15 * Math.sin(2 * angle + phase[0]) + 0.1 * Math.sin(3 * angle + phase[1]));
        double dr = radius * (0.3 * Math.cos(2 * angle + phase[0]) + 0.3 * Math.cos(3 * angle + phase[1]));
        return new Point(dr * Math.cos(angle) - r * Math.sin(angle), dr * Math.sin(angle) + r * Math.cos(angle));
    }
}
