package easewright.print.report;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.print.ink.Tone;
import easewright.print.report.Part.Figure;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A picture as SVG, to be set into a page. */
final class SvgPicture {
    /** Pixels of a browser to the millimetre of paper: a little more than life size reads well on a screen. */
    private static final double PIXELS_PER_MM = 4.2;

    private SvgPicture() {}

    static String of(Figure figure) {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<svg role=\"img\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.2f %.2f\" aria-label=\"%s\">",
                figure.width() * PIXELS_PER_MM,
                figure.height() * PIXELS_PER_MM,
                figure.width(),
                figure.height(),
                Html.escaped(figure.words())));
        for (Mark mark : figure.picture().marks()) {
            if (mark instanceof Mark.Stroke stroke) {
                out.append("<path fill=\"none\"").append(pen(stroke.pen())).append(" d=\"");
                out.append(path(stroke.run())).append(stroke.closed() ? "Z\"/>" : "\"/>");
            } else if (mark instanceof Mark.Fill fill) {
                out.append("<path fill=\"").append(colour(fill.tone())).append("\" d=\"");
                out.append(path(fill.loop())).append("Z\"/>");
            } else if (mark instanceof Mark.Writing writing) {
                out.append(text(writing));
            }
        }
        return out.append("</svg>").toString();
    }

    private static String pen(Pen pen) {
        String dashes = pen.dashes().stream().map(SvgPicture::number).collect(Collectors.joining(" "));
        return " stroke=\"" + colour(pen.tone()) + "\" stroke-width=\"" + number(pen.width())
                + "\" stroke-linejoin=\"round\"" + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
    }

    private static String text(Mark.Writing writing) {
        String anchor = switch (writing.anchor()) {
            case START -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case END -> " text-anchor=\"end\"";
        };
        String turn = writing.turn() == 0
                ? ""
                : " transform=\"rotate(" + number(Math.toDegrees(writing.turn())) + " " + place(writing.at()) + ")\"";
        return "<text x=\"" + number(writing.at().x()) + "\" y=\""
                + number(writing.at().y()) + "\" font-size=\"" + number(writing.size()) + "\" fill=\""
                + colour(writing.tone()) + "\"" + (writing.bold() ? " font-weight=\"700\"" : "") + anchor + turn + ">"
                + Html.escaped(writing.text()) + "</text>";
    }

    private static String path(List<Segment> run) {
        StringBuilder d = new StringBuilder();
        Point pen = null;
        for (Segment segment : run) {
            if (!segment.start().equals(pen)) {
                d.append('M').append(place(segment.start()));
            }
            if (segment instanceof Cubic c) {
                d.append('C')
                        .append(place(c.control1()))
                        .append(' ')
                        .append(place(c.control2()))
                        .append(' ');
            } else {
                d.append('L');
            }
            d.append(place(segment.end()));
            pen = segment.end();
        }
        return d.toString();
    }

    private static String place(Point p) {
        return number(p.x()) + " " + number(p.y());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
    }

    private static String colour(Tone tone) {
        return String.format(Locale.ROOT, "#%06x", tone.rgb());
    }
}
