package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.EnumMap;
import java.util.Map;

/**
 * How a sleeve is reshaped: each run of its outline by a map of its own, straight lines to straight lines, so that
 * curves stay smooth and the opposite takes it back. Seen from the line between the underarm corners, the cap is
 * widened along it and lowered square to it; the seams lean outwards by nothing at the hem, or move out as they are.
 */
final class SleeveShape {
    private final Affine home;
    private final double width;
    private final double by;
    private final double atStart;
    private final double squash;
    private final double capSide;
    private final double depth;
    private final boolean carry;
    private final Map<SleeveParts.Part, Affine> maps = new EnumMap<>(SleeveParts.Part.class);

    /**
     * @param by      how much farther apart the corners shall lie, mm; half of it at either
     * @param squash  height of the cap as a share of what it was
     * @param carry   whether the hem widens as well
     */
    SleeveShape(SleeveParts parts, double by, double squash, boolean carry) {
        Point across = parts.end().minus(parts.start()).unit();
        this.home = new Affine(across.x(), -across.y(), across.y(), across.x(), 0, 0)
                .after(Affine.translation(Point.ORIGIN.minus(parts.start())));
        this.width = parts.start().distance(parts.end());
        this.by = by;
        this.atStart = -by / 2;
        this.squash = squash;
        this.carry = carry;
        Point startHem = home.apply(parts.seamStart());
        Point endHem = home.apply(parts.seamEnd());
        this.depth = (startHem.y() + endHem.y()) / 2;
        this.capSide = -Math.signum(depth);
        put(SleeveParts.Part.CAP, new Affine(1 + by / width, 0, 0, squash, atStart, 0));
        put(SleeveParts.Part.END_SEAM, leaning(atStart + by, endHem.y()));
        put(SleeveParts.Part.START_SEAM, leaning(atStart, startHem.y()));
        double hem = endHem.x() - startHem.x();
        put(
                SleeveParts.Part.HEM,
                carry ? new Affine(1 + by / hem, 0, 0, 1, atStart - by * startHem.x() / hem, 0) : Affine.IDENTITY);
    }

    private Affine leaning(double shift, double hem) {
        return carry ? Affine.translation(shift, 0) : new Affine(1, 0, -shift / hem, 1, shift, 0);
    }

    private void put(SleeveParts.Part part, Affine inHome) {
        // Nothing moved is exactly nothing moved.
        boolean still = inHome.equals(Affine.IDENTITY);
        maps.put(part, still ? inHome : home.inverse().after(inHome).after(home));
    }

    Affine map(SleeveParts.Part part) {
        return maps.get(part);
    }

    /** Whether a run stays as it is, to the last bit. */
    boolean stays(SleeveParts.Part part) {
        return part == SleeveParts.Part.HEM && !carry;
    }

    /** Where a place inside the cloth goes. */
    Point inside(Point p) {
        Point at = home.apply(p);
        double share = Math.min(1, Math.max(0, at.x() / width));
        double shift = atStart + by * share;
        if (at.y() * capSide > 0) {
            return home.inverse().apply(new Point(at.x() + shift, at.y() * squash));
        }
        double left = carry ? 1 : Math.max(0, 1 - at.y() / depth);
        return home.inverse().apply(new Point(at.x() + shift * left, at.y()));
    }

    /** Whether a place lies on the cap's side of the line between the underarm corners. */
    boolean inCap(Point p) {
        return home.apply(p).y() * capSide > 0;
    }

    /** How far a run reaches above that line, towards the cap, mm. */
    double above(Segment s) {
        Box box = s.transformed(home).box();
        return Math.max(box.minY() * capSide, box.maxY() * capSide);
    }

    /** Height of the cap as a share of what it was. */
    double squash() {
        return squash;
    }
}
