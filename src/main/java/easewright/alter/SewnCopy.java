package easewright.alter;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.GarmentMeasures;
import easewright.measure.Hold;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A pattern as it is sewn: pieces drawn by their cutting line are drawn by their stitching line instead. */
final class SewnCopy {
    /** A dart whose point lies on the outline within this is cut out of it, mm. */
    private static final double ON_LINE = 0.1;

    private SewnCopy() {}

    /** The very same pattern where all its pieces are drawn by their stitching lines. */
    static Pattern of(Pattern pattern, GarmentMeasures measures) {
        return of(pattern, measures, pattern.pieces().stream().map(Piece::id).collect(Collectors.toSet()));
    }

    /** The same of some of the pieces only, called by id or name. */
    static Pattern of(Pattern pattern, GarmentMeasures measures, Set<String> pieces) {
        List<Piece> sewn = new ArrayList<>();
        boolean any = false;
        for (Piece drawn : pattern.pieces()) {
            boolean meant = drawn.drawn() == LineKind.CUTTING
                    && (pieces.contains(drawn.id())
                            || pieces.contains(drawn.name())
                            || pieces.contains(drawn.plainName()));
            Piece copy =
                    meant ? measures.piece(drawn.id()).map(m -> of(m.stitch())).orElse(drawn) : drawn;
            any |= copy != drawn;
            sewn.add(copy);
        }
        return any ? pattern.withPieces(sewn) : pattern;
    }

    /**
     * A piece drawn by its cutting line, drawn by its stitching line; lines beside it are left out. The seam runs straight
     * on to the legs of darts that are cut out.
     */
    static Piece of(StitchOutline stitch) {
        Piece drawn = stitch.piece();
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : drawn.edges()) {
            edges.add(edge.withEnds(stitch.point(edge.from()), stitch.point(edge.to())));
        }
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : drawn.notches()) {
            notches.add(new Notch(notch.name(), stitch.point(notch.at())));
        }
        List<Dart> darts = new ArrayList<>();
        Outline outline = stitch.outline();
        for (Dart dart : drawn.darts()) {
            Optional<List<Hold>> mouth = stitch.mouth(dart);
            darts.add(mouth.map(m -> sewn(dart, m)).orElse(dart));
            if (mouth.isPresent() && isCutOut(drawn, dart)) {
                outline = cutOut(
                        outline,
                        mouth.get().get(0).sewn(),
                        dart.point(),
                        mouth.get().get(1).sewn());
            }
        }
        return drawn.toBuilder()
                .outline(outline)
                .drawn(LineKind.STITCHING, drawn.allowance())
                .edges(edges)
                .notches(notches)
                .darts(darts)
                .riders(List.of())
                .build();
    }

    private static Dart sewn(Dart dart, List<Hold> mouth) {
        Point first = mouth.get(0).sewn();
        Point second = mouth.get(1).sewn();
        boolean inOrder = first.distance(dart.mouth1()) <= first.distance(dart.mouth2());
        return new Dart(
                dart.name(),
                inOrder ? first : second,
                inOrder ? second : first,
                dart.point(),
                dart.otherPoint(),
                dart.edge());
    }

    private static Outline cutOut(Outline closed, Point first, Point point, Point second) {
        List<Segment> all = new ArrayList<>(
                closed.run(closed.nearest(second).place(), closed.nearest(first).place())
                        .segments());
        all.add(new Line(all.get(all.size() - 1).end(), point));
        all.add(new Line(point, all.get(0).start()));
        return new Outline(all);
    }

    static boolean isCutOut(Piece piece, Dart dart) {
        return dart.otherPoint().isEmpty()
                && piece.outline().nearest(dart.point()).distance() <= ON_LINE;
    }
}
