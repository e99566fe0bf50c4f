package easewright.alter;

import easewright.alter.LaidStroke.Lay;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.measure.StitchOutline.Hold;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bends an edge near a corner so that it leaves the corner at another angle. The corner and the guide, which is the seam,
 * fold or centre line there, stay. Where the edge is measured or protected, its sewn length is given back by moving the
 * corner a hair along the edge, with the seam dying away to nothing below.
 */
final class CornerBend {
    /** The edge is redrawn over this much at most, mm; at least 12 mm from a seam is common practice (docs/sources.md 4.5). */
    private static final double LONGEST = 60;

    static final double SHORTEST = 12;

    /** Where no length can be given back, the bend is kept so short that no more than this is added, mm. */
    private static final double ADDED = 0.001;

    /** Angles are met within this, radians; the promise is 1°. */
    private static final double TRUE_WITHIN = 1e-7;

    private static final double KEPT = 1e-4;
    private static final int STEPS = 8;

    private final SewnCorner corner;
    private final List<Level> levels;
    private final double more;
    private final boolean forward;
    private final Point along;
    private final Point away;

    /**
     * @param more by how much the angle through the cloth is to grow, radians
     */
    CornerBend(SewnCorner corner, double more) {
        this.corner = corner;
        this.levels = corner.sewn().levels();
        this.more = more;
        this.forward = corner.guideAtEnd();
        this.along = corner.alongGuide();
        Point square = along.quarterTurned();
        this.away = square.dot(corner.alongEdge()) >= 0 ? square : square.times(-1);
    }

    List<Stroke> strokes() throws Refusal {
        if (away.dot(corner.alongEdge()) < 0.2) {
            throw Refusal.of("corner-too-sharp")
                    .with("piece", corner.piece().name())
                    .with("edge", corner.edge().name());
        }
        LaidStroke bent = bent();
        List<Stroke> strokes = new ArrayList<>(List.of(bent));
        if (keepsLength()) {
            Optional<Stroke> slid = slid(bent.on(corner.piece()));
            slid.ifPresent(strokes::add);
        }
        return strokes;
    }

    private Piece piece() {
        return corner.piece();
    }

    private LaidStroke bent() throws Refusal {
        double angle = corner.angle() + more;
        double m = slope();
        double v = 0;
        Point sewn = corner.hold().sewn();
        if (piece().drawn() == LineKind.STITCHING) {
            return stroke(m, 0);
        }
        // On a cutting line the sewn corner must stay and the sewn angle come right: two unknowns, nearly linear.
        for (int i = 0; i < STEPS; i++) {
            double[] miss = miss(m, v, angle, sewn);
            if (Math.abs(miss[0]) < TRUE_WITHIN && Math.abs(miss[1]) < 1e-7) {
                break;
            }
            double step = 1e-4;
            double[] byM = miss(m + step, v, angle, sewn);
            double[] byV = miss(m, v + step, angle, sewn);
            double a = (byM[0] - miss[0]) / step;
            double b = (byV[0] - miss[0]) / step;
            double c = (byM[1] - miss[1]) / step;
            double d = (byV[1] - miss[1]) / step;
            double det = a * d - b * c;
            if (Math.abs(det) < 1e-12) {
                break;
            }
            m -= (d * miss[0] - b * miss[1]) / det;
            v -= (a * miss[1] - c * miss[0]) / det;
        }
        return stroke(m, v);
    }

    private double[] miss(double m, double v, double angle, Point sewn) throws Refusal {
        SewnPiece trial = new SewnPiece(stroke(m, v).on(piece()), levels);
        Edge guide = trial.piece().edge(corner.guide().name()).orElseThrow();
        SewnCorner there =
                SewnCorner.of(trial, guide, corner.guideAtEnd()).orElseThrow(() -> Refusal.of("truing-not-exact"));
        return new double[] {
            there.angle() - angle, there.hold().sewn().minus(sewn).dot(along)
        };
    }

    /** By how much the edge is to rise more steeply against the guide, in mm along it to the mm away from it. */
    private double slope() {
        Point is = corner.alongEdge();
        Point one = is.turned(more);
        Point other = is.turned(-more);
        double toOne = corner.through(along, one) - corner.angle();
        Point wanted = Math.signum(toOne) == Math.signum(more) && Math.abs(toOne) < 1 ? one : other;
        return wanted.dot(along) / wanted.dot(away) - is.dot(along) / is.dot(away);
    }

    private LaidStroke stroke(double m, double v) throws Refusal {
        Hold hold = corner.hold();
        Point drawn = forward
                ? corner.sewn().run(corner.edge()).start()
                : corner.sewn().run(corner.edge()).end();
        Point own = hold.across(!forward);
        // The drawn corner slides along the guide's line, if there is some of it beyond the sewn corner.
        boolean slides = own.distance(drawn) > 0.05;
        Point foot = slides ? hold.across(forward) : drawn;
        boolean apart = drawn.distance(foot) > 0.05;
        double there = slides ? v : 0;
        double atCorner = apart ? there + m * away.dot(drawn.minus(foot)) : there;
        List<Lay> lays = new ArrayList<>();
        if (slides && atCorner != 0) {
            lays.add(forward ? Lay.even(own, drawn, 0, atCorner) : Lay.even(drawn, own, atCorner, 0));
        }
        if (apart) {
            lays.add(lay(drawn, atCorner, m, foot, there, m));
        }
        lays.add(lay(apart ? foot : drawn, there, m, until(foot), 0, 0));
        return new LaidStroke(piece().id(), along, lays);
    }

    /** A run that leaves the corner, by values and slopes to the mm, written in the drawn direction. */
    private Lay lay(Point near, double first, double slope1, Point far, double last, double slope2) {
        double way = away.dot(far.minus(near));
        return forward
                ? Lay.cubic(near, far, first, slope1 * way, last, slope2 * way)
                : Lay.cubic(far, near, last, -slope2 * way, first, -slope1 * way);
    }

    /** Where the bend has died away: a third of the edge on, before any dart. */
    private Point until(Point foot) throws Refusal {
        Curve drawn = corner.edge().on(piece().outline());
        Curve line = forward ? drawn : drawn.reversed();
        double start = line.lengthTo(line.nearest(foot).place());
        double room = (line.length() - start) / 3;
        for (SewnPiece.Mark mouth : corner.sewn().mouthEnds()) {
            Point near = mouth.hold().end(!forward);
            if (line.nearest(near).distance() <= Shift.ON_OUTLINE) {
                room = Math.min(room, line.lengthTo(line.nearest(near).place()) - start - 1);
            }
        }
        if (room < SHORTEST / 2) {
            throw Refusal.of("no-room-to-true")
                    .with("piece", piece().name())
                    .with("edge", corner.edge().name());
        }
        double wanted = keepsLength() || !matters() ? LONGEST : Math.max(SHORTEST / 2, within(more, LONGEST));
        return line.pointAtLength(start + Math.min(wanted, room));
    }

    /** How long a bend by an angle may be so that next to no length is added: the line grows by its square, over 15. */
    static double within(double turn, double most) {
        return Math.min(most, ADDED * 15 / (turn * turn));
    }

    /** Whether the length of the edge is measured or to be kept. */
    private boolean matters() {
        boolean measured = piece().levels().stream()
                .anyMatch(m -> m.along().filter(corner.edge().name()::equals).isPresent());
        return measured || corner.edge().isProtected();
    }

    private boolean keepsLength() {
        return corner.guide().role() == EdgeRole.SEAM && matters();
    }

    /** The corner moved along the edge until the edge is as long as it was. */
    private Optional<Stroke> slid(Piece bent) throws Refusal {
        double length = sewn(piece());
        double gained = sewn(bent) - length;
        if (Math.abs(gained) <= KEPT / 10) {
            return Optional.empty();
        }
        double found = Root.of(
                mm -> sewn(slide(bent, mm).on(bent)) - length,
                gained,
                gained,
                KEPT / 100,
                KEPT,
                Refusal.of("edge-length-not-met")
                        .with("piece", piece().name())
                        .with("edge", corner.edge().name()));
        return Optional.of(slide(bent, found));
    }

    private double sewn(Piece of) throws Refusal {
        return Measures.of(of, List.of())
                .edge(corner.edge().name())
                .orElseThrow(() -> Refusal.of("truing-not-exact"))
                .mm();
    }

    private LaidStroke slide(Piece bent, double mm) {
        SewnPiece now = new SewnPiece(bent, levels);
        Edge edge = bent.edge(corner.edge().name()).orElseThrow();
        Edge guide = bent.edge(corner.guide().name()).orElseThrow();
        Hold hold = now.corner(guide, corner.guideAtEnd());
        Point onEdge = hold.end(forward);
        Point onGuide = hold.end(!forward);
        List<Lay> lays = new ArrayList<>();
        Point edgeEnd = far(bent, edge, onEdge, forward, LONGEST);
        Point guideEnd = far(bent, guide, onGuide, !forward, guideRoom(now, guide, onGuide));
        if (forward) {
            lays.add(Lay.cubic(guideEnd, onGuide, 0, 0, mm, 0));
            if (onGuide.distance(onEdge) > 0.05) {
                lays.add(Lay.even(onGuide, onEdge, mm, mm));
            }
            lays.add(Lay.stretch(onEdge, edgeEnd, mm, 0));
        } else {
            lays.add(Lay.stretch(edgeEnd, onEdge, 0, mm));
            if (onGuide.distance(onEdge) > 0.05) {
                lays.add(Lay.even(onEdge, onGuide, mm, mm));
            }
            lays.add(Lay.cubic(onGuide, guideEnd, mm, 0, 0, 0));
        }
        return new LaidStroke(bent.id(), away, lays);
    }

    private static Point far(Piece piece, Edge edge, Point from, boolean ahead, double most) {
        Curve drawn = edge.on(piece.outline());
        Curve line = ahead ? drawn : drawn.reversed();
        double start = line.lengthTo(line.nearest(from).place());
        return line.pointAtLength(start + Math.min(most, (line.length() - start) / 3));
    }

    /** Down to the first level that the guide meets, so that no width there changes. */
    private double guideRoom(SewnPiece now, Edge guide, Point from) {
        double room = LONGEST;
        for (Level level : levels) {
            boolean counts =
                    now.piece().level(level.name()).map(LevelMark::counts).orElse(false);
            Optional<LevelReach> reach = counts ? LevelReach.of(now, guide, level) : Optional.empty();
            if (reach.isPresent() && !reach.get().corner()) {
                room = Math.min(room, Math.abs(along.dot(reach.get().drawn().minus(from))) - 1);
            }
        }
        return Math.max(room, 1);
    }
}
