package easewright.alter;

import easewright.alter.LaidStroke.Lay;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws the seam over a dart as if the dart were folded: first the seam on either side is bent so that it goes straight
 * on over the closed legs, which may be made equal at the same time, then the cap is drawn, which is that seam mirrored in
 * the legs (docs/sources.md 4.5, W8).
 */
final class CapTruer implements Trued.Truer {
    private final boolean inOneCurve;
    private final boolean equalLegs;

    /**
     * @param inOneCurve whether waist and hem are drawn in one curve from the dart to what stays, where that may be
     * @param equalLegs  whether the mouth is moved along its legs until both are equally long, the seam staying as long as
     *                   it is
     */
    CapTruer(boolean inOneCurve, boolean equalLegs) {
        this.inOneCurve = inOneCurve;
        this.equalLegs = equalLegs;
    }

    /** The seam is bent over this much at most, mm. */
    private static final double LONGEST = 24;

    /** Less room beside a dart is none, mm. */
    private static final double SHORTEST = 6;

    /** It leaves the mouth straight a little farther than the allowance needs. */
    private static final double STRAIGHT = 1.2;

    /** The seam keeps its length within this, mm. */
    private static final double KEPT = 1e-4;

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        String pieceName = what.target(Trued.PIECE);
        String dartName = what.target(Trued.DART);
        Piece piece = Known.piece(pattern, pieceName);
        Dart dart = dart(piece, dartName);
        boolean kept =
                dart.edge().flatMap(piece::edge).map(e -> e.isProtected()).orElse(false);
        if (kept && !what.acceptProtected()) {
            throw Refusal.of("edge-protected")
                    .with("piece", piece.name())
                    .with("edge", dart.edge().orElseThrow());
        }
        ClosedDart folded = ClosedDart.of(piece, dart)
                .orElseThrow(() -> Refusal.of("dart-off-outline")
                        .with("piece", piece.name())
                        .with("dart", dartName));
        boolean unequal = equalLegs && Math.abs(folded.longer()) > 1e-6;
        List<Stroke> strokes =
                unequal ? equal(folded) : Math.abs(folded.bends()) > 1e-6 ? bent(folded) : new ArrayList<>();
        Piece now = on(piece, strokes);
        ClosedDart again = ClosedDart.of(now, dart(now, dartName)).orElseThrow(() -> Refusal.of("truing-not-exact"));
        if (again.peak().isPresent() && again.off() > 1e-6) {
            DartMouth mouth = again.mouth();
            Point peak = again.peak().get();
            strokes.add(new RunStroke(
                    piece.id(),
                    mouth.inner(),
                    List.of(new Line(mouth.first(), peak), new Line(peak, mouth.second())),
                    List.of()));
        }
        return strokes;
    }

    /** Where the seam cannot both be bent so and keep its length, the legs alone are made equal. */
    private List<Stroke> equal(ClosedDart folded) throws Refusal {
        try {
            return bent(folded);
        } catch (Refusal notBoth) {
            return legsAlone(folded);
        }
    }

    private List<Stroke> legsAlone(ClosedDart folded) throws Refusal {
        try {
            return bent(folded.unbent());
        } catch (Refusal notEither) {
            throw Refusal.of("dart-legs-stay-apart")
                    .with("piece", folded.piece().name())
                    .with("dart", folded.dart().name());
        }
    }

    private static Dart dart(Piece piece, String name) throws Refusal {
        return piece.darts().stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        Refusal.of("dart-unknown").with("piece", piece.name()).with("dart", name));
    }

    /**
     * The seam bent on both sides of the dart, its legs shortened or lengthened alike so that the seam keeps its length; where
     * they are to be equal, the one more than the other.
     */
    private List<Stroke> bent(ClosedDart folded) throws Refusal {
        Refusal notMet = Refusal.of("edge-length-not-met")
                .with("piece", folded.piece().name())
                .with("edge", folded.dart().edge().orElseThrow());
        OneCurve curve = inOneCurve ? OneCurve.of(folded.piece(), on(folded.piece(), bends(folded, 0))) : OneCurve.NONE;
        double length = sewn(folded.piece(), folded.dart());
        double atZero = gained(folded, curve, 0, length);
        double slide = Math.abs(atZero) <= KEPT / 10
                ? 0
                : Root.of(v -> gained(folded, curve, v, length), atZero, 0.1, KEPT / 100, KEPT, notMet);
        return bent(folded, curve, slide);
    }

    private double gained(ClosedDart folded, OneCurve curve, double slide, double length) throws Refusal {
        return sewn(on(folded.piece(), bent(folded, curve, slide)), folded.dart()) - length;
    }

    private static Piece on(Piece piece, List<Stroke> strokes) throws Refusal {
        Piece now = piece;
        for (Stroke stroke : strokes) {
            now = stroke.on(now);
        }
        return now;
    }

    private static double sewn(Piece piece, Dart dart) throws Refusal {
        return Measures.of(piece, List.of())
                .edge(dart.edge().orElseThrow())
                .orElseThrow(() -> Refusal.of("truing-not-exact"))
                .mm();
    }

    private List<Stroke> bent(ClosedDart folded, OneCurve curve, double slide) throws Refusal {
        List<Stroke> strokes = bends(folded, slide);
        strokes.addAll(curve.strokes(on(folded.piece(), strokes)));
        return strokes;
    }

    private List<Stroke> bends(ClosedDart folded, double slide) throws Refusal {
        List<Stroke> strokes = new ArrayList<>();
        Piece now = folded.piece();
        double shorter = equalLegs ? folded.longer() / 2 : 0;
        for (boolean ahead : new boolean[] {false, true}) {
            Dart dart = dart(now, folded.dart().name());
            double along = ahead ? slide - shorter : slide + shorter;
            Stroke bend = bend(now, DartMouth.of(now, dart), dart, ahead, folded.bends() / 2, along);
            strokes.add(bend);
            now = bend.on(now);
        }
        return strokes;
    }

    /** The seam beside the dart turned at its mouth, which moves along its leg. */
    private static LaidStroke bend(Piece piece, DartMouth mouth, Dart dart, boolean ahead, double turn, double slide)
            throws Refusal {
        Point corner = ahead ? mouth.second() : mouth.first();
        Point is = ahead ? mouth.after().tangent(0) : mouth.before().tangent(1).times(-1);
        // Half of the bend goes to either side: the way in turns with it, the way out against it.
        Point wanted = is.turned(ahead ? -turn : turn);
        Point along = dart.point().minus(corner).unit();
        Point square = along.quarterTurned();
        Point away = square.dot(is) >= 0 ? square : square.times(-1);
        double slope = wanted.dot(along) / wanted.dot(away) - is.dot(along) / is.dot(away);
        Curve way = way(mouth, corner, ahead);
        double room = room(piece, mouth, corner, way);
        double straight = Math.min(room / 6, 1 + STRAIGHT * lean(piece, dart, is, along));
        Point led = way.pointAtLength(straight);
        Point until = way.pointAtLength(Math.min(room / 3, straight + LONGEST));
        double first = away.dot(led.minus(corner));
        double second = away.dot(until.minus(led));
        double there = slide + slope * first;
        List<Lay> lays = new ArrayList<>();
        if (ahead) {
            lays.add(Lay.cubic(corner, led, slide, slope * first, there, slope * first));
            lays.add(Lay.cubic(led, until, there, slope * second, 0, 0));
        } else {
            lays.add(Lay.cubic(led, corner, there, -slope * first, slide, -slope * first));
            lays.add(Lay.cubic(until, led, 0, 0, there, -slope * second));
        }
        if (slide != 0) {
            lays.add(inner(mouth, dart, ahead, slide));
        }
        return new LaidStroke(piece.id(), along, lays);
    }

    /** What lies in the mouth follows: the leg becomes shorter or longer, a cap is drawn anew anyway. */
    private static Lay inner(DartMouth mouth, Dart dart, boolean ahead, double slide) {
        if (mouth.kind() == DartMouth.Kind.CUT_OUT) {
            return ahead
                    ? Lay.stretch(dart.point(), mouth.second(), 0, slide)
                    : Lay.stretch(mouth.first(), dart.point(), slide, 0);
        }
        return ahead
                ? Lay.even(mouth.first(), mouth.second(), 0, slide)
                : Lay.even(mouth.first(), mouth.second(), slide, 0);
    }

    private static String mouthEdge(Piece piece, DartMouth mouth) {
        return piece.edges().stream()
                .filter(e -> new EdgeRun(piece, e).holds(mouth.first()))
                .map(e -> e.name())
                .findFirst()
                .orElse("");
    }

    /** By how much the mouth on the cutting line lies aside of the sewn one, mm: the leg leans against the seam. */
    private static double lean(Piece piece, Dart dart, Point seam, Point leg) {
        double allowance = dart.edge()
                .flatMap(piece::edge)
                .map(e -> Around.allowance(piece, e))
                .orElse(piece.allowance());
        return allowance * Math.abs(seam.dot(leg) / seam.cross(leg));
    }

    private static Curve way(DartMouth mouth, Point corner, boolean ahead) {
        Outline outline = mouth.outline();
        Curve around = outline.run(
                outline.nearest(corner).place(), outline.nearest(corner).place());
        return ahead ? around : around.reversed();
    }

    /** The way to the next dart or the end of the edge, mm. */
    private static double room(Piece piece, DartMouth mouth, Point corner, Curve way) throws Refusal {
        List<Point> stops = new ArrayList<>();
        piece.edges().forEach(e -> {
            stops.add(e.from());
            stops.add(e.to());
        });
        piece.darts().forEach(d -> {
            stops.add(d.mouth1());
            stops.add(d.mouth2());
        });
        double room = Double.POSITIVE_INFINITY;
        for (Point stop : stops) {
            if (stop.distance(corner) > 0.1) {
                double along = way.lengthTo(way.nearest(stop).place());
                room = along > 0.1 ? Math.min(room, along) : room;
            }
        }
        if (room < SHORTEST) {
            throw Refusal.of("no-room-to-true").with("piece", piece.name()).with("edge", mouthEdge(piece, mouth));
        }
        return room;
    }
}
