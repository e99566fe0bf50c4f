package easewright.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A closed outline in the direction in which it was drawn. The last segment ends exactly where the first starts.
 * Segments that a change leaves alone stay the same objects. Immutable; what searches along it need is worked out when
 * first asked for, and kept.
 */
public final class Outline implements Chain {
    /** A segment this far from a line, or farther, does not meet it, whatever the rounding; mm. */
    static final double BESIDE = 1e-6;

    private final List<Segment> segments;

    // Whoever works these out finds the same, so that nobody has to wait for anybody.
    private volatile BoxTree boxes;
    private volatile Box box;
    private volatile double area = Double.NaN;

    /** The places found lately, each at a number made of what was asked for; null until the first question. */
    private Asked[] asked;

    /** Two that fall on the same number push each other out. A power of two. */
    private static final int ASKED = 64;

    private record Asked(Point wanted, Nearest found) {}

    /**
     * @throws IllegalArgumentException if there is no segment, a gap between two, or the ends do not meet
     */
    public Outline(List<Segment> segments) {
        this.segments = List.copyOf(segments);
        Chain.requireJoined(this.segments);
        Point end = this.segments.get(this.segments.size() - 1).end();
        if (!end.equals(this.segments.get(0).start())) {
            throw new IllegalArgumentException("The outline does not close");
        }
    }

    @Override
    public List<Segment> segments() {
        return segments;
    }

    /** The boxes around the defining places of the segments. */
    public BoxTree boxes() {
        BoxTree known = boxes;
        if (known == null) {
            known = NearestSearch.tree(segments);
            boxes = known;
        }
        return known;
    }

    @Override
    public Box box() {
        Box known = box;
        if (known == null) {
            known = Chain.super.box();
            box = known;
        }
        return known;
    }

    /** Whether some place of the outline lies no farther from the point, mm: quicker than finding the nearest. */
    public boolean comesWithin(Point p, double distance) {
        return new NearestSearch(segments, boxes(), p).comesWithin(distance);
    }

    /** The parts of the outline that come within a distance of a segment, mm, for questions about places on it. */
    public Nearby nearby(Segment segment, double distance) {
        return new Nearby(this, segment, distance);
    }

    /** The marks of a piece are asked for ten times and more while it is changed and checked. */
    @Override
    public Nearest nearest(Point wanted) {
        Asked[] all = asked;
        if (all == null) {
            all = new Asked[ASKED];
            asked = all;
        }
        int slot = (wanted.hashCode() * 0x9E3779B9) >>> (Integer.SIZE - Integer.numberOfTrailingZeros(ASKED));
        Asked last = all[slot];
        if (last == null || !last.wanted().equals(wanted)) {
            last = new Asked(wanted, new NearestSearch(segments, boxes(), wanted).find());
            all[slot] = last;
        }
        return last.found();
    }

    /** A closed outline of straight lines through the corners. */
    public static Outline polygon(List<Point> corners) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            lines.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return new Outline(lines);
    }

    /**
     * Corners of a polygon from which no place of the outline lies farther than {@code stray}, mm: all ends of segments,
     * and places between on curves. A chord over a share h of a curve strays from it by at most h² / 8 of its second
     * derivative, which is greatest at an end.
     */
    public List<Point> corners(double stray) {
        List<Point> corners = new ArrayList<>();
        for (Segment segment : segments) {
            int steps = 1;
            if (segment instanceof Cubic cubic) {
                double bend = Math.max(
                        cubic.secondDerivative(0).norm(),
                        cubic.secondDerivative(1).norm());
                steps = (int) Math.max(1, Math.ceil(Math.sqrt(bend / (8 * stray))));
            }
            for (int i = 0; i < steps; i++) {
                corners.add(segment.at((double) i / steps));
            }
        }
        return corners;
    }

    /** Exact area with a sign: positive where the outline runs clockwise on screen, mm². */
    public double signedArea() {
        double known = area;
        if (Double.isNaN(known)) {
            known = sweptArea();
            area = known;
        }
        return known;
    }

    private double sweptArea() {
        // Measured from a corner, not from the far origin, to keep the digits.
        Point home = segments.get(0).start();
        double sum = 0;
        for (Segment segment : segments) {
            sum += segment.sweptArea(home);
        }
        return sum;
    }

    public Outline transformed(Affine map) {
        return new Outline(segments.stream().map(s -> s.transformed(map)).toList());
    }

    public Outline reversed() {
        return new Outline(new Curve(segments).reversed().segments());
    }

    /** The run from one place to another in the drawn direction; the whole outline if they are the same place. */
    public Curve run(Place from, Place to) {
        Place first = from.t() == 1 ? new Place((from.segment() + 1) % segments.size(), 0) : from;
        Place last = to.t() == 0 ? new Place((to.segment() + segments.size() - 1) % segments.size(), 1) : to;
        if (first.segment() == last.segment() && first.t() < last.t()) {
            return new Curve(List.of(segments.get(first.segment()).between(first.t(), last.t())));
        }
        int steps = Math.floorMod(last.segment() - first.segment(), segments.size());
        Segment[] parts = new Segment[steps == 0 ? segments.size() + 1 : steps + 1];
        parts[0] = segments.get(first.segment()).between(first.t(), 1);
        for (int k = 1; k < parts.length - 1; k++) {
            parts[k] = segments.get((first.segment() + k) % segments.size());
        }
        parts[parts.length - 1] = segments.get(last.segment()).between(0, last.t());
        return new Curve(List.of(parts));
    }

    /** The length of {@link #run}, mm, without making it. */
    public double length(Place from, Place to) {
        Place first = from.t() == 1 ? new Place((from.segment() + 1) % segments.size(), 0) : from;
        Place last = to.t() == 0 ? new Place((to.segment() + segments.size() - 1) % segments.size(), 1) : to;
        int i = first.segment();
        if (i == last.segment() && first.t() < last.t()) {
            return segments.get(i).between(first.t(), last.t()).length();
        }
        double sum = segments.get(i).between(first.t(), 1).length();
        for (i = (i + 1) % segments.size(); i != last.segment(); i = (i + 1) % segments.size()) {
            sum += segments.get(i).length();
        }
        return sum + segments.get(i).between(0, last.t()).length();
    }

    /** The same outline with the place made an end of segments; this very object where it is one already. */
    public Outline splitAt(Place place) {
        if (place.t() == 0 || place.t() == 1) {
            return this;
        }
        List<Segment> parts = new ArrayList<>(segments);
        Segment whole = parts.remove(place.segment());
        parts.add(place.segment(), whole.between(0, place.t()));
        parts.add(place.segment() + 1, whole.between(place.t(), 1));
        return new Outline(parts);
    }

    /**
     * All meetings with the endless line through {@code through} along {@code direction}, in order along it; a
     * corner on the line counts once. {@code along} is measured from {@code through}.
     */
    public List<Crossing> crossings(Point through, Point direction) {
        Point unit = direction.unit();
        List<Crossing> found = new ArrayList<>();
        boxes().along(through, unit, BESIDE, i -> {
            for (double t : segments.get(i).crossings(through, unit)) {
                Point p = segments.get(i).at(t);
                found.add(new Crossing(new Place(i, t), p, p.minus(through).dot(unit)));
            }
        });
        found.sort(Comparator.comparingDouble(Crossing::along));
        List<Crossing> distinct = new ArrayList<>();
        for (Crossing crossing : found) {
            boolean repeats = !distinct.isEmpty()
                    && distinct.get(distinct.size() - 1).point().distance(crossing.point()) < 1e-9;
            if (!repeats) {
                distinct.add(crossing);
            }
        }
        return List.copyOf(distinct);
    }

    /** Whether the point lies inside (even–odd rule); points within 1e-9 mm of the outline may fall either way. */
    public boolean contains(Point p) {
        Point across = new Point(1, 0);
        int[] passed = {0};
        boxes().along(p, across, BESIDE, i -> {
            for (double t : segments.get(i).passages(p, across, true)) {
                if (segments.get(i).at(t).x() > p.x()) {
                    passed[0]++;
                }
            }
        });
        return passed[0] % 2 == 1;
    }

    @Override
    public boolean equals(Object other) {
        return other == this || (other instanceof Outline o && segments.equals(o.segments));
    }

    @Override
    public int hashCode() {
        return segments.hashCode();
    }

    @Override
    public String toString() {
        return "Outline" + segments;
    }
}
