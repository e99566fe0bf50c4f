package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds what the hand means: a corner, a mark or a level's end if one is near, else a line, else the place itself. */
public final class Snaps {
    private final Desk desk;
    private final Sheet sheet;

    public Snaps(Desk desk, Sheet sheet) {
        this.desk = desk;
        this.sheet = sheet;
    }

    /**
     * The place meant by a pointer at {@code at}.
     *
     * @param reach how far the pointer draws things to itself, mm
     */
    public Snap at(Point at, double reach) {
        return points().stream()
                .filter(s -> s.at().distance(at) <= reach)
                .min(Comparator.comparingDouble(s -> s.at().distance(at)))
                .or(() -> onOutline(at, reach))
                .or(() -> onLine(at, reach))
                .orElseGet(() -> new Snap(Snap.Kind.FREE, at, pieceAt(at), Optional.empty()));
    }

    /**
     * The place beside the pointer that lies exactly as far down the piece as one of its corners or marks, if the
     * pointer is nearly there.
     *
     * @param reach how far up or down the pointer is drawn, mm
     */
    Optional<Snap> atHeight(Piece piece, Point at, double reach) {
        Point down = piece.downGrain();
        Snap best = null;
        double nearest = reach;
        for (Snap snap : points()) {
            double away = snap.at().minus(at).dot(down);
            // Where levels end they would be held where they are.
            if (snap.piece().equals(Optional.of(piece.id()))
                    && snap.kind() != Snap.Kind.LEVEL
                    && Math.abs(away) < nearest) {
                nearest = Math.abs(away);
                best = new Snap(snap.kind(), at.plus(down.times(away)), snap.piece(), Optional.empty());
            }
        }
        return Optional.ofNullable(best);
    }

    /** The nearest place on an outline, however far. */
    public Optional<Snap> onOutline(Point at) {
        return onOutline(at, Double.POSITIVE_INFINITY);
    }

    private Optional<Snap> onOutline(Point at, double reach) {
        Snap best = null;
        double distance = reach;
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.outline().box().distance(at) > distance) {
                continue;
            }
            Nearest nearest = piece.outline().nearest(at);
            if (nearest.distance() <= distance) {
                distance = nearest.distance();
                Segment segment = piece.outline().segments().get(nearest.place().segment());
                best = new Snap(Snap.Kind.OUTLINE, nearest.point(), Optional.of(piece.id()), straight(segment));
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Snap> onLine(Point at, double reach) {
        Snap best = null;
        double distance = reach;
        for (Segment segment : lines()) {
            if (segment.atLeastFrom(at) > distance) {
                continue;
            }
            Point nearest = segment.at(segment.nearest(at));
            if (nearest.distance(at) <= distance) {
                distance = nearest.distance(at);
                best = new Snap(Snap.Kind.LINE, nearest, pieceAt(nearest), straight(segment));
            }
        }
        return Optional.ofNullable(best);
    }

    private static Optional<Line> straight(Segment segment) {
        return segment instanceof Line line ? Optional.of(line) : Optional.empty();
    }

    private List<Segment> lines() {
        List<Segment> lines = new ArrayList<>();
        sheet.loose().forEach(rider -> lines.addAll(rider.segments()));
        for (Piece piece : sheet.pattern().pieces()) {
            piece.riders().forEach(rider -> lines.addAll(rider.segments()));
        }
        return lines;
    }

    /** The piece that the place lies in; of several the smallest. */
    public Optional<String> pieceAt(Point at) {
        return sheet.pattern().pieces().stream()
                .filter(p -> p.outline().box().contains(at) && p.outline().contains(at))
                .min(Comparator.comparingDouble(p -> Math.abs(p.outline().signedArea())))
                .map(Piece::id);
    }

    /** All certain places, piece by piece: first its corners in order, then its marks. */
    public List<Snap> points() {
        List<Snap> points = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            for (Segment segment : piece.outline().segments()) {
                points.add(point(Snap.Kind.CORNER, segment.start(), piece));
            }
            piece.edges().forEach(e -> {
                points.add(point(Snap.Kind.CORNER, e.from(), piece));
                points.add(point(Snap.Kind.CORNER, e.to(), piece));
            });
            piece.notches().forEach(n -> points.add(point(Snap.Kind.MARK, n.at(), piece)));
            for (Dart dart : piece.darts()) {
                dart.corners().forEach(c -> points.add(point(Snap.Kind.MARK, c, piece)));
            }
            piece.grain().ifPresent(g -> {
                points.add(point(Snap.Kind.MARK, g.from(), piece));
                points.add(point(Snap.Kind.MARK, g.to(), piece));
            });
            piece.riders().forEach(r -> ends(r, Optional.of(piece.id()), points));
        }
        levels(points);
        sheet.loose().forEach(rider -> ends(rider, Optional.empty(), points));
        return points;
    }

    private void levels(List<Snap> points) {
        for (Girth girth : desk.reading().measures().girths()) {
            for (LevelWidth part : girth.parts()) {
                part.spans().forEach(span -> {
                    points.add(new Snap(Snap.Kind.LEVEL, span.from(), Optional.of(part.pieceId()), Optional.empty()));
                    points.add(new Snap(Snap.Kind.LEVEL, span.to(), Optional.of(part.pieceId()), Optional.empty()));
                });
            }
        }
    }

    private static Snap point(Snap.Kind kind, Point at, Piece piece) {
        return new Snap(kind, at, Optional.of(piece.id()), Optional.empty());
    }

    private static void ends(Rider rider, Optional<String> piece, List<Snap> points) {
        for (Segment segment : rider.segments()) {
            points.add(new Snap(Snap.Kind.CORNER, segment.start(), piece, Optional.empty()));
            points.add(new Snap(Snap.Kind.CORNER, segment.end(), piece, Optional.empty()));
        }
    }
}
