package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** Reads and writes strokes: a word, numbers, and at last the piece, which may hold blanks. */
final class StrokeText {
    private final String whole;
    private final String[] words;
    private int at;

    StrokeText(String whole) {
        this.whole = whole;
        this.words = whole.strip().split("\\s+");
    }

    String word() throws Refusal {
        if (at >= words.length) {
            throw unreadable();
        }
        return words[at++];
    }

    double number() throws Refusal {
        try {
            double value = Double.parseDouble(word());
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            throw unreadable();
        }
        throw unreadable();
    }

    int count() throws Refusal {
        double value = number();
        if (value != Math.rint(value) || value < 0 || value > 100_000) {
            throw unreadable();
        }
        return (int) value;
    }

    Point point() throws Refusal {
        double x = number();
        return new Point(x, number());
    }

    List<Segment> segments() throws Refusal {
        int count = count();
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String kind = word();
            Point start = point();
            if (kind.equals("L")) {
                segments.add(new Line(start, point()));
            } else if (kind.equals("C")) {
                Point control1 = point();
                Point control2 = point();
                segments.add(new Cubic(start, control1, control2, point()));
            } else {
                throw unreadable();
            }
        }
        return segments;
    }

    /** All that is left, as it is written. */
    String rest() throws Refusal {
        int skipped = 0;
        String left = whole.strip();
        while (skipped < at) {
            int blank = 0;
            while (blank < left.length() && !Character.isWhitespace(left.charAt(blank))) {
                blank++;
            }
            left = left.substring(blank).strip();
            skipped++;
        }
        if (left.isEmpty()) {
            throw unreadable();
        }
        return left;
    }

    Refusal unreadable() {
        return Refusal.of("note-setting-unreadable").with("setting", "stroke").with("text", whole);
    }

    static String of(Point p) {
        return Settings.plain(p.x()) + " " + Settings.plain(p.y());
    }

    static String of(List<Segment> segments) {
        StringBuilder text = new StringBuilder().append(segments.size());
        for (Segment segment : segments) {
            text.append(segment instanceof Cubic ? " C " : " L ").append(of(segment.start()));
            if (segment instanceof Cubic c) {
                text.append(' ').append(of(c.control1())).append(' ').append(of(c.control2()));
            }
            text.append(' ').append(of(segment.end()));
        }
        return text.toString();
    }
}
