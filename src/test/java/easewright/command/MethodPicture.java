package easewright.command;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.measure.Span;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A drawing of what a change did to the pieces it changed, with the figures measured on them. */
final class MethodPicture {
    private static final double MARGIN = 26;
    /** Letters are about this wide against their height. */
    private static final double LETTER = 0.56;

    /** Girths and seams that changed by less are not spoken of, mm. */
    private static final double WORTH_SAYING = 0.05;

    private final Words words = Words.english(LengthUnit.MM);
    private final Pattern before;
    private final Pattern after;
    private final List<String> slashes;

    MethodPicture(Pattern before, Pattern after, List<Point[]> slashes) {
        this.before = before;
        this.after = after;
        this.slashes = slashes.stream()
                .map(s -> "<path class=\"cut\" d=\"M" + place(s[0]) + "L" + place(s[1])
                        + "\"/><circle class=\"cut\" cx=\"" + number(s[1].x()) + "\" cy=\"" + number(s[1].y())
                        + "\" r=\"4\"/>")
                .toList();
    }

    String svg() {
        List<Piece> changed = after.pieces().stream()
                .filter(p -> !before.piece(p.id()).equals(Optional.of(p)))
                .toList();
        Box room = changed.get(0).outline().box();
        for (Piece piece : changed) {
            room = room.union(piece.outline().box()).union(was(piece).box());
        }
        room = room.grown(MARGIN);
        double text = Math.min(22, Math.max(11, room.width() / 40));
        List<String> lines = figures(changed, (int) (room.width() / (text * LETTER)) - 2);
        double height = room.height() + text * 1.5 * lines.size() + text;
        StringBuilder out = new StringBuilder();
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"")
                .append(String.join(
                        " ", number(room.minX()), number(room.minY()), number(room.width()), number(height)))
                .append("\" width=\"")
                .append(Math.round(Math.min(760, Math.max(420, room.width()))))
                .append("\">\n<style>")
                .append(".paper{fill:#fff}.cloth{fill:#f4efe4;stroke:#33302a;stroke-width:1.4}")
                .append(".was{fill:none;stroke:#8b877d;stroke-width:1.2;stroke-dasharray:6 4}")
                .append(".moved{fill:none;stroke:#b0431c;stroke-width:3}.dart{fill:none;stroke:#33302a;stroke-width:1}")
                .append(".level{stroke:#2f6f9f;stroke-width:1.2}.cut{fill:none;stroke:#6b3fa0;stroke-width:1.6;")
                .append("stroke-dasharray:9 3 2 3}.mark{fill:#33302a}")
                .append("text{font:" + number(text) + "px sans-serif;fill:#33302a}.name{fill:#2f6f9f}</style>\n");
        out.append("<rect class=\"paper\" x=\"" + number(room.minX()) + "\" y=\"" + number(room.minY()) + "\" width=\""
                + number(room.width()) + "\" height=\"" + number(height) + "\"/>\n");
        for (Piece piece : changed) {
            draw(out, piece);
        }
        slashes.forEach(s -> out.append(s).append('\n'));
        double y = room.maxY();
        for (String line : lines) {
            y += text * 1.5;
            out.append("<text x=\"" + number(room.minX() + 8) + "\" y=\"" + number(y - text / 2) + "\">" + line
                    + "</text>\n");
        }
        return out.append("</svg>\n").toString();
    }

    /** How a piece was drawn before; one made for the other side, as the mirror image of what was drawn. */
    private Outline was(Piece piece) {
        return before.piece(piece.id())
                .map(Piece::outline)
                .orElseGet(() -> piece.original().orElse(piece.outline()));
    }

    private void draw(StringBuilder out, Piece piece) {
        Outline was = was(piece);
        out.append("<path class=\"cloth\" d=\"" + path(piece.outline()) + "\"/>\n");
        out.append("<path class=\"was\" d=\"" + path(was) + "\"/>\n");
        StringBuilder moved = new StringBuilder();
        for (Segment s : piece.outline().segments()) {
            if (!was.segments().contains(s) && !liesOn(s, was)) {
                moved.append('M').append(place(s.start())).append(segment(s));
            }
        }
        if (moved.length() > 0) {
            out.append("<path class=\"moved\" d=\"" + moved + "\"/>\n");
        }
        piece.darts()
                .forEach(d -> out.append("<path class=\"dart\" d=\"M" + place(d.mouth1()) + "L" + place(d.point()) + "L"
                        + place(d.mouth2()) + "\"/>\n"));
        for (Notch notch : piece.notches()) {
            out.append("<circle class=\"mark\" cx=\"" + number(notch.at().x()) + "\" cy=\""
                    + number(notch.at().y()) + "\" r=\"2.5\"/>\n");
        }
        for (Level level : after.levels()) {
            boolean straight =
                    piece.level(level.name()).flatMap(m -> m.through()).isPresent();
            for (Span span : Measures.width(piece, level).map(LevelWidth::spans).orElse(List.of())) {
                if (straight) {
                    out.append("<path class=\"level\" d=\"M" + place(span.from()) + "L" + place(span.to()) + "\"/>\n");
                    Point at = span.from().x() < span.to().x() ? span.from() : span.to();
                    out.append("<text class=\"name\" x=\"" + number(at.x() + 12) + "\" y=\"" + number(at.y() - 4)
                            + "\">" + level.name() + "</text>\n");
                }
            }
        }
    }

    /** Cut at a fixed point a segment becomes two; what is left of it lies where it lay. */
    private static boolean liesOn(Segment s, Outline outline) {
        for (int i = 0; i <= 4; i++) {
            if (outline.nearest(s.at(i / 4.0)).distance() > 1e-4) {
                return false;
            }
        }
        return true;
    }

    private List<String> figures(List<Piece> changed, int letters) {
        List<String> lines = new ArrayList<>();
        for (String figure : figures(changed)) {
            StringBuilder line = new StringBuilder();
            for (String word : figure.split(" ")) {
                if (line.length() + word.length() > letters) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() == 0 ? "" : " ").append(word);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private List<String> figures(List<Piece> changed) {
        GarmentMeasures was = Measures.of(before);
        GarmentMeasures is = Measures.of(after);
        List<String> lines = new ArrayList<>();
        for (Level level : after.levels()) {
            double old = was.girth(level.name()).orElseThrow().finished();
            Girth girth = is.girth(level.name()).orElseThrow();
            double now = girth.finished();
            boolean same = Math.abs(now - old) < WORTH_SAYING;
            String sides = girth.sided() && !same
                    ? " (left " + words.length(girth.on(Side.LEFT)) + ", right " + words.length(girth.on(Side.RIGHT))
                            + ")"
                    : "";
            lines.add("Girth at " + level.name() + ": " + words.length(old)
                    + (same ? ", as before" : " → " + words.length(now) + sides));
        }
        for (Piece piece : changed) {
            List<String> edges = new ArrayList<>();
            for (Edge edge : piece.edges()) {
                double by = is.piece(piece.id())
                                .orElseThrow()
                                .edge(edge.name())
                                .orElseThrow()
                                .mm()
                        - was.piece(before.piece(piece.id())
                                        .or(() -> before.piece(piece.plainName()))
                                        .orElseThrow()
                                        .id())
                                .orElseThrow()
                                .edge(edge.name())
                                .orElseThrow()
                                .mm();
                if (Math.abs(by) >= WORTH_SAYING) {
                    edges.add(edge.name() + " " + words.signed(by));
                }
            }
            lines.add(piece.name() + ": "
                    + (edges.isEmpty() ? "every edge as long as before" : String.join(", ", edges)));
        }
        return lines;
    }

    private static String path(Outline outline) {
        StringBuilder path =
                new StringBuilder("M").append(place(outline.segments().get(0).start()));
        outline.segments().forEach(s -> path.append(segment(s)));
        return path.append('Z').toString();
    }

    private static String segment(Segment s) {
        return s instanceof Cubic c
                ? "C" + place(c.control1()) + " " + place(c.control2()) + " " + place(c.end())
                : "L" + place(s.end());
    }

    private static String place(Point p) {
        return number(p.x()) + "," + number(p.y());
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.equals("-0.0") ? "0.0" : text;
    }
}
