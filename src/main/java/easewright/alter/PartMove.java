package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.measure.Span;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.PieceBuilder;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Moves one part of a slashed piece as a whole, with everything marked or drawn on it. */
final class PartMove {
    /** Marks this close to a cut belong to the part that stays, mm. */
    private static final double ON_CUT = 1e-6;

    private final Piece piece;
    private final Parting marks;
    private final Affine map;
    private final List<Finding> findings = new ArrayList<>();

    /**
     * @param marks the parting by which marks are told apart: that of the whole piece, also where a tuck takes cloth
     */
    PartMove(Piece piece, Parting marks, Affine map) {
        this.piece = piece;
        this.marks = marks;
        this.map = map;
    }

    List<Finding> findings() {
        return findings;
    }

    Piece done(Outline outline) throws Refusal {
        PieceBuilder builder = piece.toBuilder();
        List<Edge> edges = new ArrayList<>();
        for (Edge e : piece.edges()) {
            edges.add(e.withEnds(onOutline(e.from()), onOutline(e.to())));
        }
        List<Notch> notches = new ArrayList<>();
        for (Notch n : piece.notches()) {
            notches.add(new Notch(n.name(), onOutline(n.at())));
        }
        List<Dart> darts = new ArrayList<>();
        for (Dart d : piece.darts()) {
            darts.add(dart(d));
        }
        List<LevelMark> levels = new ArrayList<>();
        for (LevelMark mark : piece.levels()) {
            LevelMark now = mark.through()
                    .map(p -> mark.withThrough(goes(mark, p) ? map.apply(p) : p))
                    .orElse(mark);
            levels.add(mark.reference().map(p -> now.withReference(inside(p))).orElse(now));
        }
        piece.grain()
                .filter(g -> turns()
                        ? !Centre.stays(piece, marks)
                        : marks.movesWith(g.from().towards(g.to(), 0.5)))
                .ifPresent(g -> builder.grain(new Grain(map.apply(g.from()), map.apply(g.to()))));
        List<Rider> riders = new ArrayList<>();
        for (Rider r : piece.riders()) {
            riders.add(
                    switch (r.kind()) {
                        case PARALLEL -> beside(r);
                        case ATTACHED -> attached(r);
                        case INNER -> inner(r);
                    });
        }
        return builder.outline(outline)
                .edges(edges)
                .notches(notches)
                .darts(darts)
                .levels(levels)
                .riders(riders)
                .original(Optional.of(piece.original().orElse(piece.outline())))
                .build();
    }

    /**
     * Whether a level goes with the moving part. A level that crosses both parts of a piece of which one turns stays a
     * straight line square to the grain, and so with the part that holds the centre and with it the grain.
     */
    private boolean goes(LevelMark mark, Point through) {
        if (turns() && crossesBoth(mark)) {
            return !Centre.stays(piece, marks);
        }
        return moves(through);
    }

    private boolean turns() {
        return map.b() != 0;
    }

    private boolean crossesBoth(LevelMark mark) {
        boolean stays = false;
        boolean moves = false;
        Level level = Level.of(mark.level(), LevelKind.OTHER);
        for (Span span : Measures.width(piece, level).map(LevelWidth::spans).orElse(List.of())) {
            for (Point end : List.of(span.from(), span.to())) {
                boolean goes = marks.nearerToMoving(end);
                moves |= goes;
                stays |= !goes;
            }
        }
        return stays && moves;
    }

    private Point onOutline(Point p) {
        return marks.nearerToMoving(p) ? map.apply(p) : p;
    }

    private Point inside(Point p) {
        return moves(p) ? map.apply(p) : p;
    }

    private boolean moves(Point p) {
        boolean onOutline = piece.outline().nearest(p).distance() <= Shift.ON_OUTLINE;
        return onOutline ? marks.nearerToMoving(p) : marks.movesWith(p);
    }

    private Dart dart(Dart d) throws Refusal {
        int moving = 0;
        for (Point p : d.corners()) {
            moving += moves(p) ? 1 : 0;
        }
        if (moving == 0) {
            return d;
        }
        if (moving < d.corners().size()) {
            throw Refusal.of("slash-crosses-dart").with("piece", piece.name()).with("dart", d.name());
        }
        return d.mapped(map::apply);
    }

    private Rider beside(Rider rider) {
        List<Segment> segments = new CutRider(marks::nearerToMoving, map).parted(rider.segments());
        return segments == rider.segments() ? rider : rider.changed(segments);
    }

    private Rider attached(Rider rider) {
        List<Segment> segments = new ArrayList<>();
        for (Segment s : rider.segments()) {
            boolean start = marks.nearerToMoving(s.start());
            boolean end = marks.nearerToMoving(s.end());
            if (start == end) {
                segments.add(start ? s.transformed(map) : s);
            } else {
                segments.add(new Line(start ? map.apply(s.start()) : s.start(), end ? map.apply(s.end()) : s.end()));
            }
        }
        return segments.equals(rider.segments()) ? rider : rider.changed(segments);
    }

    private Rider inner(Rider rider) {
        int moving = 0;
        for (Segment s : rider.segments()) {
            moving += moves(s.start()) ? 1 : 0;
            moving += moves(s.end()) ? 1 : 0;
        }
        if (moving == 0) {
            return rider;
        }
        if (moving < 2 * rider.segments().size()) {
            findings.add(Finding.of("inner-line-crosses-slash", Severity.CAUTION, piece.name())
                    .with("line", rider.id()));
            return rider;
        }
        return rider.changed(
                rider.segments().stream().map(s -> s.transformed(map)).toList());
    }

    /** Refuses a tuck that folds away a mark. */
    static void requireNothingTaken(Piece piece, List<Segment> taken) throws Refusal {
        if (taken.isEmpty()) {
            return;
        }
        Curve run = new Curve(taken);
        List<Point> marks = new ArrayList<>();
        piece.notches().forEach(n -> marks.add(n.at()));
        piece.darts().forEach(d -> marks.addAll(List.of(d.mouth1(), d.mouth2())));
        piece.edges().forEach(e -> marks.addAll(List.of(e.from(), e.to())));
        for (Point mark : marks) {
            boolean inside = run.nearest(mark).distance() <= ON_CUT
                    && mark.distance(run.start()) > ON_CUT
                    && mark.distance(run.end()) > ON_CUT;
            if (inside) {
                throw Refusal.of("tuck-takes-mark").with("piece", piece.name());
            }
        }
    }
}
