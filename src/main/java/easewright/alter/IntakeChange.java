package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dart made narrower or wider. Its point stays. Where its legs or its cap are part of the outline, both legs turn
 * about the point alike and so keep their lengths; the seam beside the dart follows up to the next end of segments,
 * and the cap is drawn anew as if folded (worked example W8). Where the outline runs on over the dart, its mouth
 * slides along the outline. What is displaced is displaced in proportion to fixed weights, so that the opposite change
 * takes it back exactly.
 */
final class IntakeChange {
    private final Piece piece;
    private final Dart dart;
    private final Optional<DartMouth> mouth;

    IntakeChange(Piece piece, Dart dart) throws Refusal {
        this.piece = piece;
        this.dart = dart;
        boolean inside = dart.otherPoint().isPresent()
                || (dart.edge().isEmpty()
                        && piece.outline().nearest(dart.mouth1()).distance() > Shift.ON_OUTLINE);
        mouth = inside ? Optional.empty() : Optional.of(DartMouth.of(piece, dart));
    }

    /** The piece with each place of the mouth moved towards the other by about the given way, mm. */
    Piece by(double way) throws Refusal {
        if (2 * way >= dart.intake()) {
            throw Refusal.of("dart-used-up").with("piece", piece.name()).with("dart", dart.name());
        }
        if (mouth.isEmpty()) {
            Point across = dart.mouth2().minus(dart.mouth1()).unit().times(way);
            return marked(
                    piece.outline(), dart.mouth1().plus(across), dart.mouth2().minus(across), p -> Point.ORIGIN);
        }
        return mouth.get().kind() == DartMouth.Kind.FLAT ? slid(mouth.get(), way) : turned(mouth.get(), way);
    }

    private Piece slid(DartMouth at, double way) throws Refusal {
        DartSlide slide = new DartSlide(piece.outline(), dart, at);
        Point first = slide.first(way);
        Point second = slide.second(way);
        return marked(piece.outline(), at.swapped() ? second : first, at.swapped() ? first : second, p -> Point.ORIGIN);
    }

    /** How a place near the old outline is displaced. */
    private interface Field {
        Point at(Point p);
    }

    private Piece turned(DartMouth at, double way) {
        double legs = (at.first().distance(dart.point()) + at.second().distance(dart.point())) / 2;
        Point one = at.first().minus(dart.point());
        Point two = at.second().minus(dart.point());
        double turn = way / legs * Math.signum(one.cross(two));
        Affine firstTurn = Affine.rotation(turn, dart.point());
        Affine secondTurn = Affine.rotation(-turn, dart.point());
        Point first = firstTurn.apply(at.first());
        Point second = secondTurn.apply(at.second());
        Segment before = endMoved(at.before(), first);
        Segment after = endMoved(at.after().reversed(), second).reversed();
        List<Segment> inner = at.kind() == DartMouth.Kind.CUT_OUT
                ? legs(at, first, firstTurn, second, secondTurn)
                : new DartCap(at, dart.point(), before, after).drawn(first, second);
        Outline outline = at.replaced(before, inner, after);
        Field field = field(at, first.minus(at.first()), second.minus(at.second()), inner);
        Point mouth1 = at.swapped() ? second : first;
        Point mouth2 = at.swapped() ? first : second;
        // A mark rounded on its way stays as far beside the mouth as it was.
        Point off1 = dart.mouth1().minus(at.swapped() ? at.second() : at.first());
        Point off2 = dart.mouth2().minus(at.swapped() ? at.first() : at.second());
        return marked(outline, mouth1.plus(off1), mouth2.plus(off2), field);
    }

    private List<Segment> legs(DartMouth at, Point first, Affine firstTurn, Point second, Affine secondTurn) {
        List<Segment> legs = new ArrayList<>();
        Curve run = new Curve(at.inner());
        Place tip = run.nearest(dart.point()).place();
        int corner = tip.t() > 0.5 ? tip.segment() + 1 : tip.segment();
        Point point = corner == 0 ? run.start() : run.segments().get(corner - 1).end();
        for (int i = 0; i < at.inner().size(); i++) {
            Segment s = at.inner().get(i).transformed(i < corner ? firstTurn : secondTurn);
            Point from = i == 0 ? first : legs.get(i - 1).end();
            Point to = i == at.inner().size() - 1 ? second : i == corner - 1 ? point : s.end();
            legs.add(withEnds(s, i == corner ? point : from, to));
        }
        return legs;
    }

    private static Segment withEnds(Segment s, Point start, Point end) {
        return s instanceof Cubic c ? new Cubic(start, c.control1(), c.control2(), end) : new Line(start, end);
    }

    /** The end of a segment moved; its start and the direction there stay, and a curve keeps its direction at the end. */
    private static Segment endMoved(Segment s, Point end) {
        return s instanceof Cubic c
                ? new Cubic(c.start(), c.control1(), c.control2().plus(end.minus(c.end())), end)
                : new Line(s.start(), end);
    }

    private Field field(DartMouth at, Point firstBy, Point secondBy, List<Segment> inner) {
        return p -> {
            Place place = at.outline().nearest(p).place();
            Segment on = at.outline().segments().get(place.segment());
            if (on == at.before()) {
                return firstBy.times(weight(on, place.t()));
            }
            if (on == at.after()) {
                return secondBy.times(weight(on, 1 - place.t()));
            }
            int k = at.inner().indexOf(on);
            if (k < 0) {
                return Point.ORIGIN;
            }
            Point was = on.at(place.t());
            return inner.get(k).at(place.t()).minus(was);
        };
    }

    private static double weight(Segment s, double t) {
        return s instanceof Cubic ? t * t * (3 - 2 * t) : t;
    }

    private Piece marked(Outline outline, Point mouth1, Point mouth2, Field field) {
        List<Dart> darts = new ArrayList<>();
        for (Dart d : piece.darts()) {
            darts.add(
                    d.name().equals(dart.name())
                            ? new Dart(d.name(), mouth1, mouth2, d.point(), d.otherPoint(), d.edge())
                            : d);
        }
        List<Notch> notches = piece.notches().stream()
                .map(n -> new Notch(n.name(), carried(n.at(), field)))
                .toList();
        List<Edge> edges = piece.edges().stream()
                .map(e -> e.withEnds(carried(e.from(), field), carried(e.to(), field)))
                .toList();
        List<Rider> riders = new ArrayList<>();
        for (Rider r : piece.riders()) {
            List<Segment> segments = new ArrayList<>();
            for (Segment s : r.segments()) {
                segments.add(r.kind() == Rider.Kind.INNER ? leg(s, mouth1, mouth2) : beside(s, field));
            }
            riders.add(segments.equals(r.segments()) ? r : r.changed(segments));
        }
        return piece.toBuilder()
                .outline(outline)
                .darts(darts)
                .notches(notches)
                .edges(edges)
                .riders(riders)
                .original(Optional.of(piece.original().orElse(piece.outline())))
                .build();
    }

    private Point carried(Point mark, Field field) {
        return piece.outline().nearest(mark).distance() > Shift.ON_OUTLINE ? mark : mark.plus(field.at(mark));
    }

    /** A leg drawn on the cloth goes with its end of the mouth. */
    private Segment leg(Segment s, Point mouth1, Point mouth2) {
        Point start = atMouth(s.start(), mouth1, mouth2);
        Point end = atMouth(s.end(), mouth1, mouth2);
        return start.equals(s.start()) && end.equals(s.end()) ? s : withEnds(s, start, end);
    }

    private Point atMouth(Point p, Point mouth1, Point mouth2) {
        if (p.distance(dart.mouth1()) <= Shift.ON_OUTLINE) {
            return p.plus(mouth1.minus(dart.mouth1()));
        }
        return p.distance(dart.mouth2()) <= Shift.ON_OUTLINE ? p.plus(mouth2.minus(dart.mouth2())) : p;
    }

    private static Segment beside(Segment s, Field field) {
        Point start = field.at(s.start());
        Point end = field.at(s.end());
        if (start.norm() == 0 && end.norm() == 0) {
            return s;
        }
        return s instanceof Cubic c
                ? new Cubic(
                        c.start().plus(start),
                        c.control1().plus(start),
                        c.control2().plus(end),
                        c.end().plus(end))
                : new Line(s.start().plus(start), s.end().plus(end));
    }
}
