package easewright.alter;

import easewright.alter.LaidStroke.Lay;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws the seam over a dart as if the dart were folded: first the seam on either side is bent so that it goes straight
 * on over the closed legs, then the cap is drawn, which is that seam mirrored in the legs (docs/sources.md 4.5, W8).
 */
final class CapTruer implements Trued.Truer {
    /** The seam is bent over this much at most, mm. */
    private static final double LONGEST = 24;

    /** How a dart's mouth looks when it is folded: where its cap belongs and by how much the seam bends, radians. */
    record Folded(Piece piece, Dart dart, DartMouth mouth, double bends, Optional<Point> peak, double off) {}

    /** The darts that have their mouths on the outline. */
    static List<Folded> folded(List<Piece> pieces) {
        List<Folded> all = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Dart dart : piece.darts()) {
                folded(piece, dart).ifPresent(all::add);
            }
        }
        return all;
    }

    static Optional<Folded> folded(Piece piece, Dart dart) {
        if (dart.otherPoint().isPresent() || dart.edge().isEmpty()) {
            return Optional.empty();
        }
        DartMouth mouth;
        try {
            mouth = DartMouth.of(piece, dart);
        } catch (Refusal offOutline) {
            return Optional.empty();
        }
        if (mouth.first().distance(dart.point()) < 1 || mouth.second().distance(dart.point()) < 1) {
            return Optional.empty();
        }
        double bends = bends(mouth, dart.point());
        if (mouth.kind() == DartMouth.Kind.CUT_OUT) {
            return Optional.of(new Folded(piece, dart, mouth, bends, Optional.empty(), 0));
        }
        Point peak = new DartCap(mouth, dart.point(), mouth.before(), mouth.after())
                .folded(mouth.first(), mouth.second(), mouth.before(), mouth.after());
        double off = new Curve(mouth.inner()).nearest(peak).distance();
        return Optional.of(new Folded(piece, dart, mouth, bends, Optional.of(peak), off));
    }

    /** By how much the seam turns where the closed legs meet it, radians. */
    private static double bends(DartMouth mouth, Point point) {
        Point on = mouth.before().tangent(1);
        Point off = closing(mouth, point, mouth.after().tangent(0));
        return Math.atan2(on.cross(off), on.dot(off));
    }

    /** A direction beyond the dart as it lies when the second leg is folded onto the first. */
    private static Point closing(DartMouth mouth, Point point, Point direction) {
        Point one = mouth.first().minus(point);
        Point two = mouth.second().minus(point);
        return direction.turned(Math.atan2(two.cross(one), two.dot(one)));
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        String pieceName = what.target(Trued.PIECE);
        String dartName = what.target(Trued.DART);
        Piece piece = pattern.piece(pieceName)
                .orElseThrow(() -> Refusal.of("piece-unknown").with("piece", pieceName));
        Dart dart = piece.darts().stream()
                .filter(d -> d.name().equals(dartName))
                .findFirst()
                .orElseThrow(() ->
                        Refusal.of("dart-unknown").with("piece", piece.name()).with("dart", dartName));
        boolean kept =
                dart.edge().flatMap(piece::edge).map(e -> e.isProtected()).orElse(false);
        if (kept && !what.acceptProtected()) {
            throw Refusal.of("edge-protected")
                    .with("piece", piece.name())
                    .with("edge", dart.edge().orElseThrow());
        }
        Folded folded = folded(piece, dart)
                .orElseThrow(() -> Refusal.of("dart-off-outline")
                        .with("piece", piece.name())
                        .with("dart", dartName));
        List<Stroke> strokes = new ArrayList<>();
        Piece now = piece;
        if (Math.abs(folded.bends()) > 1e-6) {
            for (boolean ahead : new boolean[] {false, true}) {
                Stroke bend = bend(now, folded.mouth(), dart, ahead, folded.bends() / 2);
                strokes.add(bend);
                now = bend.on(now);
            }
        }
        Folded again = folded(now, dart).orElseThrow(() -> Refusal.of("truing-not-exact"));
        if (again.peak().isPresent() && again.off() > 1e-6) {
            DartMouth mouth = again.mouth();
            Point peak = again.peak().get();
            strokes.add(new CapStroke(
                    piece.id(), mouth.inner(), List.of(new Line(mouth.first(), peak), new Line(peak, mouth.second()))));
        }
        return strokes;
    }

    /** The seam beside the dart turned at its mouth, which stays. */
    private static LaidStroke bend(Piece piece, DartMouth mouth, Dart dart, boolean ahead, double turn) throws Refusal {
        Point corner = ahead ? mouth.second() : mouth.first();
        Point is = ahead ? mouth.after().tangent(0) : mouth.before().tangent(1).times(-1);
        // Half of the bend goes to either side: the way in turns with it, the way out against it.
        Point wanted = is.turned(ahead ? -turn : turn);
        Point along = dart.point().minus(corner).unit();
        Point square = along.quarterTurned();
        Point away = square.dot(is) >= 0 ? square : square.times(-1);
        double slope = wanted.dot(along) / wanted.dot(away) - is.dot(along) / is.dot(away);
        Point until = until(piece, mouth, corner, ahead, turn);
        double way = away.dot(until.minus(corner));
        Lay lay = ahead
                ? Lay.cubic(corner, until, 0, slope * way, 0, 0)
                : Lay.cubic(until, corner, 0, 0, 0, -slope * way);
        return new LaidStroke(piece.id(), along, List.of(lay));
    }

    private static String mouthEdge(Piece piece, DartMouth mouth) {
        return piece.edges().stream()
                .filter(e -> new EdgeRun(piece, e).holds(mouth.first()))
                .map(e -> e.name())
                .findFirst()
                .orElse("");
    }

    /** A third of the way to the next dart or the end of the edge, less for a larger turn: the seam grows by its square. */
    private static Point until(Piece piece, DartMouth mouth, Point corner, boolean ahead, double turn) throws Refusal {
        List<Point> stops = new ArrayList<>();
        piece.edges().forEach(e -> {
            stops.add(e.from());
            stops.add(e.to());
        });
        piece.darts().forEach(d -> {
            stops.add(d.mouth1());
            stops.add(d.mouth2());
        });
        Outline outline = mouth.outline();
        List<Segment> line = new ArrayList<>(outline.run(
                        outline.nearest(corner).place(), outline.nearest(corner).place())
                .segments());
        Curve way = ahead ? new Curve(line) : new Curve(line).reversed();
        double room = Double.POSITIVE_INFINITY;
        for (Point stop : stops) {
            if (stop.distance(corner) > 0.1) {
                double along = way.lengthTo(way.nearest(stop).place());
                room = along > 0.1 ? Math.min(room, along) : room;
            }
        }
        if (room < 6) {
            throw Refusal.of("no-room-to-true").with("piece", piece.name()).with("edge", mouthEdge(piece, mouth));
        }
        return way.pointAtLength(
                Math.min(room / 3, Math.max(CornerBend.SHORTEST / 2, CornerBend.within(turn, LONGEST))));
    }
}
