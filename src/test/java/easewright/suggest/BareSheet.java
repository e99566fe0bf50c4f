package easewright.suggest;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws a known pattern without any marks, in several hands: with groups and transforms, flattened to short lines, with
 * other signs and other words. Our own invention, after what SVG files from vector editors commonly hold.
 */
final class BareSheet {
    /** A way to draw. */
    enum Hand {
        /** Cutting line with a dashed stitching line, one text a piece, open arrow heads, darts in one go. */
        LAYERED,
        /** The stitching line alone, darts cut out of it, triangles for notches, lines of words, grain in words. */
        SEAM_ONLY,
        /** Curves flattened to short lines, darts and arrows as single lines, counts such as 2x, capitals. */
        FLATTENED,
        /** As LAYERED, but turned, drawn the other way round, and to a tenth of a millimetre. */
        ASKEW
    }

    private final Pattern pattern;
    private final Hand hand;

    /** Whether it says how often pieces are cut and what lies on a fold. */
    private final boolean counts;

    private final StringBuilder out = new StringBuilder();

    private BareSheet(Pattern pattern, Hand hand, boolean counts) {
        this.pattern = pattern;
        this.hand = hand;
        this.counts = counts;
    }

    static String of(Pattern pattern, String title, Hand hand) {
        return drawn(new BareSheet(pattern, hand, true), title);
    }

    /** A sheet on which neither a word nor a sign says how often anything is cut. */
    static String withoutCounts(Pattern pattern, String title, Hand hand) {
        return drawn(new BareSheet(pattern, hand, false), title);
    }

    private static String drawn(BareSheet sheet, String title) {
        sheet.draw(title);
        return sheet.out.toString();
    }

    private void draw(String title) {
        out.append("<svg xmlns='http://www.w3.org/2000/svg' width='4500mm' height='1700mm' viewBox='0 0 4500 1700'>\n");
        text(new Point(60, 30), 20, title);
        for (Piece piece : pattern.pieces()) {
            if (hand == Hand.LAYERED) {
                out.append("<g transform='scale(.1)'><g transform='scale(10)'>\n");
            }
            piece(piece);
            if (hand == Hand.LAYERED) {
                out.append("</g></g>\n");
            }
        }
        out.append("</svg>\n");
    }

    private void piece(Piece piece) {
        Outline stitching = stitching(piece);
        if (hand == Hand.SEAM_ONLY) {
            path(withCuts(stitching, piece.darts()).segments(), true, "");
        } else {
            path(cutting(piece).segments(), true, "");
            path(stitching.segments(), true, " stroke-dasharray='4 2'");
            piece.darts().forEach(this::dart);
        }
        for (Notch notch : piece.notches()) {
            notch(piece, stitching, notch.at());
        }
        grain(piece);
        levels(piece);
        if (piece.onFold() && counts) {
            piece.edges().stream()
                    .filter(e -> e.role() == EdgeRole.FOLD)
                    .forEach(e -> fold(e, piece.outline().box().centre()));
        }
        words(piece);
    }

    private static Outline stitching(Piece piece) {
        return piece.drawn() == LineKind.STITCHING ? piece.outline() : parallel(piece);
    }

    private static Outline cutting(Piece piece) {
        return piece.drawn() == LineKind.CUTTING ? piece.outline() : parallel(piece);
    }

    private static Outline parallel(Piece piece) {
        Rider rider = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                .findFirst()
                .orElseThrow();
        return new Outline(rider.segments());
    }

    /** The outline with every dart cut out of it. */
    private static Outline withCuts(Outline outline, List<Dart> darts) {
        Outline now = outline;
        for (Dart dart : darts) {
            Ring ring = new Ring(now);
            double one = ring.along(dart.mouth1());
            double two = ring.along(dart.mouth2());
            boolean forward = ring.way(one, two) <= ring.way(two, one);
            double from = forward ? one : two;
            double to = forward ? two : one;
            List<Segment> segments = new ArrayList<>(ring.run(to, from).segments());
            segments.add(new Line(ring.at(from), dart.point()));
            segments.add(new Line(dart.point(), ring.at(to)));
            now = new Outline(joined(segments));
        }
        return now;
    }

    /** Ends that differ in the last digits are made one. */
    private static List<Segment> joined(List<Segment> segments) {
        List<Segment> joined = new ArrayList<>();
        Point at = segments.get(0).start();
        Point first = at;
        for (int i = 0; i < segments.size(); i++) {
            Point end = i == segments.size() - 1 ? first : segments.get(i).end();
            joined.add(
                    segments.get(i) instanceof Cubic c
                            ? new Cubic(at, c.control1(), c.control2(), end)
                            : new Line(at, end));
            at = end;
        }
        return joined;
    }

    private void dart(Dart dart) {
        if (hand == Hand.FLATTENED) {
            line(dart.mouth1(), dart.point());
            line(dart.mouth2(), dart.point());
        } else {
            path(List.of(new Line(dart.mouth1(), dart.point()), new Line(dart.point(), dart.mouth2())), false, "");
        }
    }

    private void notch(Piece piece, Outline stitching, Point at) {
        Outline line = hand == Hand.LAYERED || hand == Hand.ASKEW ? cutting(piece) : stitching;
        var place = line.nearest(at).place();
        Point on = line.point(place);
        Point tangent = line.segments().get(place.segment()).tangent(place.t());
        Point in = line.signedArea() > 0
                ? tangent.quarterTurned()
                : tangent.quarterTurned().times(-1);
        switch (hand) {
            case LAYERED, ASKEW -> line(on, on.plus(in.times(6)));
            case SEAM_ONLY ->
                path(
                        Outline.polygon(List.of(
                                        on.plus(tangent.times(3)), on.plus(in.times(6)), on.minus(tangent.times(3))))
                                .segments(),
                        true,
                        " fill='black'");
            case FLATTENED -> line(on.plus(in.times(4)), on.minus(in.times(4)));
        }
    }

    private void grain(Piece piece) {
        if (piece.grain().isEmpty()) {
            return;
        }
        Point from = piece.grain().get().from();
        Point to = piece.grain().get().to();
        line(from, to);
        Point along = to.minus(from).unit();
        Point side = along.quarterTurned();
        for (Point tip : List.of(from, to)) {
            Point back = tip.plus(along.times(tip.equals(from) ? 6 : -6));
            switch (hand) {
                case LAYERED, ASKEW ->
                    path(
                            List.of(new Line(back.plus(side.times(3)), tip), new Line(tip, back.minus(side.times(3)))),
                            false,
                            "");
                case FLATTENED -> {
                    line(tip, back.plus(side.times(3)));
                    line(tip, back.minus(side.times(3)));
                }
                case SEAM_ONLY -> {}
            }
        }
        if (hand == Hand.SEAM_ONLY) {
            text(from.towards(to, 0.5).plus(new Point(9, 0)), 5, "grainline");
        }
    }

    private void levels(Piece piece) {
        for (LevelMark mark : piece.levels()) {
            if (mark.through().isPresent()) {
                Point through = mark.through().get();
                var crossings = stitching(piece)
                        .crossings(through, piece.grainDirection().quarterTurned());
                Point a = crossings.get(0).point();
                Point b = crossings.get(crossings.size() - 1).point();
                line(a, b);
                String words = switch (hand) {
                    case LAYERED, ASKEW -> mark.level() + " line";
                    case SEAM_ONLY -> mark.level();
                    case FLATTENED -> mark.level().toUpperCase(Locale.ROOT);
                };
                text(a.towards(b, 0.3).plus(new Point(0, -3)), 6, words);
            }
        }
    }

    private void fold(Edge edge, Point middle) {
        Point from = edge.from().towards(edge.to(), 0.25);
        Point to = edge.from().towards(edge.to(), 0.75);
        Point in = to.minus(from).unit().quarterTurned();
        if (in.dot(middle.minus(from)) < 0) {
            in = in.times(-1);
        }
        switch (hand) {
            case LAYERED, ASKEW ->
                path(
                        List.of(
                                new Line(from.plus(in.times(2)), from.plus(in.times(14))),
                                new Line(from.plus(in.times(14)), to.plus(in.times(14))),
                                new Line(to.plus(in.times(14)), to.plus(in.times(2)))),
                        false,
                        "");
            case SEAM_ONLY -> {}
            case FLATTENED -> text(from.towards(to, 0.5).plus(in.times(12)), 6, "FOLD");
        }
    }

    private void words(Piece piece) {
        Point at = piece.outline().box().centre().plus(new Point(0, 22));
        String name = piece.name();
        String count = String.valueOf(piece.times());
        switch (hand) {
            case LAYERED, ASKEW ->
                text(at, 10, counts ? name + ", cut " + count + (piece.onFold() ? " on fold" : "") : name);
            case SEAM_ONLY ->
                out.append(String.format(
                        Locale.ROOT,
                        "<text x='%.2f' y='%.2f' font-size='9' text-anchor='middle'><tspan x='%.2f' y='%.2f'>%s</tspan>"
                                + "<tspan x='%.2f' dy='11'>%s</tspan><tspan x='%.2f' dy='11'>Size 40</tspan></text>%n",
                        at.x(),
                        at.y(),
                        at.x(),
                        at.y(),
                        name,
                        at.x(),
                        counts
                                ? "Cut " + count
                                        + (piece.onFold() ? " on the fold" : piece.times() == 2 ? " (mirrored)" : "")
                                : "woven cloth",
                        at.x()));
            case FLATTENED -> {
                text(at, 12, name.toUpperCase(Locale.ROOT));
                if (counts) {
                    text(at.plus(new Point(0, 14)), 6, count + "x" + (piece.onFold() ? " ON FOLD" : ""));
                }
            }
        }
    }

    private void text(Point at, double size, String words) {
        out.append(String.format(
                Locale.ROOT,
                "<text x='%.2f' y='%.2f' font-size='%.1f' text-anchor='middle'>%s</text>%n",
                at.x(),
                at.y() + size / 3,
                size,
                words));
    }

    private void line(Point a, Point b) {
        out.append(String.format(
                Locale.ROOT, "<line x1='%.4f' y1='%.4f' x2='%.4f' y2='%.4f'/>%n", a.x(), a.y(), b.x(), b.y()));
    }

    private void path(List<Segment> segments, boolean close, String style) {
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
