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

    private ArcLength() {}

    static double of(Cubic curve, double from, double to) {
        if (from == to) {
            return 0;
        }
        double scale = curve.start().distance(curve.control1())
                + curve.control1().distance(curve.control2())
                + curve.control2().distance(curve.end());
        // Gentle curves, which most are, need few places: each rule is far truer than its difference to the one before.
        double tolerance = 1e-13 * scale;
        double four = rule(curve, from, to, NODES_4, WEIGHTS_4);
        double eight = rule(curve, from, to, NODES_8, WEIGHTS_8);
        if (Math.abs(eight - four) <= tolerance) {
            return eight;
        }
        double sixteen = rule(curve, from, to, NODES_16, WEIGHTS_16);
        return Math.abs(sixteen - eight) <= tolerance ? sixteen : refine(curve, from, to, sixteen, tolerance, DEEPEST);
    }

    private static double refine(Cubic curve, double from, double to, double whole, double tolerance, int depth) {
        double middle = (from + to) / 2;
        double left = rule(curve, from, middle, NODES_16, WEIGHTS_16);
        double right = rule(curve, middle, to, NODES_16, WEIGHTS_16);
        if (Math.abs(left + right - whole) <= tolerance || depth == 0) {
            return left + right;
        }
        return refine(curve, from, middle, left, tolerance, depth - 1)
                + refine(curve, middle, to, right, tolerance, depth - 1);
    }

    private static double rule(Cubic curve, double from, double to, double[] nodes, double[] weights) {
        double half = (to - from) / 2;
        double centre = (from + to) / 2;
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double offset = half * nodes[i];
            sum += weights[i] * (speed(curve, centre - offset) + speed(curve, centre + offset));
        }
        return sum * half;
    }

    private static double speed(Cubic c, double t) {
        double s = 1 - t;
        double w0 = 3 * s * s;
        double w1 = 6 * s * t;
        double w2 = 3 * t * t;
        double dx = w0 * (c.control1().x() - c.start().x())
                + w1 * (c.control2().x() - c.control1().x())
                + w2 * (c.end().x() - c.control2().x());
        double dy = w0 * (c.control1().y() - c.start().y())
                + w1 * (c.control2().y() - c.control1().y())
                + w2 * (c.end().y() - c.control2().y());
        return Math.sqrt(dx * dx + dy * dy);
    }
}
