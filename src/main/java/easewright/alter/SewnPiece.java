package easewright.alter;

import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.measure.Hold;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece seen along its stitching line: where its edges, levels, notches and darts are sewn. */
final class SewnPiece {
    private final Piece piece;
    private final List<Level> levels;
    private final StitchOutline stitch;
    private final Map<Level, Optional<LevelWidth>> widths = new HashMap<>();
    private final Map<String, EdgeRun> runs = new HashMap<>();
    private final Map<Point, Hold> corners = new HashMap<>();
    private Optional<List<Mouth>> mouths = Optional.empty();

    /**
     * @param levels the pattern's levels
     */
    SewnPiece(Piece piece, List<Level> levels) {
        this(StitchOutline.of(piece), levels);
    }

    /**
     * The same where the stitching line is known.
     *
     * @param levels the pattern's levels
     */
    SewnPiece(StitchOutline stitch, List<Level> levels) {
        this.piece = stitch.piece();
        this.levels = levels;
        this.stitch = stitch;
    }

    Piece piece() {
        return piece;
    }

    List<Level> levels() {
        return levels;
    }

    StitchOutline stitch() {
        return stitch;
    }

    Optional<LevelWidth> width(Level level) {
        return widths.computeIfAbsent(level, l -> Measures.width(stitch, l));
    }

    EdgeRun run(Edge edge) {
        return runs.computeIfAbsent(edge.name(), name -> new EdgeRun(piece, edge));
    }

    /** What holds the start or the end of an edge. */
    Hold corner(Edge edge, boolean atEnd) {
        Point drawn = atEnd ? run(edge).end() : run(edge).start();
        return corners.computeIfAbsent(drawn, this::drawnAt);
    }

    /** What holds a place marked on the drawn line. */
    Hold drawnAt(Point mark) {
        return piece.drawn() == LineKind.STITCHING ? Hold.point(mark) : stitch.hold(stitch.place(mark));
    }

    /** What holds a place of the stitching line. */
    Hold sewnAt(Point sewn) {
        Nearest nearest = stitch.outline().nearest(sewn);
        return piece.drawn() == LineKind.STITCHING ? Hold.point(sewn) : stitch.hold(nearest.place());
    }

    /** Both ends of each dart's mouth. */
    List<Mouth> mouths() {
        if (mouths.isPresent()) {
            return mouths.get();
        }
        mouths = Optional.of(seekMouths());
        return mouths.get();
    }

    private List<Mouth> seekMouths() {
        List<Mouth> found = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            if (piece.drawn() == LineKind.STITCHING) {
                found.add(new Mouth(dart, Hold.point(dart.mouth1()), Hold.point(dart.mouth2())));
            } else {
                stitch.mouth(dart)
                        .ifPresent(ends ->
                                found.add(new Mouth(dart, withMark(ends.get(0), dart), withMark(ends.get(1), dart))));
            }
        }
        return found;
    }

    /**
     * The legs slant, so that a mouth marked on the cutting line does not lie square across from the sewn one; both must
     * stay. Where the dart is cut out there is no drawn line across from the sewn one at all.
     */
    private Hold withMark(Hold hold, Dart dart) {
        boolean one = dart.mouth1().distance(hold.sewn()) <= dart.mouth2().distance(hold.sewn());
        Nearest mark = piece.outline().nearest(one ? dart.mouth1() : dart.mouth2());
        if (mark.distance() > Shift.ON_OUTLINE || hold.first().equals(hold.last())) {
            return hold;
        }
        Point on = hold.last().minus(hold.first()).unit();
        double at = on.dot(mark.point());
        return new Hold(
                hold.sewn(),
                mark.point(),
                mark.point(),
                at < on.dot(hold.first()) + Shift.ON_OUTLINE ? mark.point() : hold.first(),
                at > on.dot(hold.last()) - Shift.ON_OUTLINE ? mark.point() : hold.last());
    }

    /** A dart's mouth. */
    record Mouth(Dart dart, Hold one, Hold two) {}

    /**
     * A place at which a change may end.
     *
     * @param drawn where it is marked on the drawn line; it belongs to the edges that hold this
     */
    record Mark(Point drawn, Hold hold) {
        static Mark of(Hold hold) {
            return new Mark(hold.before(), hold);
        }
    }

    Mark mark(Point drawn) {
        return new Mark(drawn, drawnAt(drawn));
    }

    List<Mark> notches() {
        return piece.notches().stream().map(n -> mark(n.at())).toList();
    }

    List<Mark> mouthEnds() {
        List<Mark> marks = new ArrayList<>();
        for (Mouth mouth : mouths()) {
            marks.add(Mark.of(mouth.one()));
            marks.add(Mark.of(mouth.two()));
        }
        return marks;
    }
}
