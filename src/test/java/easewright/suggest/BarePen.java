package easewright.suggest;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.suggest.BareSheet.Hand;
import java.util.List;
import java.util.Locale;

/** Writes words and lines into a drawing, in one of the hands. */
final class BarePen {
    private final Hand hand;

    private final StringBuilder out = new StringBuilder();

    BarePen(Hand hand) {
        this.hand = hand;
    }

    void add(String markup) {
        out.append(markup);
    }

    /** All that was written. */
    String written() {
        return out.toString();
    }

    void text(Point at, double size, String words) {
        out.append(String.format(
                Locale.ROOT,
                "<text x='%.2f' y='%.2f' font-size='%.1f' text-anchor='middle'>%s</text>%n",
                at.x(),
                at.y() + size / 3,
                size,
                words));
    }

    void line(Point a, Point b) {
        out.append(String.format(
                Locale.ROOT, "<line x1='%.4f' y1='%.4f' x2='%.4f' y2='%.4f'/>%n", a.x(), a.y(), b.x(), b.y()));
    }

    void path(List<Segment> segments, boolean close, String style) {
        StringBuilder d = new StringBuilder();
        Point start = segments.get(0).start();
        d.append(String.format(Locale.ROOT, "M%s %s", number(start.x()), number(start.y())));
        for (Segment segment : segments) {
            if (segment instanceof Cubic c && hand != Hand.FLATTENED) {
                d.append(String.format(
                        Locale.ROOT,
                        "C%s %s %s %s %s %s",
                        number(c.control1().x()),
                        number(c.control1().y()),
                        number(c.control2().x()),
                        number(c.control2().y()),
                        number(c.end().x()),
                        number(c.end().y())));
            } else {
                int steps = segment instanceof Cubic ? (int) Math.ceil(segment.length() / 3) : 1;
                for (int i = 1; i <= steps; i++) {
                    Point p = segment.at((double) i / steps);
                    d.append(String.format(Locale.ROOT, "L%s %s", number(p.x()), number(p.y())));
                }
            }
        }
        out.append("<path")
                .append(style)
                .append(" d='")
                .append(d)
                .append(close ? "Z" : "")
                .append("'/>\n");
    }

    private String number(double mm) {
        return String.format(Locale.ROOT, hand == Hand.ASKEW ? "%.1f" : "%.4f", mm);
    }
}
