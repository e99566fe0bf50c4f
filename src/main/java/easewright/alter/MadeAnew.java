package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way back by going forward from what was drawn. The outlines from before the first change are kept; the marks on
 * them are not, and an opposite does not bring every mark back exactly. So the changes are made again, and each mark is
 * moved by what it then lies off, until all together come to what is now: in a few rounds, or not at all.
 */
final class MadeAnew {
    private static final int ROUNDS = 6;

    /** A mark that comes to lie this near to a corner of the drawing lies in it, mm. */
    private static final double IN_CORNER = 0.05;

    /** Where an outline turns by more than this it has a corner, radians. */
    private static final double BENDS = Math.toRadians(10);

    /** Lines beside the outline, which are led along with it, come back as near as this, mm. */
    private static final double BESIDE = 0.3;

    private static final double NEAR_EDGE_END = 20;
    private static final double NEAR_DART = 2;

    private final Pattern now;

    MadeAnew(Pattern now) {
        this.now = now;
    }

    /** The pattern with only its first changes made; empty where that does not lead to what is now. */
    Optional<Pattern> to(int kept) {
        Pattern drawn = Retrace.roughly(now);
        return to(
                        kept,
                        drawn.withPieces(
                                drawn.pieces().stream().map(MadeAnew::inCorners).toList()))
                .or(() -> to(kept, drawn));
    }

    private Optional<Pattern> to(int kept, Pattern guess) {
        List<ChangeNote> changes = now.changes();
        Pattern drawn = guess;
        try {
            for (int i = 0; i < ROUNDS; i++) {
                Pattern first = forward(drawn, changes.subList(0, kept));
                Pattern again = forward(first, changes.subList(kept, changes.size()));
                if (!sameIds(again)) {
                    return Optional.empty();
                }
                if (same(again)) {
                    return Optional.of(first.withChanges(changes.subList(0, kept)));
                }
                drawn = corrected(drawn, again);
            }
        } catch (Refusal | IllegalArgumentException doesNotLeadThere) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** Edges mostly end in corners: with their ends, and the mouths of darts, in those that are near. */
    private static Piece inCorners(Piece piece) {
        List<Point> corners = new ArrayList<>();
        List<Segment> segments = piece.outline().segments();
        for (int i = 0; i < segments.size(); i++) {
            Point in = segments.get((i + segments.size() - 1) % segments.size()).tangent(1);
            Point out = segments.get(i).tangent(0);
            if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) > BENDS) {
                corners.add(segments.get(i).start());
            }
        }
        return piece.toBuilder()
                .edges(piece.edges().stream()
                        .map(e -> e.withEnds(
                                nearest(corners, e.from(), NEAR_EDGE_END), nearest(corners, e.to(), NEAR_EDGE_END)))
                        .toList())
                .darts(piece.darts().stream()
                        .map(d -> d.mapped(p -> nearest(corners, p, NEAR_DART)))
                        .toList())
                .build();
    }

    private static Point nearest(List<Point> corners, Point mark, double within) {
        return corners.stream()
                .filter(c -> c.distance(mark) <= within)
                .min(Comparator.comparingDouble(c -> c.distance(mark)))
                .orElse(mark);
    }

    static Pattern forward(Pattern then, List<ChangeNote> changes) throws Refusal {
        Pattern again = then;
        for (ChangeNote note : changes) {
            again = Ways.from(note).apply(again).pattern();
        }
        return again;
    }

    private boolean sameIds(Pattern again) {
        return again.pieces().stream()
                .map(Piece::id)
                .toList()
                .equals(now.pieces().stream().map(Piece::id).toList());
    }

    /** Whether the pattern is what is now, but for rounding. */
    boolean same(Pattern again) {
        for (int i = 0; i < now.pieces().size(); i++) {
            Piece one = again.pieces().get(i);
            Piece other = now.pieces().get(i);
            if (!Likeness.same(one, other) || !Likeness.sameLines(one.riders(), other.riders(), BESIDE)) {
                return false;
            }
        }
        return true;
    }

    private Pattern corrected(Pattern drawn, Pattern again) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : drawn.pieces()) {
            Optional<Piece> is = again.piece(piece.id());
            Optional<Piece> wanted = now.piece(piece.id());
            pieces.add(is.isPresent() && wanted.isPresent() ? corrected(piece, is.get(), wanted.get()) : piece);
        }
        return drawn.withPieces(pieces);
    }

    private static Piece corrected(Piece piece, Piece is, Piece wanted) {
        Outline outline = piece.outline();
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < piece.edges().size(); i++) {
            Edge e = piece.edges().get(i);
            Edge a = is.edges().get(i);
            Edge b = wanted.edges().get(i);
            edges.add(e.withEnds(moved(outline, e.from(), a.from(), b.from()), moved(outline, e.to(), a.to(), b.to())));
        }
        List<Dart> darts = new ArrayList<>();
        for (int i = 0; i < piece.darts().size(); i++) {
            Dart d = piece.darts().get(i);
            Dart a = is.darts().get(i);
            Dart b = wanted.darts().get(i);
            darts.add(new Dart(
                    d.name(),
                    moved(outline, d.mouth1(), a.mouth1(), b.mouth1()),
                    moved(outline, d.mouth2(), a.mouth2(), b.mouth2()),
                    moved(outline, d.point(), a.point(), b.point()),
                    d.otherPoint()
                            .map(p -> p.plus(b.otherPoint().orElse(p))
                                    .minus(a.otherPoint().orElse(p))),
                    d.edge()));
        }
        List<Notch> notches = new ArrayList<>();
        for (int i = 0; i < piece.notches().size(); i++) {
            Notch n = piece.notches().get(i);
            notches.add(new Notch(
                    n.name(),
                    moved(
                            outline,
                            n.at(),
                            is.notches().get(i).at(),
                            wanted.notches().get(i).at())));
        }
        List<LevelMark> levels = new ArrayList<>();
        for (int i = 0; i < piece.levels().size(); i++) {
            LevelMark mark = piece.levels().get(i);
            LevelMark a = is.levels().get(i);
            LevelMark b = wanted.levels().get(i);
            LevelMark through = mark.through()
                    .map(p -> mark.withThrough(
                            p.plus(b.through().orElse(p)).minus(a.through().orElse(p))))
                    .orElse(mark);
            levels.add(mark.reference()
                    .map(p -> through.withReference(
                            p.plus(b.reference().orElse(p)).minus(a.reference().orElse(p))))
                    .orElse(through));
        }
        Optional<Grain> grain = piece.grain()
                .map(g -> new Grain(
                        g.from()
                                .plus(wanted.grain().orElse(g).from())
                                .minus(is.grain().orElse(g).from()),
                        g.to().plus(wanted.grain().orElse(g).to())
                                .minus(is.grain().orElse(g).to())));
        List<Rider> riders = new ArrayList<>();
        for (int i = 0; i < piece.riders().size(); i++) {
            riders.add(moved(
                    piece.riders().get(i), is.riders().get(i), wanted.riders().get(i)));
        }
        var built = piece.toBuilder()
                .edges(edges)
                .darts(darts)
                .notches(notches)
                .levels(levels)
                .riders(riders);
        grain.ifPresent(built::grain);
        return built.build();
    }

    /** A mark moved by what it came to lie off; on the outline it stays there, and in a corner if it is near one. */
    private static Point moved(Outline outline, Point mark, Point is, Point wanted) {
        Point there = mark.plus(wanted.minus(is));
        Point on = outline.nearest(there).point();
        if (outline.nearest(mark).distance() > Shift.ON_OUTLINE) {
            return there;
        }
        for (Segment s : outline.segments()) {
            if (s.start().distance(on) <= IN_CORNER) {
                return s.start();
            }
        }
        return on;
    }

    /** A line moved place by place, if its parts are still the same. */
    private static Rider moved(Rider rider, Rider is, Rider wanted) {
        List<Segment> segments = new ArrayList<>();
        int count = rider.segments().size();
        if (is.segments().size() != count || wanted.segments().size() != count) {
            return rider;
        }
        for (int i = 0; i < count; i++) {
            Segment s = rider.segments().get(i);
            Segment a = is.segments().get(i);
            Segment b = wanted.segments().get(i);
            Point start = s.start().plus(b.start().minus(a.start()));
            Point end = s.end().plus(b.end().minus(a.end()));
            if (s instanceof Line && a instanceof Line && b instanceof Line) {
                segments.add(new Line(start, end));
            } else if (s instanceof Cubic c && a instanceof Cubic x && b instanceof Cubic y) {
                segments.add(new Cubic(
                        start,
                        c.control1().plus(y.control1().minus(x.control1())),
                        c.control2().plus(y.control2().minus(x.control2())),
                        end));
            } else {
                return rider;
            }
        }
        return rider.withSegments(segments);
    }
}
