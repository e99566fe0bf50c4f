package easewright.alter;

import easewright.alter.LaidStroke.Lay;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bends an edge of a stitching line near a corner so that it leaves the corner at another angle. The guide, which is the
 * seam, fold or centre line there, keeps its line. Where the edge is measured or protected, its sewn length is given back:
 * at a seam by moving the corner a hair along the edge, with the seam dying away to nothing below; at a fold or centre
 * line, if a bend of 6 mm is not short enough to leave the length as it was, by moving the corner a hair along the fold.
 */
final class CornerBend {
    /** The edge is redrawn over this much at most, mm; at least 12 mm from a seam is common practice (docs/sources.md 4.5). */
    private static final double LONGEST = 60;

    static final double SHORTEST = 12;

    /** The same where the corner slides along the fold. */
    private static final double LONGEST_SLIDING = 24;

    /** Where no length can be given back, the bend is kept so short that no more than this is added, mm. */
    private static final double ADDED = 0.001;

    /** An edge may change by this before its length is given back, mm: it counts up to four times in a girth. */
    private static final double UNGIVEN = 0.002;

    private static final double KEPT = 1e-4;

    private final SewnCorner corner;
    private final List<Level> levels;
    private final double more;
    private final boolean forward;
    private final Point at;
    private final Point along;
    private final Point away;
    private final boolean inOneCurve;

    /**
     * @param corner     of a piece drawn by its stitching line
     * @param more       by how much the angle through the cloth is to grow, radians
     * @param inOneCurve whether waist and hem are drawn in one curve from the corner to what stays, where that may be
     */
    CornerBend(SewnCorner corner, double more, boolean inOneCurve) {
        this.inOneCurve = inOneCurve;
        this.corner = corner;
        this.levels = corner.sewn().levels();
        this.more = more;
        this.forward = corner.guideAtEnd();
        this.at = corner.hold().sewn();
        this.along = corner.alongGuide();
        Point square = along.quarterTurned();
        this.away = square.dot(corner.alongEdge()) >= 0 ? square : square.times(-1);
    }

    List<Stroke> strokes() throws Refusal {
        if (away.dot(corner.alongEdge()) < 0.2) {
            throw Refusal.of("corner-too-sharp")
                    .with("piece", piece().name())
                    .with("edge", corner.edge().name());
        }
        boolean atSeam = corner.guide().role() == EdgeRole.SEAM;
        LaidStroke bent = bend(0, atSeam && matters() || !matters() ? LONGEST : within(more, LONGEST));
        List<Stroke> strokes = new ArrayList<>(List.of(bent));
        Piece now = bent.on(piece());
        if (atSeam || !matters()) {
            for (Stroke stroke : inOneCurve(now).strokes(now)) {
                strokes.add(stroke);
                now = stroke.on(now);
            }
        }
        if (matters()) {
            double gained = sewn(now) - sewn(piece());
            if (atSeam) {
                slid(now, gained).ifPresent(strokes::add);
            } else if (Math.abs(gained) > UNGIVEN) {
                return bentAndSlid();
            }
        }
        return strokes;
    }

    private OneCurve inOneCurve(Piece bent) {
        return inOneCurve ? OneCurve.of(piece(), bent) : OneCurve.NONE;
    }

    /** Whether the corner has to move along its guide, which grows or shrinks by as much. */
    boolean movesGuide() throws Refusal {
        return matters()
                && corner.guide().role() != EdgeRole.SEAM
                && Math.abs(sewn(bend(0, within(more, LONGEST)).on(piece())) - sewn(piece())) > UNGIVEN;
    }

    private Piece piece() {
        return corner.piece();
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

    /**
     * The edge bent to the wanted angle.
     *
     * @param slide by how much the corner moves into the piece along the guide, mm
     */
    private LaidStroke bend(double slide, double longest) throws Refusal {
        Point until = until(longest);
        double way = away.dot(until.minus(at));
        double slope = slope() * way;
        List<Lay> lays = new ArrayList<>();
        lays.add(forward ? Lay.cubic(at, until, slide, slope, 0, 0) : Lay.cubic(until, at, 0, 0, slide, -slope));
        if (slide != 0) {
            Point end = guideEnd();
            lays.add(forward ? Lay.stretch(end, at, 0, slide) : Lay.stretch(at, end, slide, 0));
        }
        return new LaidStroke(piece().id(), along, lays);
    }

    private List<Stroke> bentAndSlid() throws Refusal {
        double length = sewn(piece());
        OneCurve curve = inOneCurve(bend(0, LONGEST_SLIDING).on(piece()));
        double atZero = sewn(on(bentAndSlid(curve, 0))) - length;
        double guess = Math.signum(slope()) * Math.abs(Math.tan(more)) * LONGEST_SLIDING / 15;
        double found = Root.of(
                slide -> sewn(on(bentAndSlid(curve, slide))) - length, atZero, guess, KEPT / 100, KEPT, lengthNotMet());
        return bentAndSlid(curve, found);
    }

    private List<Stroke> bentAndSlid(OneCurve curve, double slide) throws Refusal {
        LaidStroke bent = bend(slide, LONGEST_SLIDING);
        List<Stroke> strokes = new ArrayList<>(List.of(bent));
        strokes.addAll(curve.strokes(bent.on(piece())));
        return strokes;
    }

    private Piece on(List<Stroke> strokes) throws Refusal {
        Piece now = piece();
        for (Stroke stroke : strokes) {
            now = stroke.on(now);
        }
        return now;
    }

    private Refusal lengthNotMet() {
        return Refusal.of("edge-length-not-met")
                .with("piece", piece().name())
                .with("edge", corner.edge().name());
    }

    /** Where the guide's own last segment begins: all of a straight line follows, or a third of the guide. */
    private Point guideEnd() {
        Outline outline = piece().outline();
        Place node = outline.nearest(at).place();
        int count = outline.segments().size();
        int own = forward ? Math.floorMod(node.segment() - 1, count) : node.segment();
        Segment beside = outline.segments().get(own);
        return beside instanceof Line
                ? forward ? beside.start() : beside.end()
                : far(piece(), corner.guide(), at, !forward, LONGEST);
    }

    /** Where the bend has died away: a third of the edge on, before any dart. */
    private Point until(double wanted) throws Refusal {
        Curve drawn = corner.edge().on(piece().outline());
        Curve line = forward ? drawn : drawn.reversed();
        double room = line.length() / 3;
        for (SewnPiece.Mark mouth : corner.sewn().mouthEnds()) {
            Point near = mouth.drawn();
            if (line.nearest(near).distance() <= Shift.ON_OUTLINE) {
                room = Math.min(room, line.lengthTo(line.nearest(near).place()) - 1);
            }
        }
        if (room < SHORTEST / 2) {
            throw Refusal.of("no-room-to-true")
                    .with("piece", piece().name())
                    .with("edge", corner.edge().name());
        }
        return line.pointAtLength(Math.min(Math.max(SHORTEST / 2, wanted), room));
    }

    /** How long a bend by an angle may be so that next to no length is added: the line grows by its square, over 15. */
    private static double within(double turn, double most) {
        return Math.min(most, ADDED * 15 / (turn * turn));
    }

    /** Whether the length of the edge is measured or to be kept. */
    private boolean matters() {
        boolean measured = piece().levels().stream()
                .anyMatch(m -> m.along().filter(corner.edge().name()::equals).isPresent());
        return measured || corner.edge().isProtected();
    }

    /** The corner moved along the edge until the edge is as long as it was. */
    private Optional<Stroke> slid(Piece bent, double gained) throws Refusal {
        if (Math.abs(gained) <= KEPT / 10) {
            return Optional.empty();
        }
        double length = sewn(piece());
        double found = Root.of(
                mm -> sewn(slide(bent, mm).on(bent)) - length, gained, gained, KEPT / 100, KEPT, lengthNotMet());
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
        Point there = now.corner(guide, corner.guideAtEnd()).sewn();
        Point edgeEnd = edgeEnd(bent, edge, there);
        Point guideEnd = far(bent, guide, there, !forward, guideRoom(now, guide, there));
        return new LaidStroke(
                bent.id(),
                away,
                forward
                        ? List.of(Lay.cubic(guideEnd, there, 0, 0, mm, 0), Lay.stretch(there, edgeEnd, mm, 0))
                        : List.of(Lay.stretch(edgeEnd, there, 0, mm), Lay.cubic(there, guideEnd, mm, 0, 0, 0)));
    }

    /** All of what is drawn in one curve follows, else a third of the edge at most. */
    private Point edgeEnd(Piece bent, Edge edge, Point there) {
        return OneCurve.beside(piece(), bent, edge, there).orElseGet(() -> far(bent, edge, there, forward, LONGEST));
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
            boolean counts = now.piece().countsAt(level.name());
            Optional<LevelReach> reach = counts ? LevelReach.of(now, guide, level) : Optional.empty();
            if (reach.isPresent() && !reach.get().corner()) {
                room = Math.min(room, Math.abs(along.dot(reach.get().drawn().minus(from))) - 1);
            }
        }
        return Math.max(room, 1);
    }
}
