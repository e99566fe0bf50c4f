package easewright.editor.model;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Draws the small pictures of the samples. Run it when a draft has changed. */
final class SamplePictures {
    static final Path FILE = Path.of("src/main/resources/easewright/editor/sample-pictures.properties");

    private SamplePictures() {}

    public static void main(String[] args) throws Exception {
        Files.writeString(FILE, all());
    }

    static String all() throws Exception {
        StringBuilder out = new StringBuilder("# Drawn by SamplePictures among the tests.\n");
        for (Sample sample : Sample.all()) {
            out.append(sample.id())
                    .append('=')
                    .append(picture(sample.read().pattern()))
                    .append('\n');
        }
        return out.toString();
    }

    private static String picture(Pattern pattern) {
        Box box = pattern.pieces().stream()
                .map(p -> p.outline().box())
                .reduce(Box::union)
                .orElseThrow();
        double scale = Math.min(Sample.WIDE / box.width(), Sample.HIGH / box.height());
        Affine map = Affine.scaling(scale, scale).after(Affine.translation(new Point(-box.minX(), -box.minY())));
        StringBuilder path = new StringBuilder();
        for (Piece piece : pattern.pieces()) {
            List<Segment> run = piece.outline().transformed(map).segments();
            path.append('M').append(pair(run.get(0).start()));
            for (Segment s : run) {
                if (s instanceof Cubic c) {
                    path.append('C')
                            .append(pair(c.control1()))
                            .append(' ')
                            .append(pair(c.control2()))
                            .append(' ')
                            .append(pair(c.end()));
                } else {
                    path.append('L').append(pair(s.end()));
                }
            }
            path.append('Z');
        }
        return path.toString();
    }

    private static String pair(Point p) {
        return String.format(Locale.ROOT, "%.1f,%.1f", p.x(), p.y());
    }
}
