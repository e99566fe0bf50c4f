package easewright.draft;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * Draws a garment as one SVG document at full scale: user units are millimetres and the size of the page is stated
 * in millimetres. Outlines and the lines that go along with them have ids; everything else is decoration.
 */
final class SvgSheet {
    private static final String INK = "#1f2933";
    private static final String SOFT = "#5b6b7a";

    private final StringBuilder out = new StringBuilder(16_384);

    private SvgSheet() {}

    /**
     * The whole document.
     *
     * @param marks whole lines to set in after the title: the marks block
     */
    static String of(Garment garment, String marks) {
        SvgSheet sheet = new SvgSheet();
        sheet.document(garment, marks);
        return sheet.out.toString();
    }

    private void document(Garment garment, String marks) {
        Box room = room(garment);
        String width = number(Math.ceil(room.maxX() + Layout.MARGIN));
        String height = number(Math.ceil(room.maxY() + Layout.MARGIN));
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\">",
                width, height, width, height);
        line("  <title>%s</title>", escaped(garment.title()));
        out.append(marks);
        line("  <rect width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>", width, height);
        line("  <g font-family=\"Helvetica, Arial, 'Liberation Sans', sans-serif\" fill=\"%s\">", INK);
        text(Layout.MARGIN, 44, 18, "font-weight=\"600\"", garment.title());
        double y = 58;
        for (String fact : garment.facts()) {
            text(Layout.MARGIN, y, 8, "fill=\"" + SOFT + "\"", fact);
            y += 11;
        }
        line("  </g>");
        for (PieceDraft.Face face : garment.faces()) {
            piece(face);
        }
        testSquare(room.maxX());
        line("</svg>");
    }

    private static Box room(Garment garment) {
        Box room = new Box(0, 0, 420, Layout.HEAD);
        for (PieceDraft.Face face : garment.faces()) {
            room = room.union(face.piece().outline().box());
            for (Rider rider : face.piece().riders()) {
                for (Segment segment : rider.segments()) {
                    room = room.union(segment.box());
                }
            }
        }
        return room;
    }

    /** A 5 cm square proves the scale of a print (docs/sources.md 6); four lines, lest it be taken for a piece. */
    private void testSquare(double right) {
        double x = right - 50;
        line("  <g fill=\"none\" stroke=\"%s\" stroke-width=\"0.4\">", SOFT);
        line("    <path d=\"M%1$s,12 H%2$s M%2$s,12 V62 M%2$s,62 H%1$s M%1$s,62 V12\"/>", number(x), number(x + 50));
        line("  </g>");
        line("  <g font-family=\"Helvetica, Arial, 'Liberation Sans', sans-serif\" fill=\"%s\">", SOFT);
        text(x + 25, 39, 6, "text-anchor=\"middle\"", "5 cm × 5 cm");
        line("  </g>");
    }

    private void piece(PieceDraft.Face face) {
        Piece piece = face.piece();
        boolean cut = piece.drawn() == LineKind.CUTTING;
        line("  <g fill=\"none\" stroke=\"%s\" stroke-linecap=\"round\" stroke-linejoin=\"round\">", INK);
        for (Rider rider : piece.riders()) {
            boolean closed = rider.kind() == Rider.Kind.PARALLEL;
            line("    <path id=\"%s\" %s d=\"%s\"/>", rider.id(), style(rider), path(rider.segments(), closed));
        }
        line(
                "    <path id=\"%s\" stroke-width=\"%s\" d=\"%s\"/>",
                piece.id(), cut ? "0.7" : "0.4", path(piece.outline().segments(), true));
        decoration(piece);
        line("  </g>");
        names(face);
    }

    private static String style(Rider rider) {
        String id = rider.id();
        if (id.contains(Ticks.LEVEL)) {
            return "stroke=\"" + SOFT + "\" stroke-width=\"0.4\" stroke-dasharray=\"0.1 1.8\"";
        }
        if (id.contains(Ticks.NOTCH)) {
            return "stroke-width=\"0.6\"";
        }
        if (id.endsWith("-cutting")) {
            return "stroke-width=\"0.7\"";
        }
        String thin = "stroke-width=\"0.35\"";
        if (id.endsWith("-line")) {
            return thin + " stroke-dasharray=\"12 3 2 3\"";
        }
        return rider.kind() == Rider.Kind.PARALLEL ? thin + " stroke-dasharray=\"5 2.5\"" : thin;
    }

    private void decoration(Piece piece) {
        for (Edge edge : piece.edges()) {
            if (edge.role() == EdgeRole.FOLD) {
                foldSign(piece, edge);
            }
        }
        piece.grain().ifPresent(this::grain);
    }

    /** A line along the fold, bent to it at both ends with arrows. */
    private void foldSign(Piece piece, Edge edge) {
        Point along = edge.to().minus(edge.from());
        Point inwards = piece.outline()
                        .contains(edge.from()
                                .towards(edge.to(), 0.5)
                                .plus(along.unit().quarterTurned()))
                ? along.unit().quarterTurned()
                : along.unit().quarterTurned().times(-1);
        line(
                "    <path stroke-width=\"1\" stroke-dasharray=\"9 4\" stroke-linecap=\"butt\" d=\"M%s L%s\"/>",
                place(edge.from()), place(edge.to()));
        Point a = edge.from().towards(edge.to(), 0.22);
        Point b = edge.from().towards(edge.to(), 0.78);
        Point a2 = a.plus(inwards.times(12));
        Point b2 = b.plus(inwards.times(12));
        line(
                "    <path stroke-width=\"0.35\" d=\"M%s L%s L%s L%s\"/>",
                place(a.plus(inwards.times(1.5))), place(a2), place(b2), place(b.plus(inwards.times(1.5))));
        arrow(a.plus(inwards), inwards.times(-1));
        arrow(b.plus(inwards), inwards.times(-1));
    }

    private void grain(Grain grain) {
        line("    <path stroke-width=\"0.35\" d=\"M%s L%s\"/>", place(grain.from()), place(grain.to()));
        arrow(grain.from(), grain.direction().times(-1));
        arrow(grain.to(), grain.direction());
    }

    private void arrow(Point tip, Point direction) {
        Point back = direction.times(-5);
        Point wing = direction.quarterTurned().times(1.6);
        line(
                "    <path fill=\"%s\" stroke=\"none\" d=\"M%s L%s L%s Z\"/>",
                INK,
                place(tip),
                place(tip.plus(back).plus(wing)),
                place(tip.plus(back).minus(wing)));
    }

    private void names(PieceDraft.Face face) {
        Piece piece = face.piece();
        line("  <g font-family=\"Helvetica, Arial, 'Liberation Sans', sans-serif\" fill=\"%s\">", INK);
        Point at = face.label();
        text(at.x(), at.y(), 14, "font-weight=\"600\" text-anchor=\"middle\"", piece.name());
        text(at.x(), at.y() + 11, 8, "text-anchor=\"middle\" fill=\"" + SOFT + "\"", cutText(piece));
        for (LevelMark level : piece.levels()) {
            LevelLine.of(piece, level)
                    .ifPresent(l -> text(
                            l.label().x(),
                            l.label().y() - 2.6,
                            7,
                            "text-anchor=\"" + l.anchor() + "\" fill=\"" + SOFT + "\"",
                            level.level()));
        }
        line("  </g>");
    }

    private static String cutText(Piece piece) {
        return "cut " + piece.times() + (piece.onFold() ? " on the fold" : piece.times() == 2 ? " (a pair)" : "");
    }

    private void text(double x, double y, double size, String attributes, String words) {
        line(
                "    <text x=\"%s\" y=\"%s\" font-size=\"%s\" %s>%s</text>",
                number(x), number(y), number(size), attributes, escaped(words));
    }

    private static String path(List<Segment> segments, boolean closed) {
        StringBuilder d = new StringBuilder();
        Point pen = null;
        int last = segments.size() - 1;
        for (int i = 0; i <= last; i++) {
            Segment segment = segments.get(i);
            if (!segment.start().equals(pen)) {
                d.append(pen == null ? "" : " ").append('M').append(place(segment.start()));
            }
            boolean closing = closed && i == last;
            if (segment instanceof Cubic c) {
                d.append(" C").append(place(c.control1()));
                d.append(' ').append(place(c.control2()));
                d.append(' ').append(place(c.end()));
            } else if (!closing) {
                d.append(" L").append(place(segment.end()));
            }
            pen = segment.end();
        }
        return closed ? d.append(" Z").toString() : d.toString();
    }

    private static String place(Point p) {
        return number(p.x()) + "," + number(p.y());
    }

    private static String number(double v) {
        BigDecimal exact =
                BigDecimal.valueOf(v).setScale(4, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private void line(String format, Object... values) {
        out.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values))
                .append('\n');
    }
}
