package easewright.topology;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The cutting line around a stitching line, an allowance of its own on each segment. Corners are drawn out to where both
 * lines meet. A hem is turned up against the piece, so its allowance is as wide there as the piece is: the side's line
 * goes on to the hem line and from there, mirrored in it, to the edge of the hem (blog.fabrics-store.com/?p=32999, read).
 */
public final class CutAround {
    /** A hem at most so many times as long as the way from end to end is folded straight. */
    private static final double NEARLY_STRAIGHT = 1.005;

    private final Outline stitched;
    private final Outline line;
    private final Allowance allowance;
    private final double[] widths;
    private final boolean[] hems;

    private CutAround(Outline stitched, Allowance allowance, double[] widths, boolean[] hems) {
        this.widths = widths;
        this.stitched = stitched;
        this.allowance = allowance;
        this.line = allowance.outline();
        this.hems = hems;
    }

    /**
     * @param widths allowance on each segment, mm, 0 or more
     * @param hems   whether the segment belongs to a hem
     * @return empty where no such line can be drawn
     */
    public static Optional<CutAround> of(Outline stitched, double[] widths, boolean[] hems) {
        double[] outward = Arrays.stream(widths).map(w -> -w).toArray();
        return Allowance.of(stitched, outward).map(a -> new CutAround(stitched, a, widths, hems));
    }

    /** The line with all corners drawn out, those of hems as well. */
    public Outline straight() {
        return line;
    }

    /** A stretch of the line that is drawn otherwise. */
    private record Patch(Place from, Place to, List<Segment> instead) {}

    /** The line with the hems mirrored about the hem line at their corners. */
    public Outline turnedUp() {
        int count = stitched.segments().size();
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int before = (i + count - 1) % count;
            if (hems[i] != hems[before]) {
                patch(i, hems[i]).ifPresent(patches::add);
            }
        }
        return patches.isEmpty() ? line : patched(patches);
    }

    /** The corner at the start of a segment, between a side and a hem. */
    private Optional<Patch> patch(int i, boolean hemFollows) {
        int count = stitched.segments().size();
        Segment before = stitched.segments().get((i + count - 1) % count);
        Segment after = stitched.segments().get(i);
        Place corner = allowance.place(new Place(i, 0));
        Point at = stitched.segments().get(i).start();
        // Both lines as they leave the corner, away from it: the side's up, the hem's along.
        Point up = hemFollows ? before.tangent(1).times(-1) : after.tangent(0);
        Point along = hemLine(i, hemFollows);
        Point meeting = line.point(corner);
        // From the corner of both lines back up the side's line to the hem line, then down again as in a mirror.
        double back = cross(at.minus(meeting), along) / cross(up, along);
        if (!Double.isFinite(back)) {
            return Optional.empty();
        }
        Point turn = meeting.plus(up.times(back));
        Point mirrored = up.minus(along.times(2 * up.dot(along)));
        // The edge of the hem begins straight across from the corner of the piece.
        Point begins = begins(i, hemFollows, at);
        double down = cross(begins.minus(turn), along) / cross(mirrored, along);
        Point foot = turn.plus(mirrored.times(down));
        if (!(back > 0) || !Double.isFinite(down) || foot.distance(meeting) < 1e-6) {
            return Optional.empty();
        }
        boolean inside = foot.minus(begins).dot(along) > 0;
        Place side = line.nearest(turn).place();
        Place hem = line.nearest(inside ? foot : begins).place();
        Point sideEnd = line.point(side);
        Point hemEnd = line.point(hem);
        List<Segment> instead = new ArrayList<>();
        if (hemFollows) {
            instead.add(new Line(sideEnd, inside ? hemEnd : foot));
            if (!inside) {
                instead.add(new Line(foot, hemEnd));
            }
            return Optional.of(new Patch(side, hem, instead));
        }
        if (!inside) {
            instead.add(new Line(hemEnd, foot));
        }
        instead.add(new Line(inside ? hemEnd : foot, sideEnd));
        return Optional.of(new Patch(hem, side, instead));
    }

    private Point begins(int corner, boolean hemFollows, Point at) {
        int count = stitched.segments().size();
        int hem = hemFollows ? corner : (corner + count - 1) % count;
        Point along = stitched.segments().get(hem).tangent(hemFollows ? 0 : 1);
        double side = stitched.signedArea() >= 0 ? 1 : -1;
        return at.minus(along.quarterTurned().times(side * widths[hem]));
    }

    /** Where the hem is folded, away from the corner: straight from end to end unless it curves, else as it sets out. */
    private Point hemLine(int corner, boolean hemFollows) {
        int count = stitched.segments().size();
        int step = hemFollows ? 1 : count - 1;
        int first = hemFollows ? corner : (corner + count - 1) % count;
        double length = 0;
        int last = first;
        for (int i = first; hems[i]; i = (i + step) % count) {
            length += stitched.segments().get(i).length();
            last = i;
            if ((i + step) % count == first) {
                break;
            }
        }
        Segment near = stitched.segments().get(first);
        Segment far = stitched.segments().get(last);
        Point chord = hemFollows ? far.end().minus(near.start()) : far.start().minus(near.end());
        if (chord.norm() * NEARLY_STRAIGHT > length) {
            return chord.unit();
        }
        return hemFollows ? near.tangent(0) : near.tangent(1).times(-1);
    }

    private static double cross(Point a, Point b) {
        return a.cross(b);
    }

    private Outline patched(List<Patch> patches) {
        patches.sort((a, b) -> a.from().compareTo(b.from()));
        List<Segment> all = new ArrayList<>();
        for (int i = 0; i < patches.size(); i++) {
            Patch patch = patches.get(i);
            all.addAll(patch.instead());
            Place next = patches.get((i + 1) % patches.size()).from();
            if (!line.point(patch.to()).equals(line.point(next))) {
                all.addAll(line.run(patch.to(), next).segments());
            }
        }
        return new Outline(joined(all));
    }

    private static List<Segment> joined(List<Segment> segments) {
        List<Segment> all = new ArrayList<>();
        for (Segment segment : segments) {
            if (segment.start().distance(segment.end()) > 1e-9) {
                all.add(segment);
            }
        }
        for (int i = 0; i < all.size(); i++) {
            Point start = all.get((i + all.size() - 1) % all.size()).end();
            Segment segment = all.get(i);
            if (!segment.start().equals(start)) {
                all.set(i, new Part(segment, 0).withEnds(start, segment.end()).segment());
            }
        }
        return all;
    }
}
