package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
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

    private final BarePen pen;

    private BareSheet(Pattern pattern, Hand hand, boolean counts) {
        this.pattern = pattern;
        this.hand = hand;
        this.counts = counts;
        this.pen = new BarePen(hand);
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
        return sheet.pen.written();
    }

    private void draw(String title) {
        pen.add("<svg xmlns='http://www.w3.org/2000/svg' width='4500mm' height='1700mm' viewBox='0 0 4500 1700'>\n");
        pen.text(new Point(60, 30), 20, title);
        for (Piece piece : pattern.pieces()) {
            if (hand == Hand.LAYERED) {
                pen.add("<g transform='scale(.1)'><g transform='scale(10)'>\n");
            }
            piece(piece);
            if (hand == Hand.LAYERED) {
                pen.add("</g></g>\n");
            }
        }
        pen.add("</svg>\n");
    }

    private void piece(Piece piece) {
        Outline stitching = BareOutlines.stitching(piece);
        if (hand == Hand.SEAM_ONLY) {
            pen.path(BareOutlines.withCuts(stitching, piece.darts()).segments(), true, "");
        } else {
            pen.path(BareOutlines.cutting(piece).segments(), true, "");
            pen.path(stitching.segments(), true, " stroke-dasharray='4 2'");
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

    private void dart(Dart dart) {
        if (hand == Hand.FLATTENED) {
            pen.line(dart.mouth1(), dart.point());
            pen.line(dart.mouth2(), dart.point());
        } else {
            pen.path(List.of(new Line(dart.mouth1(), dart.point()), new Line(dart.point(), dart.mouth2())), false, "");
        }
    }

    private void notch(Piece piece, Outline stitching, Point at) {
        Outline line = hand == Hand.LAYERED || hand == Hand.ASKEW ? BareOutlines.cutting(piece) : stitching;
        var place = line.nearest(at).place();
        Point on = line.point(place);
        Point tangent = line.segments().get(place.segment()).tangent(place.t());
        Point in = line.signedArea() > 0
                ? tangent.quarterTurned()
                : tangent.quarterTurned().times(-1);
        switch (hand) {
            case LAYERED, ASKEW -> pen.line(on, on.plus(in.times(6)));
            case SEAM_ONLY ->
                pen.path(
                        Outline.polygon(List.of(
                                        on.plus(tangent.times(3)), on.plus(in.times(6)), on.minus(tangent.times(3))))
                                .segments(),
                        true,
                        " fill='black'");
            case FLATTENED -> pen.line(on.plus(in.times(4)), on.minus(in.times(4)));
        }
    }

    private void grain(Piece piece) {
        if (piece.grain().isEmpty()) {
            return;
        }
        Point from = piece.grain().get().from();
        Point to = piece.grain().get().to();
        pen.line(from, to);
        Point along = to.minus(from).unit();
        Point side = along.quarterTurned();
        for (Point tip : List.of(from, to)) {
            Point back = tip.plus(along.times(tip.equals(from) ? 6 : -6));
            switch (hand) {
                case LAYERED, ASKEW ->
                    pen.path(
                            List.of(new Line(back.plus(side.times(3)), tip), new Line(tip, back.minus(side.times(3)))),
                            false,
                            "");
                case FLATTENED -> {
                    pen.line(tip, back.plus(side.times(3)));
                    pen.line(tip, back.minus(side.times(3)));
                }
                case SEAM_ONLY -> {}
            }
        }
        if (hand == Hand.SEAM_ONLY) {
            pen.text(from.towards(to, 0.5).plus(new Point(9, 0)), 5, "grainline");
        }
    }

    private void levels(Piece piece) {
        for (LevelMark mark : piece.levels()) {
            if (mark.through().isPresent()) {
                Point through = mark.through().get();
                var crossings = BareOutlines.stitching(piece)
                        .crossings(through, piece.grainDirection().quarterTurned());
                Point a = crossings.get(0).point();
                Point b = crossings.get(crossings.size() - 1).point();
                pen.line(a, b);
                String words = switch (hand) {
                    case LAYERED, ASKEW -> mark.level() + " line";
                    case SEAM_ONLY -> mark.level();
                    case FLATTENED -> mark.level().toUpperCase(Locale.ROOT);
                };
                pen.text(a.towards(b, 0.3).plus(new Point(0, -3)), 6, words);
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
                pen.path(
                        List.of(
                                new Line(from.plus(in.times(2)), from.plus(in.times(14))),
                                new Line(from.plus(in.times(14)), to.plus(in.times(14))),
                                new Line(to.plus(in.times(14)), to.plus(in.times(2)))),
                        false,
                        "");
            case SEAM_ONLY -> {}
            case FLATTENED -> pen.text(from.towards(to, 0.5).plus(in.times(12)), 6, "FOLD");
        }
    }

    private void words(Piece piece) {
        Point at = piece.outline().box().centre().plus(new Point(0, 22));
        String name = piece.name();
        String count = String.valueOf(piece.times());
        switch (hand) {
            case LAYERED, ASKEW ->
                pen.text(at, 10, counts ? name + ", cut " + count + (piece.onFold() ? " on fold" : "") : name);
            case SEAM_ONLY ->
                pen.add(String.format(
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
                pen.text(at, 12, name.toUpperCase(Locale.ROOT));
                if (counts) {
                    pen.text(at.plus(new Point(0, 14)), 6, count + "x" + (piece.onFold() ? " ON FOLD" : ""));
                }
            }
        }
    }
}
