package easewright.evidence;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Lines;
import org.apache.commons.geometry.euclidean.twod.RegionBSPTree2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.geometry.euclidean.twod.path.LinePath;
import org.apache.commons.numbers.core.Precision;

/**
 * Apache Commons Geometry 1.0 as a witness. It knows straight lines only: curves are given to it as chords, evaluated
 * by repeated linear interpolation (de Casteljau), twice as many the second time, and the two answers extrapolated.
 */
final class Commons {
    private static final Precision.DoubleEquivalence SAME = Precision.doubleEquivalenceOfEpsilon(1e-9);
    /** Chords of a whole outline: each one more makes its tree one deeper. */
    private static final int CHORDS = 160;

    private static final int MANY_CHORDS = 4096;

    private Commons() {}

    static double area(Outline outline) {
        int chords = CHORDS / outline.segments().size();
        double coarse = region(outline, chords).getSize();
        double fine = region(outline, 2 * chords).getSize();
        return fine + (fine - coarse) / 3;
    }

    /** Where the level through y meets the outline, by rising x. Chords fall short of the curve: no extrapolation. */
    static double[] meetings(Outline outline, double y) {
        return LinePath.fromVertexLoop(vertices(outline.segments(), MANY_CHORDS), SAME)
                .linecast(Lines.fromPoints(Vector2D.of(-1e4, y), Vector2D.of(1e4, y), SAME))
                .stream()
                .mapToDouble(p -> p.getPoint().getX())
                .sorted()
                .toArray();
    }

    private static RegionBSPTree2D region(Outline outline, int chords) {
        Outline forwards = outline.signedArea() > 0 ? outline : outline.reversed();
        return LinePath.fromVertexLoop(vertices(forwards.segments(), chords), SAME)
                .toTree();
    }

    private static List<Vector2D> vertices(List<Segment> run, int chords) {
        List<Vector2D> vertices = new ArrayList<>();
        for (Segment s : run) {
            int steps = s instanceof Cubic ? chords : 1;
            for (int i = 0; i < steps; i++) {
                vertices.add(at(s, i / (double) steps));
            }
        }
        return vertices;
    }

    private static Vector2D at(Segment s, double t) {
        Vector2D start = of(s.start());
        Vector2D end = of(s.end());
        if (!(s instanceof Cubic c)) {
            return start.lerp(end, t);
        }
        Vector2D one = of(c.control1());
        Vector2D two = of(c.control2());
        Vector2D middle = one.lerp(two, t);
        Vector2D left = start.lerp(one, t).lerp(middle, t);
        Vector2D right = middle.lerp(two.lerp(end, t), t);
        return left.lerp(right, t);
    }

    private static Vector2D of(Point p) {
        return Vector2D.of(p.x(), p.y());
    }
}
