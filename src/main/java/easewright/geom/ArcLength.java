package easewright.geom;

/** Length of a cubic by Gauss–Legendre quadrature, halved until two orders of work agree. */
final class ArcLength {
    /** Gauss–Legendre nodes on −1…1 and their weights (positive half; the rules are symmetric). */
    private static final double[] NODES_4 = {0.339981043584856264802665759103, 0.861136311594052575223946488893};

    private static final double[] WEIGHTS_4 = {0.652145154862546142626936050778, 0.347854845137453857373063949222};

    private static final double[] NODES_8 = {
        0.183434642495649804939476142360,
        0.525532409916328985817739049189,
        0.796666477413626739591553936476,
        0.960289856497536231683560868569
    };

    private static final double[] WEIGHTS_8 = {
        0.362683783378361982965150449277,
        0.313706645877887287337962201987,
        0.222381034453374470544355994426,
        0.101228536290376259152531354310
    };

    private static final double[] NODES_16 = {
        0.0950125098376374401853193354250, 0.281603550779258913230460501460, 0.458016777657227386342419442984,
        0.617876244402643748446671764049, 0.755404408355003033895101194847, 0.865631202387831743880467897712,
        0.944575023073232576077988415535, 0.989400934991649932596154173450
    };

    private static final double[] WEIGHTS_16 = {
        0.189450610455068496285396723208, 0.182603415044923588866763667969, 0.169156519395002538189312079030,
        0.149595988816576732081501730547, 0.124628971255533872052476282192, 0.0951585116824927848099251076022,
        0.0622535239386478928628438369944, 0.0271524594117540948517805724560
    };

    private static final int DEEPEST = 40;

    /** The sides of the curve's frame: all that its speed depends on. */
    private final double x0;

    private final double x1;
    private final double x2;
    private final double y0;
    private final double y1;
    private final double y2;
    private final double tolerance;

    private ArcLength(Cubic c) {
        x0 = c.control1().x() - c.start().x();
        x1 = c.control2().x() - c.control1().x();
        x2 = c.end().x() - c.control2().x();
        y0 = c.control1().y() - c.start().y();
        y1 = c.control2().y() - c.control1().y();
        y2 = c.end().y() - c.control2().y();
        tolerance =
                1e-13 * (Math.sqrt(x0 * x0 + y0 * y0) + Math.sqrt(x1 * x1 + y1 * y1) + Math.sqrt(x2 * x2 + y2 * y2));
    }

    static double of(Cubic curve, double from, double to) {
        return from == to ? 0 : new ArcLength(curve).between(from, to);
    }

    private double between(double from, double to) {
        // Gentle curves, which most are, need few places: each rule is far truer than its difference to the one before.
        double four = rule(from, to, NODES_4, WEIGHTS_4);
        double eight = rule(from, to, NODES_8, WEIGHTS_8);
        if (Math.abs(eight - four) <= tolerance) {
            return eight;
        }
        double sixteen = rule(from, to, NODES_16, WEIGHTS_16);
        return Math.abs(sixteen - eight) <= tolerance ? sixteen : refine(from, to, sixteen, DEEPEST);
    }

    private double refine(double from, double to, double whole, int depth) {
        double middle = (from + to) / 2;
        double left = rule(from, middle, NODES_16, WEIGHTS_16);
        double right = rule(middle, to, NODES_16, WEIGHTS_16);
        if (Math.abs(left + right - whole) <= tolerance || depth == 0) {
            return left + right;
        }
        return refine(from, middle, left, depth - 1) + refine(middle, to, right, depth - 1);
    }

    private double rule(double from, double to, double[] nodes, double[] weights) {
        double half = (to - from) / 2;
        double centre = (from + to) / 2;
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double offset = half * nodes[i];
            sum += weights[i] * (speed(centre - offset) + speed(centre + offset));
        }
        return sum * half;
    }

    private double speed(double t) {
        double s = 1 - t;
        double w0 = 3 * s * s;
        double w1 = 6 * s * t;
        double w2 = 3 * t * t;
        double dx = w0 * x0 + w1 * x1 + w2 * x2;
        double dy = w0 * y0 + w1 * y1 + w2 * y2;
        return Math.sqrt(dx * dx + dy * dy);
    }
}
