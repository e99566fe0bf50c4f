package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A centre line inside a piece that reaches over it: a line along its straight edge from end to end. A front that buttons
 * reaches over by the width of its stand; one that wraps over does so by much more, and then words have to say that this
 * is the centre.
 *
 * @param edge the straight edge
 */
record CentreLine(Line line, Curve edge) {
    /** It runs along the edge if it leans less than this from it, degrees. */
    private static final double ALONG = 2.5;

    /** It ends this near to the outline, or to the stitching line inside it, mm. */
    private static final double ON_OUTLINE = 3;

    /** It is at least so much of the length of the edge. */
    private static final double LEAST_LENGTH = 0.7;

    /** How far beyond the centre a front that buttons reaches, mm, from and to. */
    private static final double LEAST_OVERLAP = 8;

    private static final double MOST_OVERLAP = 60;

    /** One that wraps reaches over by no more than this part of its width. */
    private static final double MOST_OF_WIDTH = 0.5;

    /** Words this near to a line speak of it, mm. */
    private static final double WORDS = 25;

    /**
     * The one beside an edge.
     *
     * @param words  on the piece
     */
    static Optional<CentreLine> beside(Piece piece, Curve edge, List<Caption> words) {
        return lines(piece)
                .map(line -> new CentreLine(line, edge))
                .filter(c -> c.lies(piece, words))
                .min(Comparator.comparingDouble(CentreLine::away));
    }

    /** The one beside any of the straight edges of a piece that has edges. */
    static Optional<CentreLine> on(Piece piece, List<Caption> words) {
        return piece.edges().stream()
                .map(e -> e.on(piece.outline()))
                .filter(Pen::isStraight)
                .flatMap(edge -> beside(piece, edge, words).stream())
                .min(Comparator.comparingDouble(CentreLine::away));
    }

    private static Stream<Line> lines(Piece piece) {
        return piece.riders().stream()
                .filter(r -> r.kind() != Rider.Kind.PARALLEL)
                .flatMap(r -> Pen.of(r).stream())
                .filter(Pen::isLine)
                .map(pen -> Pen.chord(pen.runs().get(0)));
    }

    private double away() {
        return edge.nearest(line.at(0.5)).distance();
    }

    private boolean lies(Piece piece, List<Caption> words) {
        double reach = ON_OUTLINE + (piece.drawn() == LineKind.CUTTING ? 2 * piece.allowance() : 0);
        boolean along = Turns.between(line.tangent(0), edge.end().minus(edge.start())) < ALONG;
        boolean ends = piece.outline().comesWithin(line.start(), reach)
                && piece.outline().comesWithin(line.end(), reach);
        double most =
                wraps(piece, words) ? MOST_OF_WIDTH * piece.outline().box().width() : MOST_OVERLAP;
        return along
                && ends
                && line.length() > LEAST_LENGTH * edge.length()
                && away() >= LEAST_OVERLAP
                && away() <= Math.max(MOST_OVERLAP, most);
    }

    private boolean wraps(Piece piece, List<Caption> words) {
        return saysWrap(piece.name())
                || words.stream()
                        .filter(c -> line.at(line.nearest(c.middle())).distance(c.middle()) <= WORDS + c.height())
                        .anyMatch(c -> Vocabulary.has(c.words(), "cent(re|er)", "c\\.?\\s?[fb]\\b"));
    }

    /** Whether words say that two fronts lie over each other. */
    static boolean saysWrap(String words) {
        return Vocabulary.has(words, "wrap", "surplice", "cross-?\\s?over");
    }

    /** How far the piece reaches over the centre where a level lies, from the line that is sewn there, mm. */
    double overlap(Piece piece, LevelMark mark) {
        Point at = mark.through()
                .flatMap(p -> crossing(piece, p))
                .orElseGet(() -> mark.through().isPresent() ? line.at(0.5) : upperEnd(piece));
        double allowance = piece.drawn() == LineKind.STITCHING
                ? 0
                : piece.edges().stream()
                        .filter(e -> e.on(piece.outline()).equals(edge))
                        .mapToDouble(e -> e.allowance().orElse(piece.allowance()))
                        .findFirst()
                        .orElse(0);
        return Math.max(0, Rounding.meant(edge.nearest(at).distance() - allowance));
    }

    private Optional<Point> crossing(Piece piece, Point through) {
        Point down = line.tangent(0);
        double along = through.minus(line.start()).dot(down);
        return Optional.of(line.start().plus(down.times(along)))
                .filter(p -> piece.outline().contains(p));
    }

    private Point upperEnd(Piece piece) {
        Point down = piece.downGrain();
        return line.start().dot(down) <= line.end().dot(down) ? line.start() : line.end();
    }
}
