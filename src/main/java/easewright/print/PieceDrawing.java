package easewright.print;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A small drawing of a changed piece over the piece as it was, as SVG to be set into a page. */
final class PieceDrawing {
    private static final double MARGIN_MM = 8;

    private PieceDrawing() {}

    /** Both pieces in millimetres; what is the same is one line, what moved shows beside its dashed old self. */
    static String of(Piece before, Piece after, String title) {
        Box room = before.outline().box().union(after.outline().box()).grown(MARGIN_MM);
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<svg role=\"img\" viewBox=\"%.2f %.2f %.2f %.2f\" style=\"width:%.0fpx;max-width:100%%\">",
                room.minX(),
                room.minY(),
                room.width(),
                room.height(),
                Math.min(420, Math.max(160, room.width()))));
        out.append("<title>").append(Html.escaped(title)).append("</title>");
        out.append("<path class=\"cloth\" d=\"").append(path(after.outline())).append("\"/>");
        out.append("<path class=\"ghost\" d=\"").append(path(before.outline())).append("\"/>");
        String line = after.drawn() == LineKind.CUTTING ? "cutting" : "stitching";
        out.append("<path class=\"").append(line).append("\" d=\"");
        out.append(path(after.outline())).append("\"/>");
        for (Dart dart : after.darts()) {
            out.append("<path class=\"dart\" d=\"")
                    .append(places(dart.corners()))
                    .append("\"/>");
        }
        after.grain()
                .ifPresent(g -> out.append("<path class=\"grain\" d=\"")
                        .append(places(List.of(g.from(), g.to())))
                        .append("\"/>"));
        for (Segment moved : moved(before.outline(), after.outline())) {
            out.append("<path class=\"moved\" d=\"M")
                    .append(place(moved.start()))
                    .append(segment(moved))
                    .append("\"/>");
        }
        return out.append("</svg>").toString();
    }

    private static List<Segment> moved(Outline before, Outline after) {
        return after.segments().stream()
                .filter(s -> !before.segments().contains(s))
                .toList();
    }

    private static String path(Outline outline) {
        return "M" + place(outline.segments().get(0).start())
                + outline.segments().stream().map(PieceDrawing::segment).collect(Collectors.joining()) + "Z";
    }

    private static String segment(Segment segment) {
        if (segment instanceof Cubic c) {
            return "C" + place(c.control1()) + " " + place(c.control2()) + " " + place(c.end());
        }
        return "L" + place(segment.end());
    }

    private static String places(List<Point> points) {
        return points.stream().map(PieceDrawing::place).collect(Collectors.joining("L", "M", ""));
    }

    private static String place(Point p) {
        return String.format(Locale.ROOT, "%.3f,%.3f", p.x(), p.y());
    }
}
