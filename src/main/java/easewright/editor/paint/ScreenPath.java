package easewright.editor.paint;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.Arrays;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;

/**
 * Runs of joined segments as a canvas draws them, in pixels. An outline is drawn up to five times in one picture, and one
 * that lies still in every picture: where its corners come to lie on the screen is worked out once.
 */
final class ScreenPath {
    /** Ends closer to the last laid one than this many pixels are left out: nobody could see them. */
    private static final double TOO_NEAR = 0.4;

    /** A curve this near to the straight line between its ends is drawn as that line, which takes a third: pixels. */
    private static final double FLAT = 0.02;

    private static final byte MOVE = 0;
    private static final byte LINE = 1;
    private static final byte CURVE = 2;

    private byte[] steps = new byte[16];
    private double[] pixels = new double[64];
    private int stepCount;
    private int pixelCount;

    private ScreenPath() {}

    static ScreenPath of(List<Segment> segments, Viewport view) {
        ScreenPath path = new ScreenPath();
        double lastX = Double.NaN;
        double lastY = Double.NaN;
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            Point start = segment.start();
            if (i == 0 || !isAt(segments.get(i - 1).end(), start)) {
                lastX = view.screenX(start.x());
                lastY = view.screenY(start.y());
                path.step(MOVE).pixel(lastX, lastY);
            }
            double endX = view.screenX(segment.end().x());
            double endY = view.screenY(segment.end().y());
            boolean last = i == segments.size() - 1;
            if (!last
                    && Math.abs(endX - lastX) < TOO_NEAR
                    && Math.abs(endY - lastY) < TOO_NEAR
                    && isTiny(segment, view)) {
                continue;
            }
            if (segment instanceof Cubic cubic && !isFlat(cubic, view)) {
                path.step(CURVE)
                        .pixel(
                                view.screenX(cubic.control1().x()),
                                view.screenY(cubic.control1().y()))
                        .pixel(
                                view.screenX(cubic.control2().x()),
                                view.screenY(cubic.control2().y()));
            } else {
                path.step(LINE);
            }
            path.pixel(endX, endY);
            lastX = endX;
            lastY = endY;
        }
        return path;
    }

    /** Whether two places are the same: asked of every corner in every picture. */
    static boolean isAt(Point one, Point other) {
        return one == other || one.x() == other.x() && one.y() == other.y();
    }

    private static boolean isTiny(Segment segment, Viewport view) {
        if (segment instanceof Cubic cubic) {
            double reach = Math.max(
                    cubic.control1().distance(cubic.start()), cubic.control2().distance(cubic.start()));
            return reach * view.scale() < TOO_NEAR;
        }
        return true;
    }

    /** Whether the handles of a curve lie between its ends and beside no more than a hair off the line through them. */
    private static boolean isFlat(Cubic cubic, Viewport view) {
        Point chord = cubic.end().minus(cubic.start());
        double length = chord.norm();
        return length > 0
                && isOn(chord, length, cubic.control1().minus(cubic.start()), view)
                && isOn(chord, length, cubic.control2().minus(cubic.start()), view);
    }

    private static boolean isOn(Point chord, double length, Point handle, Viewport view) {
        double along = chord.dot(handle);
        return along >= 0 && along <= length * length && Math.abs(chord.cross(handle)) * view.scale() <= FLAT * length;
    }

    private ScreenPath step(byte kind) {
        if (stepCount == steps.length) {
            steps = Arrays.copyOf(steps, 2 * stepCount);
        }
        steps[stepCount++] = kind;
        return this;
    }

    private ScreenPath pixel(double x, double y) {
        if (pixelCount == pixels.length) {
            pixels = Arrays.copyOf(pixels, 2 * pixelCount);
        }
        pixels[pixelCount++] = x;
        pixels[pixelCount++] = y;
        return this;
    }

    /** Adds it to the path of a canvas, so far to the right and down. */
    void lay(GraphicsContext gc, double right, double down, boolean close) {
        int at = 0;
        for (int i = 0; i < stepCount; i++) {
            double x = pixels[at] + right;
            double y = pixels[at + 1] + down;
            at += 2;
            switch (steps[i]) {
                case MOVE -> gc.moveTo(x, y);
                case LINE -> gc.lineTo(x, y);
                default -> {
                    gc.bezierCurveTo(
                            x,
                            y,
                            pixels[at] + right,
                            pixels[at + 1] + down,
                            pixels[at + 2] + right,
                            pixels[at + 3] + down);
                    at += 4;
                }
            }
        }
        if (close) {
            gc.closePath();
        }
    }
}
