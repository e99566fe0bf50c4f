package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A piece whose stitching line and cutting line are both drawn: which is which, and which of them is the piece's own. */
public final class TwoLines {
    /** A line farther than this from the outline somewhere has nothing to do with it, mm. */
    private static final double FARTHEST = 40;

    /** Of two lines that belong together the inner one holds at least this part of the outer one's area. */
    private static final double LEAST_OF_AREA = 0.3;

    /** The inner line may cross the outer one by this much, as drawn by hand, mm. */
    private static final double ACROSS = 1;

    /** An allowance that differs from the usual one by less than this is no other one, mm. */
    private static final double SAME_ALLOWANCE = 0.3;

    /** A corner lies this many allowances from that of the other line at most. */
    private static final double CORNER = 2.2;

    private TwoLines() {}

    /**
     * How a closed line lies beside the outline of a piece.
     *
     * @param around whether it lies outside
     * @param usual  the distance along most of it, mm
     * @param even   whether it is as a stitching and a cutting line are
     */
    public record Beside(boolean around, double usual, boolean even) {}

    /**
     * Empty for a line that crosses the outline, lies on it, or is far from it somewhere. Of a piece that was changed the
     * outline as it was drawn counts, since the line stayed where it was.
     */
    public static Optional<Beside> beside(Piece piece, Outline line) {
        Outline own = piece.original().orElse(piece.outline());
        double mine = Math.abs(own.signedArea());
        double its = Math.abs(line.signedArea());
        boolean around = its > mine;
        Outline inner = around ? own : line;
        Outline outer = around ? line : own;
        Box reach = inner.box().grown(FARTHEST * 2);
        boolean near = Math.min(mine, its) >= LEAST_OF_AREA * Math.max(mine, its)
                && outer.box().grown(ACROSS).contains(inner.box())
                && reach.contains(outer.box())
                && inner.segments().stream()
                        .map(Segment::start)
                        .allMatch(p -> outer.contains(p) || outer.comesWithin(p, ACROSS));
        if (!near) {
            return Optional.empty();
        }
        LineInside lies = new LineInside(inner, outer);
        boolean even = lies.isStitchingLine();
        return even || lies.isApart() && lies.most() <= FARTHEST
                ? Optional.of(new Beside(around, Rounding.meant(lies.usual()), even))
                : Optional.empty();
    }

    /** The piece with its outline as it is and the other line going along, at the distance at which it is drawn. */
    public static Piece along(Piece piece, Rider line) {
        Outline other = outline(piece, line).orElseThrow();
        boolean around = Math.abs(other.signedArea()) > Math.abs(piece.outline().signedArea());
        List<Rider> riders = new ArrayList<>();
        riders.add(line.as(Rider.Kind.PARALLEL));
        piece.riders().stream()
                .filter(r -> !r.id().equals(line.id()))
                .map(TwoLines::nowInner)
                .forEach(riders::add);
        return measured(piece.toBuilder().riders(riders).build(), other, around);
    }

    /** There is one line that goes along, and one that did so before is a line like others. */
    private static Rider nowInner(Rider rider) {
        return rider.kind() == Rider.Kind.PARALLEL ? rider.as(Rider.Kind.INNER) : rider;
    }

    private static Piece measured(Piece piece, Outline other, boolean otherAround) {
        double usual = Rounding.meant(lies(piece.outline(), other).usual());
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            double own = Rounding.meant(distance(edge.on(piece.outline()), other));
            edges.add(new Edge(
                    edge.name(),
                    edge.role(),
                    edge.from(),
                    edge.to(),
                    edge.isProtected(),
                    Math.abs(own - usual) > SAME_ALLOWANCE ? OptionalDouble.of(own) : OptionalDouble.empty()));
        }
        return piece.toBuilder()
                .drawn(otherAround ? LineKind.STITCHING : LineKind.CUTTING, usual)
                .edges(edges)
                .build();
    }

    private static LineInside lies(Outline one, Outline other) {
        return Math.abs(one.signedArea()) < Math.abs(other.signedArea())
                ? new LineInside(one, other)
                : new LineInside(other, one);
    }

    /** The distance in the middle of those along a run, mm. */
    private static double distance(Curve run, Outline other) {
        double length = run.length();
        double[] away = new double[7];
        for (int i = 0; i < away.length; i++) {
            away[i] = other.nearest(run.pointAtLength(length * (i + 1) / (away.length + 1)))
                    .distance();
        }
        Arrays.sort(away);
        return away[away.length / 2];
    }

    /**
     * Whether the other line can become the piece's own: it is closed, the outline is not put together from several lines,
     * and no change was made to it.
     */
    public static boolean canChange(Piece piece, Rider line) {
        return piece.original().isEmpty() && isOneLine(piece) && isClosed(line);
    }

    /** Whether the outline is one line, which can go along with another. */
    public static boolean isOneLine(Piece piece) {
        return !piece.id().contains(" ");
    }

    private static boolean isClosed(Rider line) {
        List<Pen> pens = Pen.of(line);
        return pens.size() == 1 && pens.get(0).closed();
    }

    /** The outline that a line is, closed along the outline of the piece where it ends on that, as at a fold. */
    public static Optional<Outline> outline(Piece piece, Rider line) {
        return isClosed(line)
                ? Optional.of(new Outline(line.segments()))
                : SewnInside.of(piece, line).map(SewnInside::outline);
    }

    /**
     * The other line as the piece's own, under its id, with all marks laid on it, and the one that was its own going
     * along.
     *
     * @param was id by which the line that was the piece's own goes along
     */
    public static Piece changed(Piece piece, Rider line, String was) {
        Outline own = new Outline(line.segments());
        boolean around = Math.abs(own.signedArea()) > Math.abs(piece.outline().signedArea());
        boolean turned = own.signedArea() * piece.outline().signedArea() < 0;
        double usual = lies(piece.outline(), own).usual();
        Map<Point, Point> corners = new HashMap<>();
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Point from = corners.computeIfAbsent(edge.from(), p -> across(p, piece.outline(), own, usual));
            Point to = corners.computeIfAbsent(edge.to(), p -> across(p, piece.outline(), own, usual));
            edges.add(edge.withEnds(turned ? to : from, turned ? from : to));
        }
        if (turned) {
            Collections.reverse(edges);
        }
        List<LevelMark> levels = piece.levels().stream()
                .map(l -> l.reference()
                        .filter(corners::containsKey)
                        .map(r -> l.withReference(corners.get(r)))
                        .orElse(l))
                .toList();
        List<Notch> notches = piece.notches().stream()
                .map(n -> new Notch(n.name(), own.nearest(n.at()).point()))
                .toList();
        List<Rider> riders = new ArrayList<>();
        riders.add(new Rider(was, Rider.Kind.PARALLEL, piece.outline().segments()));
        piece.riders().stream()
                .filter(r -> !r.id().equals(line.id()))
                .map(TwoLines::nowInner)
                .forEach(riders::add);
        Piece laid = new Piece(
                line.id(),
                piece.name(),
                own,
                piece.drawn(),
                piece.allowance(),
                piece.times(),
                piece.layers(),
                piece.onFold(),
                edges,
                levels,
                around
                        ? piece.darts()
                        : piece.darts().stream().map(d -> onLine(d, own)).toList(),
                notches,
                piece.grain(),
                riders,
                Optional.empty(),
                piece.size(),
                piece.side());
        return measured(laid, piece.outline(), !around);
    }

    /** With its mouth on the stitching line, also where that lies inside the outline. */
    private static Dart onLine(Dart dart, Outline sewn) {
        return dart.otherPoint().isPresent()
                ? dart
                : dart.mapped(p -> p.equals(dart.point()) ? p : sewn.nearest(p).point());
    }

    /** For places on the outline of a piece those of the other line that they belong to. */
    public static UnaryOperator<Point> across(Piece piece, Rider line) {
        Outline own = new Outline(line.segments());
        double usual = lies(piece.outline(), own).usual();
        return p -> across(p, piece.outline(), own, usual);
    }

    /** The place of the other line that a place of the one belongs to: for a corner the corner near it, else the nearest. */
    private static Point across(Point p, Outline one, Outline other, double usual) {
        Nearest nearest = other.nearest(p);
        double reach = CORNER * Math.max(usual, nearest.distance());
        return corners(one).noneMatch(c -> c.distance(p) <= ACROSS)
                ? nearest.point()
                : corners(other)
                        .filter(c -> c.distance(p) <= reach)
                        .min(Comparator.comparingDouble(c -> c.distance(p)))
                        .orElse(nearest.point());
    }

    private static Stream<Point> corners(Outline outline) {
        return Corners.of(outline, List.of()).corners().stream().map(Corners.Corner::at);
    }
}
