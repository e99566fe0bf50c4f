package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;

/** One drafted piece in its own coordinates, before it is laid on the sheet. Not thread-safe. */
final class PieceDraft {
    private final String id;
    private final String name;
    private final Contour contour;
    private final List<LevelMark> levels = new ArrayList<>();
    private final List<Dart> darts = new ArrayList<>();
    private final List<Notch> notches = new ArrayList<>();
    private final List<Segment> innerLines = new ArrayList<>();
    private boolean cutLineDrawn;
    private int times = 1;
    private boolean onFold;
    private Grain grain;
    private Point label;

    PieceDraft(String id, String name, Contour contour) {
        this.id = id;
        this.name = name;
        this.contour = contour;
    }

    PieceDraft cut(int howOften, boolean onTheFold) {
        times = howOften;
        onFold = onTheFold;
        return this;
    }

    /** The cutting line, not the stitching line, becomes the outline that the marks refer to. */
    PieceDraft outlineIsCuttingLine() {
        cutLineDrawn = true;
        return this;
    }

    PieceDraft level(LevelMark mark) {
        levels.add(mark);
        return this;
    }

    PieceDraft darts(List<Dart> more) {
        darts.addAll(more);
        return this;
    }

    PieceDraft notch(String notchName, Point at) {
        notches.add(new Notch(notchName, at));
        return this;
    }

    PieceDraft innerLine(Point from, Point to) {
        innerLines.add(new Line(from, to));
        return this;
    }

    PieceDraft grain(Point from, Point to) {
        grain = new Grain(from, to);
        return this;
    }

    PieceDraft label(Point at) {
        label = at;
        return this;
    }

    /** The room the piece takes, cutting line included. */
    Box box() {
        return contour.cutting().box();
    }

    Face laid(Affine map) {
        Outline stitching = laid(map, contour.stitching());
        Outline cutting = laid(map, contour.cutting());
        List<Rider> riders = new ArrayList<>();
        riders.add(
                cutLineDrawn
                        ? new Rider(id + "-stitching", Rider.Kind.PARALLEL, stitching.segments())
                        : new Rider(id + "-cutting", Rider.Kind.PARALLEL, cutting.segments()));
        for (int i = 0; i < darts.size(); i++) {
            Dart dart = darts.get(i).mapped(p -> Places.on(map, p));
            riders.add(new Rider(
                    id + "-dart-" + (i + 1),
                    Rider.Kind.INNER,
                    List.of(new Line(dart.mouth1(), dart.point()), new Line(dart.mouth2(), dart.point()))));
        }
        if (!innerLines.isEmpty()) {
            riders.add(new Rider(id + "-line", Rider.Kind.INNER, Places.on(map, innerLines)));
        }
        Outline outline = cutLineDrawn ? cutting : stitching;
        List<Edge> edges = cutLineDrawn ? contour.cutEdges() : contour.edges();
        Piece piece = Piece.bare(id, outline).toBuilder()
                .name(name)
                .drawn(cutLineDrawn ? LineKind.CUTTING : LineKind.STITCHING, 10)
                .cut(times, onFold)
                .edges(edges.stream()
                        .map(e -> e.withEnds(Places.on(map, e.from()), Places.on(map, e.to())))
                        .toList())
                .levels(levels.stream()
                        .map(l -> l.mapped(p -> Places.on(map, p)))
                        .toList())
                .darts(darts.stream().map(d -> d.mapped(p -> Places.on(map, p))).toList())
                .notches(notches.stream()
                        .map(n -> new Notch(
                                n.name(),
                                Places.rounded(Places.rounded(
                                        outline.nearest(map.apply(n.at())).point()))))
                        .toList())
                .grain(new Grain(Places.on(map, grain.from()), Places.on(map, grain.to())))
                .riders(riders)
                .build();
        List<Rider> attached = new ArrayList<>(riders);
        attached.addAll(Ticks.of(piece));
        return new Face(piece.toBuilder().riders(attached).build(), Places.on(map, label));
    }

    private static Outline laid(Affine map, Outline outline) {
        return new Outline(Places.on(map, outline.segments()));
    }

    /** A piece on the sheet and where its name is written. */
    record Face(Piece piece, Point label) {}
}
