package easewright.svg;

import easewright.geom.Affine;
import java.util.Locale;
import java.util.Optional;

/** The viewBox of an svg or symbol element: the part of the user plane that fills the viewport. */
record ViewBox(double x, double y, double width, double height) {
    /** Beyond this, and below one part of it, what is drawn could not be told in numbers. */
    private static final double WIDEST = 1e30;

    /** Reads the attribute; empty unless it is four numbers with a width and height above 0 and within reason. */
    static Optional<ViewBox> parse(String text) {
        NumberScanner in = new NumberScanner(text);
        double[] v = new double[4];
        in.skipSpace();
        for (int i = 0; i < 4; i++) {
            v[i] = in.number();
            if (Double.isNaN(v[i])) {
                return Optional.empty();
            }
            in.skipCommaSpace();
        }
        boolean usable = in.atEnd()
                && Math.min(v[2], v[3]) > 1 / WIDEST
                && Math.max(Math.max(v[2], v[3]), Math.max(Math.abs(v[0]), Math.abs(v[1]))) < WIDEST;
        return usable ? Optional.of(new ViewBox(v[0], v[1], v[2], v[3])) : Optional.empty();
    }

    /**
     * The map from this box into a viewport of the given size, as preserveAspectRatio has it (null: xMidYMid meet).
     */
    Affine into(double viewportWidth, double viewportHeight, String preserveAspectRatio) {
        String how =
                preserveAspectRatio == null ? "" : preserveAspectRatio.strip().toLowerCase(Locale.ROOT);
        if (how.startsWith("defer")) {
            how = how.substring("defer".length()).strip();
        }
        double sx = viewportWidth / width;
        double sy = viewportHeight / height;
        if (how.startsWith("none")) {
            return new Affine(sx, 0, 0, sy, -x * sx, -y * sy);
        }
        double s = how.endsWith("slice") ? Math.max(sx, sy) : Math.min(sx, sy);
        double restX = viewportWidth - width * s;
        double restY = viewportHeight - height * s;
        double shareX = how.contains("xmin") ? 0 : how.contains("xmax") ? 1 : 0.5;
        double shareY = how.contains("ymin") ? 0 : how.contains("ymax") ? 1 : 0.5;
        return new Affine(s, 0, 0, s, restX * shareX - x * s, restY * shareY - y * s);
    }
}
