package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a larger or smaller size that reaches a girth would have done to everything else, beside what the local change
 * does: the next size that the file itself holds, or where it holds none, its pieces scaled.
 *
 * @param level      the level whose girth was the aim
 * @param target     the girth aimed at, mm
 * @param own        the file's own size that is compared; empty where pieces are scaled
 * @param acrossBy   factor by which every piece would be scaled across the grain only; with a size of its own, by which
 *                   that is wider at the level
 * @param wholeBy    the same for pieces scaled both ways, which reach a girth along a slanting edge a little sooner
 * @param lines      shoulder, neck, armhole and cap where the pattern has them, the length, and the other girths
 */
public record SizeUp(
        String level, double target, Optional<String> own, double acrossBy, double wholeBy, List<Line> lines) {
    /** The edges that fitters least want changed (E-372: "Do not change the shape of the shoulders, armholes or
     * neckline any more than necessary", docs/sources.md 4.2), and the cap, which must follow the armhole. */
    private static final List<EdgeRole> WATCHED =
            List.of(EdgeRole.SHOULDER, EdgeRole.NECK, EdgeRole.ARMHOLE, EdgeRole.CAP, EdgeRole.CROTCH);

    /** What a line of the comparison is about. */
    public enum Kind {
        /** The edges of one role, sewn length: the neck all round, the others on one side, sleeve or seam. */
        EDGES,
        /** The girth at a level. */
        GIRTH,
        /** The longest piece along its grain, from its highest to its lowest point. */
        LENGTH
    }

    /**
     * One measure four ways, mm.
     *
     * @param name   the role in lower case, the level, or the piece
     * @param before as it was
     * @param local  after the local change
     * @param across in the file's own size, or after scaling every piece across the grain only
     * @param whole  the same, or after scaling every piece both ways
     */
    public record Line(Kind kind, String name, double before, double local, double across, double whole) {}

    public SizeUp {
        lines = List.copyOf(lines);
    }

    /**
     * Compares a local change with scaling.
     *
     * @param before the pattern
     * @param local  the pattern after the local change, which gives the girth aimed at
     * @throws Refusal if the pattern has no girth at the level
     */
    public static SizeUp of(Pattern before, Pattern local, String level) throws Refusal {
        return scaled(before, local, level);
    }

    /**
     * Compares a local change in one of several sizes with the size of the same file that would have reached the girth,
     * or else comes nearest to it.
     *
     * @param before all sizes
     * @param local  all sizes after the local change
     * @param size   the size that was changed; empty where the pattern comes in one
     * @throws Refusal if the pattern has no girth at the level
     */
    public static SizeUp of(Pattern before, Pattern local, String level, Optional<String> size) throws Refusal {
        if (size.isEmpty() || !PatternPart.severalSizes(before)) {
            return scaled(before, local, level);
        }
        Pattern was = PatternPart.ofSize(before, size.get()).alone();
        Pattern is = PatternPart.ofSize(local, size.get()).alone();
        Optional<String> next = next(before, was, girth(Measures.of(is), level), level);
        return next.isEmpty()
                ? scaled(was, is, level)
                : own(was, is, PatternPart.ofSize(before, next.get()).alone(), next.get(), level);
    }

    /** The first size on the way to the girth that reaches it, or the last one on that way; none if there is none. */
    private static Optional<String> next(Pattern all, Pattern was, double target, String level) throws Refusal {
        double from = girth(Measures.of(was), level);
        double way = Math.signum(target - from);
        String best = null;
        double bestBy = 0;
        for (String size : PatternPart.sizes(all)) {
            Optional<Girth> girth =
                    Measures.of(PatternPart.ofSize(all, size).alone()).girth(level);
            double by = girth.map(g -> (g.finished() - from) * way).orElse(0.0);
            boolean reaches = by >= Math.abs(target - from) - 1e-6;
            boolean bestReaches = bestBy >= Math.abs(target - from) - 1e-6;
            boolean better = bestReaches ? reaches && by < bestBy : by > bestBy;
            if (by > 1e-6 && better) {
                best = size;
                bestBy = by;
            }
        }
        return Optional.ofNullable(best);
    }

    private static SizeUp own(Pattern before, Pattern local, Pattern other, String size, String level) throws Refusal {
        GarmentMeasures was = Measures.of(before);
        GarmentMeasures is = Measures.of(local);
        GarmentMeasures there = Measures.of(other);
        List<Line> lines = new ArrayList<>();
        for (EdgeRole role : WATCHED) {
            double length = SewnOnce.length(before, was, role);
            double own = SewnOnce.length(other, there, role);
            if (length > 0 && own > 0) {
                lines.add(
                        new Line(Kind.EDGES, Settings.name(role), length, SewnOnce.length(local, is, role), own, own));
            }
        }
        Piece longest = longest(before);
        Optional<Piece> like = other.piece(longest.plainName());
        if (like.isPresent()) {
            double own = sewn(like.get(), there);
            double length = sewn(longest, was);
            double now = local.piece(longest.id()).map(p -> sewn(p, is)).orElse(length);
            lines.add(new Line(Kind.LENGTH, longest.plainName(), length, now, own, own));
        }
        for (Level each : before.levels()) {
            boolean both = measured(was, each) && measured(there, each);
            if (both) {
                double own = girth(there, each.name());
                lines.add(new Line(Kind.GIRTH, each.name(), girth(was, each.name()), girth(is, each.name()), own, own));
            }
        }
        double target = girth(is, level);
        double wider = girth(there, level) / girth(was, level);
        return new SizeUp(level, target, Optional.of(size), wider, wider, lines);
    }

    private static boolean measured(GarmentMeasures measures, Level level) {
        return measures.girths().stream()
                .anyMatch(
                        g -> g.level().name().equals(level.name()) && !g.parts().isEmpty());
    }

    private static SizeUp scaled(Pattern before, Pattern local, String level) throws Refusal {
        GarmentMeasures was = Measures.of(before);
        GarmentMeasures is = Measures.of(local);
        double from = girth(was, level);
        double target = girth(is, level);
        double factor = factor(before, level, from, target, false);
        double both = factor(before, level, from, target, true);
        GarmentMeasures across = Measures.of(scaled(before, factor, 1));
        GarmentMeasures whole = Measures.of(scaled(before, both, both));
        List<Line> lines = new ArrayList<>();
        for (EdgeRole role : WATCHED) {
            double length = SewnOnce.length(before, was, role);
            if (length > 0) {
                lines.add(new Line(
                        Kind.EDGES,
                        Settings.name(role),
                        length,
                        SewnOnce.length(local, is, role),
                        SewnOnce.length(before, across, role),
                        SewnOnce.length(before, whole, role)));
            }
        }
        Piece longest = longest(before);
        double length = sewn(longest, was);
        double localLength = local.piece(longest.id()).map(p -> sewn(p, is)).orElse(length);
        lines.add(new Line(
                Kind.LENGTH, longest.name(), length, localLength, sewn(longest, across), sewn(longest, whole)));
        for (Level other : before.levels()) {
            if (measured(was, other)) {
                lines.add(new Line(
                        Kind.GIRTH,
                        other.name(),
                        girth(was, other.name()),
                        girth(is, other.name()),
                        girth(across, other.name()),
                        girth(whole, other.name())));
            }
        }
        return new SizeUp(level, target, Optional.empty(), factor, both, lines);
    }

    /**
     * Scaling leaves the allowance as it is, so that the factor is not quite the ratio of the girths: secant.
     *
     * @param both whether the pieces are scaled along the grain as well
     */
    private static double factor(Pattern before, String level, double from, double target, boolean both)
            throws Refusal {
        double last = 1;
        double lastMiss = from - target;
        double factor = target / from;
        for (int i = 0; i < 20; i++) {
            double miss = girth(Measures.of(scaled(before, factor, both ? factor : 1)), level) - target;
            if (Math.abs(miss) < 1e-6 || miss == lastMiss) {
                return factor;
            }
            double next = factor - miss * (factor - last) / (miss - lastMiss);
            last = factor;
            lastMiss = miss;
            factor = next;
        }
        return factor;
    }

    private static double girth(GarmentMeasures measures, String level) throws Refusal {
        // Where left and right have each their own, a size would have to reach the larger.
        Girth girth = measures.girths().stream()
                .filter(g -> g.level().name().equals(level))
                .max(Comparator.comparingDouble(Girth::finished))
                .orElseThrow(() -> Refusal.of("level-unknown").with("level", level));
        if (girth.parts().isEmpty()) {
            throw Refusal.of("level-without-piece").with("level", level);
        }
        return girth.finished();
    }

    /** The longest along its grain of the pieces that go round the body. */
    private static Piece longest(Pattern pattern) {
        // A band is the longest thing along its own grain, and says nothing of the garment's length.
        List<Piece> around = pattern.pieces().stream()
                .filter(p -> p.levels().stream().anyMatch(m -> m.counts()))
                .toList();
        Piece longest = around.isEmpty() ? pattern.pieces().get(0) : around.get(0);
        for (Piece piece : around) {
            longest = along(piece) > along(longest) ? piece : longest;
        }
        return longest;
    }

    /** How long a piece is along its grain from stitching line to stitching line, from its highest to its lowest point, mm. */
    private static double sewn(Piece piece, GarmentMeasures measures) {
        return measures.piece(piece.id())
                .map(m -> along(piece, m.stitch().outline()))
                .orElseGet(() -> along(piece));
    }

    /** Extent along the grain as drawn, mm. */
    private static double along(Piece piece) {
        return along(piece, piece.outline());
    }

    private static double along(Piece piece, Outline outline) {
        Point grain = piece.grainDirection();
        // Turned so that the grain points down the page, the box is as high as the piece is long.
        Affine upright = new Affine(grain.y(), grain.x(), -grain.x(), grain.y(), 0, 0);
        Box box = outline.transformed(upright).box();
        return box.height();
    }

    private static Pattern scaled(Pattern pattern, double across, double along) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            pieces.add(scaled(piece, across, along));
        }
        return pattern.withPieces(pieces);
    }

    private static Piece scaled(Piece piece, double across, double along) {
        Point g = piece.grainDirection();
        // along · g gᵀ + across · (1 − g gᵀ), about the middle of the piece.
        double xx = along * g.x() * g.x() + across * g.y() * g.y();
        double xy = (along - across) * g.x() * g.y();
        double yy = along * g.y() * g.y() + across * g.x() * g.x();
        Point middle = piece.outline().box().centre();
        Affine map = Affine.translation(middle)
                .after(new Affine(xx, xy, xy, yy, 0, 0))
                .after(Affine.translation(middle.times(-1)));
        List<Edge> edges = piece.edges().stream()
                .map(e -> e.withEnds(map.apply(e.from()), map.apply(e.to())))
                .toList();
        return piece.toBuilder()
                .outline(piece.outline().transformed(map))
                .edges(edges)
                .darts(piece.darts().stream().map(d -> d.mapped(map::apply)).toList())
                .levels(piece.levels().stream()
                        .map(m -> m.through()
                                .map(p -> m.withThrough(map.apply(p)))
                                .orElse(m))
                        .map(m -> m.overlap() == 0 ? m : m.withOverlap(m.overlap() * across))
                        .toList())
                .build();
    }
}
