package easewright.geom;

/**
 * Tells whether a cubic comes within a distance of a point, without finding its nearest place: it is halved until each
 * part certainly stays beyond the distance or one certainly does not.
 */
final class CubicReach {
    private static final int MOST_HALVINGS = 20;

    /** What rounding may hide, as a share. */
    private static final double SLACK = 1e-9;

    private enum Answer {
        WITHIN,
        BEYOND,
        UNDECIDED
    }

    private final double distance;
    private final double square;

    private CubicReach(double distance) {
        this.distance = distance * (1 + SLACK);
        this.square = distance * distance;
    }

    /** Whether some place of the curve lies no farther from the point, mm. */
    static boolean comesWithin(Cubic c, Point p, double distance) {
        double x = p.x();
        double y = p.y();
        Answer answer = new CubicReach(distance)
                .look(
                        c.start().x() - x,
                        c.start().y() - y,
                        c.control1().x() - x,
                        c.control1().y() - y,
                        c.control2().x() - x,
                        c.control2().y() - y,
                        c.end().x() - x,
                        c.end().y() - y,
                        MOST_HALVINGS);
        return answer == Answer.UNDECIDED ? c.at(c.nearest(p)).distance(p) <= distance : answer == Answer.WITHIN;
    }

    /** Everything is taken relative to the point. */
    private Answer look(
            double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, int halvings) {
        if (x0 * x0 + y0 * y0 <= square || x3 * x3 + y3 * y3 <= square) {
            return Answer.WITHIN;
        }
        if (isAside(x0, x1, x2, x3) || isAside(y0, y1, y2, y3)) {
            return Answer.BEYOND;
        }
        double dx = x3 - x0;
        double dy = y3 - y0;
        double length = dx * dx + dy * dy;
        if (length > 0) {
            // How far to the side of the chord the point lies, and how far the curve can stray there: by (1−t)²t and
            // (1−t)t² thrice what its control places do, together at most 3/4 of the greater. All times the chord.
            double side = dy * x0 - dx * y0;
            double one = dx * (y1 - y0) - dy * (x1 - x0);
            double two = dx * (y2 - y0) - dy * (x2 - x0);
            double reach = distance * Math.sqrt(length);
            if (side > 0.75 * Math.max(0, Math.max(one, two)) + reach
                    || side < 0.75 * Math.min(0, Math.min(one, two)) - reach) {
                return Answer.BEYOND;
            }
            double t = -(dx * x0 + dy * y0) / length;
            if (t > 0 && t < 1) {
                double x = at(t, x0, x1, x2, x3);
                double y = at(t, y0, y1, y2, y3);
                if (x * x + y * y <= square) {
                    return Answer.WITHIN;
                }
            }
        }
        if (halvings == 0) {
            return Answer.UNDECIDED;
        }
        double ax = (x0 + x1) / 2;
        double ay = (y0 + y1) / 2;
        double bx = (x1 + x2) / 2;
        double by = (y1 + y2) / 2;
        double cx = (x2 + x3) / 2;
        double cy = (y2 + y3) / 2;
        double abx = (ax + bx) / 2;
        double aby = (ay + by) / 2;
        double bcx = (bx + cx) / 2;
        double bcy = (by + cy) / 2;
        double mx = (abx + bcx) / 2;
        double my = (aby + bcy) / 2;
        Answer first = look(x0, y0, ax, ay, abx, aby, mx, my, halvings - 1);
        return first == Answer.BEYOND ? look(mx, my, bcx, bcy, cx, cy, x3, y3, halvings - 1) : first;
    }

    /** Whether all defining places lie farther off, on one side. */
    private boolean isAside(double a, double b, double c, double d) {
        return a > distance && b > distance && c > distance && d > distance
                || a < -distance && b < -distance && c < -distance && d < -distance;
    }

    private static double at(double t, double a, double b, double c, double d) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }
}
