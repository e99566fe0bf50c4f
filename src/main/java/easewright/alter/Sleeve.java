package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.EdgeLength;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A one-piece sleeve that can be made wider while its cap seam keeps its length. */
final class Sleeve {
    /** Lengths of seams are kept within this, mm. */
    private static final double CLOSE = 1e-9;

    /** A cap lower than this share of what it was is none any more. */
    private static final double LOWEST = 0.05;

    /** So high that every cap not yet flat can be raised again. */
    private static final double HIGHEST = 1 / LOWEST;

    private final SleeveParts parts;
    private final boolean carry;
    private final double capLength;

    private Sleeve(SleeveParts parts, boolean carry) {
        this.parts = parts;
        this.carry = carry;
        capLength = capLength(parts.piece());
    }

    static Sleeve of(Piece piece, boolean carry, boolean acceptProtected) throws Refusal {
        return new Sleeve(SleeveParts.of(piece, acceptProtected), carry);
    }

    Piece piece() {
        return parts.piece();
    }

    /** The sleeve with its underarm corners so much farther apart, mm. */
    Piece wider(double by) throws Refusal {
        return carried(shape(by));
    }

    private SleeveShape shape(double by) throws Refusal {
        if (parts.start().distance(parts.end()) + by < 1) {
            throw Refusal.of("cap-too-short").with("piece", piece().name());
        }
        double squash = Root.between(
                high -> capLength(lean(by, high)) - capLength,
                LOWEST,
                HIGHEST,
                CLOSE,
                Refusal.of("cap-too-short").with("piece", piece().name()));
        return new SleeveShape(parts, by, squash, carry);
    }

    private static double capLength(Piece piece) {
        double sum = 0;
        for (EdgeLength edge : Measures.of(piece, List.of()).edges()) {
            sum += edge.role() == EdgeRole.CAP ? edge.mm() : 0;
        }
        return sum;
    }

    /** The reshaped piece as far as seams are measured on it. */
    private Piece lean(double by, double squash) {
        SleeveShape shape = new SleeveShape(parts, by, squash, carry);
        return piece().toBuilder()
                .outline(parts.mapped(shape))
                .edges(edges(shape))
                .darts(darts(shape))
                .build();
    }

    private List<Edge> edges(SleeveShape shape) {
        return piece().edges().stream()
                .map(e -> e.withEnds(parts.carried(shape, e.from()), parts.carried(shape, e.to())))
                .toList();
    }

    private List<Dart> darts(SleeveShape shape) {
        return piece().darts().stream().map(d -> d.mapped(p -> mark(shape, p))).toList();
    }

    private Point mark(SleeveShape shape, Point p) {
        boolean onOutline = parts.outline().nearest(p).distance() <= Shift.ON_OUTLINE;
        return onOutline ? parts.carried(shape, p) : shape.inside(p);
    }

    private Piece carried(SleeveShape shape) {
        Outline outline = parts.mapped(shape);
        List<Notch> notches = piece().notches().stream()
                .map(n -> new Notch(n.name(), notch(shape, outline, n.at())))
                .toList();
        List<LevelMark> levels = new ArrayList<>();
        for (LevelMark mark : piece().levels()) {
            LevelMark now = mark.through()
                    .filter(shape::inCap)
                    .map(p -> mark.withThrough(shape.inside(p)))
                    .orElse(mark);
            levels.add(
                    mark.reference().map(p -> now.withReference(mark(shape, p))).orElse(now));
        }
        List<Rider> riders = new ArrayList<>();
        for (Rider r : piece().riders()) {
            List<Segment> segments = r.segments().stream()
                    .map(s -> r.kind() == Rider.Kind.INNER ? inner(shape, s) : beside(shape, s))
                    .toList();
            riders.add(segments.equals(r.segments()) ? r : r.changed(segments));
        }
        return piece().toBuilder()
                .outline(outline)
                .edges(edges(shape))
                .darts(darts(shape))
                .notches(notches)
                .levels(levels)
                .riders(riders)
                .original(Optional.of(piece().original().orElse(piece().outline())))
                .build();
    }

    /** Notches on the cap keep their way along it, so that they meet those of the armhole as before. */
    private Point notch(SleeveShape shape, Outline outline, Point at) {
        Place place = parts.outline().nearest(at).place();
        if (parts.part(place.segment()) != SleeveParts.Part.CAP
                || parts.outline().point(place).distance(at) > Shift.ON_OUTLINE) {
            return mark(shape, at);
        }
        Point start = parts.carried(shape, parts.start());
        Point end = parts.carried(shape, parts.end());
        Curve was = parts.outline()
                .run(
                        parts.outline().nearest(parts.start()).place(),
                        parts.outline().nearest(parts.end()).place());
        Curve is =
                outline.run(outline.nearest(start).place(), outline.nearest(end).place());
        double along = parts.outline().point(place).equals(parts.start())
                ? 0
                : parts.outline()
                        .run(parts.outline().nearest(parts.start()).place(), place)
                        .length();
        return is.pointAtLength(along * is.length() / was.length())
                .plus(at.minus(parts.outline().point(place)));
    }

    private static Segment inner(SleeveShape shape, Segment s) {
        return s instanceof Cubic c
                ? new Cubic(
                        shape.inside(c.start()),
                        shape.inside(c.control1()),
                        shape.inside(c.control2()),
                        shape.inside(c.end()))
                : new Line(shape.inside(s.start()), shape.inside(s.end()));
    }

    private Segment beside(SleeveShape shape, Segment s) {
        Point start = parts.carried(shape, s.start());
        Point end = parts.carried(shape, s.end());
        if (!(s instanceof Cubic c)) {
            return start.equals(s.start()) && end.equals(s.end()) ? s : new Line(start, end);
        }
        // The cubic whose displacement at its thirds is that of the outline beside.
        Point d0 = start.minus(s.start());
        Point d1 = parts.carried(shape, s.at(1 / 3.0)).minus(s.at(1 / 3.0));
        Point d2 = parts.carried(shape, s.at(2 / 3.0)).minus(s.at(2 / 3.0));
        Point d3 = end.minus(s.end());
        Point b1 = d0.times(-5)
                .plus(d1.times(18))
                .plus(d2.times(-9))
                .plus(d3.times(2))
                .times(1 / 6.0);
        Point b2 = d0.times(2)
                .plus(d1.times(-9))
                .plus(d2.times(18))
                .plus(d3.times(-5))
                .times(1 / 6.0);
        boolean still = d0.norm() + b1.norm() + b2.norm() + d3.norm() == 0;
        return still ? s : new Cubic(start, c.control1().plus(b1), c.control2().plus(b2), end);
    }

    /** What the change costs: how much lower the cap is, or higher. */
    List<Finding> findings(double by) throws Refusal {
        SleeveShape shape = shape(by);
        double before = 0;
        for (int i = 0; i < parts.outline().segments().size(); i++) {
            if (parts.part(i) == SleeveParts.Part.CAP) {
                before = Math.max(before, shape.above(parts.outline().segments().get(i)));
            }
        }
        double after = before * shape.squash();
        return List.of(Finding.of("cap-height", Severity.CAUTION, piece().name())
                .with("before", before)
                .with("after", after)
                .with("change.signed", after - before));
    }
}
