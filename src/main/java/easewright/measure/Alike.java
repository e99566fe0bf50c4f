package easewright.measure;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.Arrays;
import java.util.List;

/** Whether a piece is alike left and right, as one that covers both sides of the body mostly is. */
public final class Alike {
    private static final int SAMPLES = 72;

    /** Mirrored places lie this near to the outline, mm, or as a part of the piece's width. */
    private static final double NEAR = 4;

    private static final double NEAR_OF_WIDTH = 0.02;

    private Alike() {}

    /** Whether the outline is its own mirror image about an axis along the grain, or upright on the page. */
    public static boolean leftAndRight(Piece piece) {
        return isMirrored(piece.outline(), piece.grainDirection()) || isMirrored(piece.outline(), new Point(0, 1));
    }

    private static boolean isMirrored(Outline outline, Point axis) {
        Point across = axis.quarterTurned();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<Segment> segments = outline.segments();
        double[] lengths = segments.stream().mapToDouble(Segment::length).toArray();
        double step = Arrays.stream(lengths).sum() / SAMPLES;
        for (int k = 0; k < lengths.length; k++) {
            Segment segment = segments.get(k);
            int steps = !(segment instanceof Cubic) ? 1 : lengths[k] > step ? 8 : 2;
            for (int i = 0; i <= steps; i++) {
                double u = segment.at((double) i / steps).dot(across);
                least = Math.min(least, u);
                most = Math.max(most, u);
            }
        }
        double middle = (least + most) / 2;
        double near = Math.max(NEAR, NEAR_OF_WIDTH * (most - least));
        double next = step / 2;
        for (int k = 0; k < lengths.length; k++) {
            Segment segment = segments.get(k);
            double length = lengths[k];
            while (next < length) {
                // On a short one any place will do.
                Point p = segment.at(length > step ? segment.parameterAtLength(next) : next / length);
                Point mirrored = p.plus(across.times(2 * (middle - p.dot(across))));
                if (!outline.comesWithin(mirrored, near)) {
                    return false;
                }
                next += step;
            }
            next -= length;
        }
        return true;
    }
}
