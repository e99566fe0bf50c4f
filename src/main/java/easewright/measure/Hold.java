package easewright.measure;

import easewright.geom.Point;

/**
 * What of the drawn line settles where a place of the stitching line lies; all one point where the drawn line is
 * the stitching line.
 *
 * @param sewn   the place on the stitching line
 * @param before the drawn place square across from the stitching line that arrives there
 * @param after  the drawn place square across from the one that leaves; another one only at a corner
 * @param first  a little before {@code before}: while the drawn line from here
 * @param last   to here, a little after {@code after}, keeps its shape, so does the sewn place, whatever the lines
 *               on either side do
 */
public record Hold(Point sewn, Point before, Point after, Point first, Point last) {
    /** A place that is drawn where it is sewn. */
    public static Hold point(Point p) {
        return new Hold(p, p, p, p, p);
    }

    /** The drawn place across from it on the side that lies ahead, or behind. */
    public Point across(boolean ahead) {
        return ahead ? after : before;
    }

    /** Where what must keep its shape ends on that side. */
    public Point end(boolean ahead) {
        return ahead ? last : first;
    }
}
