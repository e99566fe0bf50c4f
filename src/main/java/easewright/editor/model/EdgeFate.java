package easewright.editor.model;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a change did to one edge of a piece that changed.
 *
 * @param run  the edge as it is now, on the outline as drawn
 * @param grew by how much it is longer, or with a minus shorter, where its line only runs on further or ends sooner than
 *             before, mm; 0 where the line itself has changed or nothing has
 */
public record EdgeFate(Piece piece, Edge edge, Fate fate, List<Segment> run, double grew) {
    /** Less than this cannot be seen or cut, mm. */
    private static final double SEEN = 0.02;

    private static final int LOOKS = 24;

    /** How an edge came through a change. */
    public enum Fate {
        /** It lies where it lay. */
        STAYED,
        /** It lies elsewhere with the same length and shape. */
        CARRIED,
        /** It has another shape or length. */
        RESHAPED
    }

    public EdgeFate {
        run = List.copyOf(run);
    }

    /** The fates of all edges of the pieces that a change touched, also of those it made for one side. */
    static List<EdgeFate> of(Pattern before, Pattern after) {
        Map<String, Piece> known = new HashMap<>();
        before.pieces().forEach(p -> known.put(p.id(), p));
        List<EdgeFate> fates = new ArrayList<>();
        for (Piece now : after.pieces()) {
            Piece was = known.get(now.id());
            if (was == null) {
                asItWas(now, before, after).ifPresent(both -> mirrored(both, now, fates));
            } else if (was != now && !was.equals(now)) {
                for (Edge edge : now.edges()) {
                    Curve run = edge.on(now.outline());
                    was.edge(edge.name())
                            .map(e -> e.on(was.outline()))
                            .ifPresent(old -> fates.add(of(now, edge, old, run)));
                }
            }
        }
        return List.copyOf(fates);
    }

    /** A piece that a change made for one side, as it was while it was cut alike for both. */
    static Optional<Piece> asItWas(Piece made, Pattern before, Pattern after) {
        return after.pieces().stream()
                .filter(p -> p.side() != Side.BOTH
                        && p.side() == made.side().other()
                        && p.size().equals(made.size())
                        && p.plainName().equals(made.plainName()))
                .findFirst()
                .flatMap(twin -> before.piece(twin.id()));
    }

    /** A mirrored piece lies elsewhere, so its edges are compared by their shape alone. */
    private static void mirrored(Piece both, Piece now, List<EdgeFate> fates) {
        for (Edge edge : now.edges()) {
            Curve run = edge.on(now.outline());
            both.edge(edge.name()).map(e -> e.on(both.outline())).ifPresent(old -> {
                boolean alike = alike(old, run, false) || alike(old, run, true);
                fates.add(new EdgeFate(now, edge, alike ? Fate.STAYED : Fate.RESHAPED, run.segments(), 0));
            });
        }
    }

    /** Whether all points lie as far from both ends, which tells a shape up to its mirror image. */
    private static boolean alike(Curve old, Curve now, boolean backwards) {
        double oldLength = old.length();
        double nowLength = now.length();
        boolean alike = Math.abs(oldLength - nowLength) <= SEEN;
        Point nowStart = backwards ? now.end() : now.start();
        Point nowEnd = backwards ? now.start() : now.end();
        for (int i = 0; alike && i <= LOOKS; i++) {
            Point was = old.pointAtLength(oldLength * i / LOOKS);
            Point is = now.pointAtLength(nowLength * (backwards ? LOOKS - i : i) / LOOKS);
            alike = Math.abs(was.distance(old.start()) - is.distance(nowStart)) <= SEEN
                    && Math.abs(was.distance(old.end()) - is.distance(nowEnd)) <= SEEN;
        }
        return alike;
    }

    private static EdgeFate of(Piece now, Edge edge, Curve old, Curve run) {
        Fate fate = fate(old, run);
        boolean grew = fate == Fate.RESHAPED && (lieOneInOther(old, run, false) || lieOneInOther(old, run, true));
        return new EdgeFate(now, edge, fate, run.segments(), grew ? run.length() - old.length() : 0);
    }

    /** Whether the shorter of two lines is the beginning of the longer one, or its end. */
    private static boolean lieOneInOther(Curve old, Curve now, boolean atEnd) {
        double oldLength = old.length();
        double nowLength = now.length();
        double both = Math.min(oldLength, nowLength);
        boolean alike = Math.abs(oldLength - nowLength) > SEEN;
        for (int i = 0; alike && i <= LOOKS; i++) {
            double far = both * i / LOOKS;
            Point was = old.pointAtLength(atEnd ? oldLength - far : far);
            Point is = now.pointAtLength(atEnd ? nowLength - far : far);
            alike = was.distance(is) <= SEEN;
        }
        return alike;
    }

    private static Fate fate(Curve old, Curve now) {
        if (old.segments().equals(now.segments())) {
            return Fate.STAYED;
        }
        double oldLength = old.length();
        double nowLength = now.length();
        Point way = now.start().minus(old.start());
        boolean carried = Math.abs(oldLength - nowLength) <= SEEN;
        for (int i = 0; carried && i <= LOOKS; i++) {
            Point was = old.pointAtLength(oldLength * i / LOOKS);
            Point is = now.pointAtLength(nowLength * i / LOOKS);
            carried = is.minus(was).distance(way) <= SEEN;
        }
        if (!carried) {
            return Fate.RESHAPED;
        }
        return way.norm() <= SEEN ? Fate.STAYED : Fate.CARRIED;
    }
}
