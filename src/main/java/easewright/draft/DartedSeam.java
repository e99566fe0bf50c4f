package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A seam with darts, drawn as the trade trues it: the darts are folded shut, one smooth seam is drawn across them,
 * and they are opened again, each with the cap that lies under the seam when the dart is pressed towards the centre
 * (source: folding the dart to draw its cap, docs/sources.md 4.5, W8).
 *
 * @param closed the smooth seam with all darts folded shut, from the centre outwards; its length is the sewn length
 * @param open   the seam as drawn on the flat piece, caps included
 */
record DartedSeam(Curve closed, Curve open, List<Dart> darts) {
    DartedSeam {
        darts = List.copyOf(darts);
    }

    /** Where a place beyond all the darts lies when they are folded shut. */
    static Point shut(List<DartPlan> plans, int sense, Point p) {
        return opening(plans, sense).inverse().apply(p);
    }

    /** Where a direction beyond all the darts points when they are folded shut. */
    static Point shutDirection(List<DartPlan> plans, int sense, Point v) {
        return opening(plans, sense).inverse().applyToDirection(v);
    }

    /** The map from folded shut to open for what lies beyond the darts; the plans are given as they lie when open. */
    private static Affine opening(List<DartPlan> plans, int sense) {
        Affine map = Affine.IDENTITY;
        for (DartPlan plan : plans) {
            map = plan.opening(sense).after(map);
        }
        return map;
    }

    /**
     * Opens the darts along a smooth seam.
     *
     * @param sense +1 where opening a dart turns what lies beyond it clockwise on the page, else -1
     * @throws DraftRefused if a dart leg does not meet the seam
     */
    static DartedSeam open(String edge, Curve closed, List<DartPlan> plans, int sense) {
        List<Segment> open = new ArrayList<>();
        List<Dart> darts = new ArrayList<>();
        Affine map = Affine.IDENTITY;
        Curve rest = closed;
        for (DartPlan plan : plans) {
            Curve[] parts = parted(rest.transformed(map), plan.point(), plan.firstLeg(sense));
            Curve before = parts[0];
            Affine turn = plan.opening(sense);
            Point mouth1 = before.end();
            Point mouth2 = turn.apply(mouth1);
            Point seam = before.segments().get(before.segments().size() - 1).tangent(1);
            Point cap = cap(plan, mouth1, seam);
            open.addAll(before.segments());
            open.add(new Line(mouth1, cap));
            open.add(new Line(cap, mouth2));
            darts.add(new Dart(plan.name(), mouth1, mouth2, plan.point(), Optional.empty(), Optional.of(edge)));
            rest = parts[1].transformed(map.inverse());
            map = turn.after(map);
        }
        open.addAll(rest.transformed(map).segments());
        return new DartedSeam(closed, new Curve(Places.joined(open)), darts);
    }

    /** Pressed towards the centre, the cap's first half lies under the seam before it: mirror that seam in the leg. */
    private static Point cap(DartPlan plan, Point mouth1, Point seam) {
        Point leg = mouth1.minus(plan.point()).unit();
        Point back = seam.times(-1);
        Point mirrored = leg.times(2 * back.dot(leg)).minus(back);
        double along = plan.point().minus(mouth1).cross(plan.towardsMouth()) / mirrored.cross(plan.towardsMouth());
        return mouth1.plus(mirrored.times(along));
    }

    private static Curve[] parted(Curve curve, Point through, Point direction) {
        List<Segment> segments = curve.segments();
        for (int i = 0; i < segments.size(); i++) {
            for (double t : segments.get(i).crossings(through, direction)) {
                if (t > 1e-9
                        && t < 1 - 1e-9
                        && segments.get(i).at(t).minus(through).dot(direction) > 0) {
                    List<Segment> before = new ArrayList<>(segments.subList(0, i));
                    before.add(segments.get(i).between(0, t));
                    List<Segment> after =
                            new ArrayList<>(List.of(segments.get(i).between(t, 1)));
                    after.addAll(segments.subList(i + 1, segments.size()));
                    return new Curve[] {new Curve(before), new Curve(after)};
                }
            }
        }
        throw DraftRefused.line(DraftLine.DART);
    }
}
