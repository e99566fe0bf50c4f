package easewright.print.pdf;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.print.ink.Leaf;
import easewright.print.ink.Leaf.Layer;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.print.ink.Tone;
import java.io.IOException;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** Paints one layer onto a PDF page. Coordinates are turned into points only here, as they are written. */
final class Brush {
    private static final double POINTS_PER_MM = 72 / 25.4;

    /** Share of their width to which foreign letters are narrowed at most. */
    private static final double NARROWEST = 0.75;

    private final PDPageContentStream out;
    private final Letters letters;
    private final Leaf leaf;
    private final Layer layer;

    Brush(PDPageContentStream out, Letters letters, Leaf leaf, Layer layer) {
        this.out = out;
        this.letters = letters;
        this.leaf = leaf;
        this.layer = layer;
    }

    static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    void paint() throws IOException {
        out.setLineCapStyle(0);
        out.setLineJoinStyle(1);
        if (layer.clip().isPresent()) {
            Box seen = layer.clip().get();
            out.addRect(points(seen.minX()), y(seen.maxY()), points(seen.width()), points(seen.height()));
            out.clip();
        }
        for (Mark mark : layer.picture().marks()) {
            Mark placed = layer.place().equals(Affine.IDENTITY) ? mark : mark.transformed(layer.place());
            if (placed instanceof Mark.Stroke stroke) {
                stroke(stroke);
            } else if (placed instanceof Mark.Fill fill) {
                fill(fill);
            } else if (placed instanceof Mark.Writing writing) {
                write(writing);
            }
        }
    }

    private void stroke(Mark.Stroke stroke) throws IOException {
        Pen pen = stroke.pen();
        float[] rgb = rgb(pen.tone());
        out.setStrokingColor(rgb[0], rgb[1], rgb[2]);
        out.setLineWidth(points(pen.width() * leaf.bold()));
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = points(pen.dashes().get(i) * leaf.bold());
        }
        out.setLineDashPattern(dashes, 0);
        path(stroke.run());
        if (stroke.closed()) {
            out.closeAndStroke();
        } else {
            out.stroke();
        }
    }

    private void fill(Mark.Fill fill) throws IOException {
        float[] rgb = rgb(fill.tone());
        out.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
        path(fill.loop());
        out.fillEvenOdd();
    }

    private void path(List<Segment> run) throws IOException {
        Point pen = null;
        for (Segment segment : run) {
            if (!segment.start().equals(pen)) {
                out.moveTo(x(segment.start()), y(segment.start()));
            }
            Point end = segment.end();
            if (segment instanceof Cubic c) {
                out.curveTo(x(c.control1()), y(c.control1()), x(c.control2()), y(c.control2()), x(end), y(end));
            } else {
                out.lineTo(x(end), y(end));
            }
            pen = end;
        }
    }

    private void write(Mark.Writing writing) throws IOException {
        String text = clean(writing.text());
        Lettering face = Lettering.of(writing.bold());
        float[] rgb = rgb(writing.tone());
        out.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
        Optional<Drawn> drawn = face.canWrite(text) ? Optional.empty() : Drawn.of(text, writing.bold());
        String typed = drawn.isPresent() || face.canWrite(text) ? text : withoutMissing(text, face);
        double room = face.width(typed, writing.size());
        // Room was reckoned in the narrow typeface; the machine's fonts are mostly wider.
        double narrow = drawn.map(d -> Math.max(NARROWEST, Math.min(1, room / (d.width() * writing.size()))))
                .orElse(1.0);
        double width = drawn.map(d -> d.width() * writing.size() * narrow).orElse(room);
        double back = switch (writing.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        Point along = new Point(Math.cos(writing.turn()), Math.sin(writing.turn()));
        Point start = writing.at().minus(along.times(back));
        if (drawn.isPresent()) {
            Affine place = new Affine(
                    along.x() * writing.size() * narrow,
                    along.y() * writing.size() * narrow,
                    -along.y() * writing.size(),
                    along.x() * writing.size(),
                    start.x(),
                    start.y());
            path(drawn.get().outlines().stream().map(s -> s.transformed(place)).toList());
            out.fill();
            return;
        }
        out.beginText();
        out.setFont(letters.font(writing.bold()), points(writing.size()));
        out.setTextMatrix(new Matrix(
                (float) along.x(), (float) -along.y(), (float) along.y(), (float) along.x(), x(start), y(start)));
        out.showText(typed);
        out.endText();
    }

    /** Letters in their composed form; what is no letter at all is a space. */
    private static String clean(String text) {
        StringBuilder clean = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> {
            boolean half = c >= 0xd800 && c <= 0xdfff;
            clean.appendCodePoint(Character.isISOControl(c) || half ? ' ' : c);
        });
        return clean.toString();
    }

    /** Last resort where the machine cannot draw foreign letters: each is shown as a sign that one is missing. */
    private static String withoutMissing(String text, Lettering face) {
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(c -> kept.appendCodePoint(face.canWrite(Character.toString(c)) ? c : 0xfffd));
        return kept.toString();
    }

    private float x(Point p) {
        return points(p.x());
    }

    private float y(Point p) {
        return y(p.y());
    }

    private float y(double mm) {
        return points(leaf.height() - mm);
    }

    private static float[] rgb(Tone tone) {
        int rgb = tone.rgb();
        return new float[] {(rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f};
    }
}
