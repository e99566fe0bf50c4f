package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a dart lies on its outline.
 *
 * @param outline the outline with ends of segments at both places of the mouth
 * @param first   the place of the mouth that comes first in the drawn direction
 * @param second  the other one
 * @param swapped whether the first is the dart's second mouth place
 * @param inner   the run between them: the legs, the cap, or the seam itself
 * @param kind    what that run is
 */
record DartMouth(Outline outline, Point first, Point second, boolean swapped, List<Segment> inner, Kind kind) {
    /** How a dart is drawn. */
    enum Kind {
        /** Its legs are part of the outline. */
        CUT_OUT,
        /** The outline runs over it in a cap. */
        CAPPED,
        /** The outline runs over it as if it were not there. */
        FLAT
    }

    /** A mark this close to an end of segments means that end, mm. */
    private static final double ROUNDING = 0.05;

    /** The dart's point lies on the outline within this, mm. */
    private static final double ON_LINE = 0.1;

    /** A run along two legs is as long as the legs; shaped legs are a little longer. */
    private static final double LEG_SLACK = 1.3;

    /**
     * A seam that nowhere bends by more than this at and within the mouth goes on over the dart, radians. A cap bends by
     * about half the dart's angle there, which is 5° and more for any dart worth sewing.
     */
    private static final double SMOOTH = Math.toRadians(1.5);

    static DartMouth of(Piece piece, Dart dart) throws Refusal {
        Outline outline = piece.outline();
        for (Point mouth : List.of(dart.mouth1(), dart.mouth2())) {
            if (outline.nearest(mouth).distance() > Shift.ON_OUTLINE) {
                throw Refusal.of("dart-off-outline").with("piece", piece.name()).with("dart", dart.name());
            }
            outline = outline.splitAt(place(outline, mouth));
        }
        Place one = place(outline, dart.mouth1());
        Place two = place(outline, dart.mouth2());
        Curve there = outline.run(one, two);
        Curve back = outline.run(two, one);
        boolean cut = outline.nearest(dart.point()).distance() <= ON_LINE;
        double legs = LEG_SLACK
                * (dart.mouth1().distance(dart.point()) + dart.mouth2().distance(dart.point()));
        boolean thereIsLegs = cut && there.nearest(dart.point()).distance() <= ON_LINE && there.length() <= legs;
        boolean backIsLegs = cut && back.nearest(dart.point()).distance() <= ON_LINE && back.length() <= legs;
        boolean forth = thereIsLegs || (!backIsLegs && there.length() <= back.length());
        Curve run = forth ? there : back;
        Kind kind = thereIsLegs || backIsLegs ? Kind.CUT_OUT : bends(outline, run) ? Kind.CAPPED : Kind.FLAT;
        return new DartMouth(outline, run.start(), run.end(), !forth, run.segments(), kind);
    }

    private static Place place(Outline outline, Point mouth) {
        Place near = outline.nearest(mouth).place();
        Segment segment = outline.segments().get(near.segment());
        Point p = segment.at(near.t());
        if (segment.start().distance(p) <= ROUNDING) {
            return new Place(near.segment(), 0);
        }
        return segment.end().distance(p) <= ROUNDING
                ? new Place((near.segment() + 1) % outline.segments().size(), 0)
                : near;
    }

    private static boolean bends(Outline outline, Curve run) {
        return bends(outline, run.end()) || run.segments().stream().anyMatch(s -> bends(outline, s.start()));
    }

    private static boolean bends(Outline outline, Point node) {
        List<Segment> all = outline.segments();
        int next = node(outline, node);
        int last = next + all.size() - 1;
        // Two places of a drawn corner may lie on each other.
        while (!all.get(next % all.size()).hasLength()) {
            next++;
        }
        while (!all.get(last % all.size()).hasLength()) {
            last--;
        }
        Point in = all.get(last % all.size()).tangent(1);
        Point out = all.get(next % all.size()).tangent(0);
        return Math.abs(Math.atan2(in.cross(out), in.dot(out))) > SMOOTH;
    }

    private static int node(Outline outline, Point p) {
        for (int i = 0; i < outline.segments().size(); i++) {
            if (outline.segments().get(i).start().equals(p)) {
                return i;
            }
        }
        throw new IllegalStateException("No end of segments at " + p);
    }

    /** The segment that leads to the mouth. */
    Segment before() {
        int n = outline.segments().size();
        return outline.segments().get((node(outline, first) + n - 1) % n);
    }

    /** The segment that leads away from it. */
    Segment after() {
        return outline.segments().get(node(outline, second));
    }

    /** The outline with the segment before the mouth, the run between and the segment after replaced, in this order. */
    Outline replaced(Segment newBefore, List<Segment> newInner, Segment newAfter) {
        int n = outline.segments().size();
        int start = (node(outline, first) + n - 1) % n;
        List<Segment> all = new ArrayList<>();
        all.add(newBefore);
        all.addAll(newInner);
        all.add(newAfter);
        for (int k = inner.size() + 2; k < n; k++) {
            all.add(outline.segments().get((start + k) % n));
        }
        // The outline goes on starting where it started.
        int turn = all.size() - start % all.size();
        List<Segment> ordered = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            ordered.add(all.get((turn + k) % all.size()));
        }
        return new Outline(ordered);
    }
}
