package easewright.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far one outline runs from another, at even steps along it.
 *
 * @param away mm, in rising order
 */
public record Spacing(List<Double> away) {
    /** Lines nearer than this lie on each other, mm. */
    private static final double TOGETHER = 0.5;

    /** Distances are alike within this, mm, or within this part of them. */
    private static final double SLACK = 0.8;

    private static final double SLACK_OF_USUAL = 0.12;

    private static final int SAMPLES = 96;

    public Spacing {
        away = List.copyOf(away);
    }

    /** From places along the inner outline to the nearest place of the outer one. */
    public static Spacing of(Outline inner, Outline outer) {
        return of(inner.segments(), inner.length() / SAMPLES, outer);
    }

    /**
     * The same of a part of a line.
     *
     * @param step from one place to the next along it, mm
     */
    public static Spacing of(List<Segment> line, double step, Outline outer) {
        List<Double> away = new ArrayList<>();
        double next = step / 2;
        for (Segment segment : line) {
            double length = segment.length();
            while (next < length) {
                Point p = segment.at(segment.parameterAtLength(next));
                away.add(outer.nearest(p).distance());
                next += step;
            }
            next -= length;
        }
        away.sort(Comparator.naturalOrder());
        return new Spacing(away);
    }

    /** The widest, mm. */
    public double most() {
        return away.isEmpty() ? 0 : away.get(away.size() - 1);
    }

    /** Whether the two are one line drawn twice. */
    public boolean isOneLine() {
        return most() <= TOGETHER;
    }

    /** Whether there is any space to speak of. */
    public boolean isApart() {
        return usual() > TOGETHER;
    }

    /** The distance in the middle of all, those left out where the lines lie on each other, as on a fold; mm. */
    public double usual() {
        List<Double> apart = apart();
        return apart.isEmpty() ? 0 : apart.get(apart.size() / 2);
    }

    /** Of the places where the lines are apart, the part where they are so by about the usual distance. */
    public double evenness() {
        int apart = apart().size();
        return apart == 0 ? 1 : (double) alike() / apart;
    }

    /** At how many places the lines are apart by about the usual distance. */
    public long alike() {
        double usual = usual();
        double slack = Math.max(SLACK, SLACK_OF_USUAL * usual);
        return apart().stream().filter(d -> Math.abs(d - usual) <= slack).count();
    }

    /** The distances where the lines do not lie on each other, mm, in rising order. */
    public List<Double> apart() {
        return away.stream().filter(d -> d > TOGETHER).toList();
    }
}
