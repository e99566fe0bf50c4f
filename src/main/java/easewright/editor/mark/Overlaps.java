package easewright.editor.mark;

import easewright.measure.Measures;
import easewright.measure.OpenEnd;
import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.suggest.ButtonStand;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** What of a level lies beyond the centre line, where a piece opens: said once, it holds for the whole edge. */
public final class Overlaps {
    private Overlaps() {}

    /** A mark that comes onto a piece, with the overlap that is drawn there, or else was said of another level there. */
    static LevelMark taken(Pattern pattern, Piece piece, LevelMark mark) {
        Optional<OpenEnd.End> end = end(pattern, piece, mark);
        if (end.isEmpty()) {
            return mark;
        }
        LevelMark drawn = ButtonStand.on(piece, mark);
        return drawn.overlapSaid().isPresent()
                ? drawn
                : piece.levels().stream()
                        .filter(m -> m.overlapSaid().isPresent())
                        .filter(m -> !m.level().equals(mark.level()))
                        .filter(m -> edge(pattern, piece, m).equals(end.map(OpenEnd.End::edge)))
                        .findFirst()
                        .filter(m -> m.overlap() < end.get().cloth())
                        .map(m -> mark.withOverlap(m.overlap()))
                        .orElse(mark);
    }

    /** Where a level comes to an opening edge. */
    static Optional<OpenEnd.End> end(Pattern pattern, Piece piece, LevelMark mark) {
        return pattern.level(mark.level()).flatMap(level -> OpenEnd.of(piece, mark, level));
    }

    private static Optional<Edge> edge(Pattern pattern, Piece piece, LevelMark mark) {
        return end(pattern, piece, mark).map(OpenEnd.End::edge);
    }

    /**
     * Says how much of a level on a piece lies on the other side of the opening.
     *
     * @param mm 0 where the edges only meet
     * @throws IllegalArgumentException if it is no part of the width there
     */
    public static Pattern say(Pattern pattern, String pieceId, String level, double mm) {
        boolean more = Measures.of(pattern)
                .piece(pieceId)
                .flatMap(m -> m.level(level))
                .filter(w -> mm >= w.width() - w.dartIntake())
                .isPresent();
        if (more) {
            throw new IllegalArgumentException("Overlap at " + level + " is wider than the piece");
        }
        return changed(pattern, pieceId, level, m -> m.withOverlap(mm));
    }

    /** Takes back what was said. */
    public static Pattern unsay(Pattern pattern, String pieceId, String level) {
        return changed(pattern, pieceId, level, LevelMark::withoutOverlap);
    }

    private static Pattern changed(Pattern pattern, String pieceId, String level, UnaryOperator<LevelMark> how) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        LevelMark mark = piece.level(level).orElseThrow(() -> new IllegalArgumentException(level));
        return pattern.withPiece(EdgeEdits.withLevel(piece, how.apply(mark)));
    }

    /**
     * What is said of one level, for every level of the piece that comes to the same opening edge and is wider there than
     * what reaches over.
     */
    public static Pattern atEveryLevel(Pattern pattern, String pieceId, String level) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        LevelMark said = piece.level(level).orElseThrow(() -> new IllegalArgumentException(level));
        return pattern.withPiece(piece.withLevels(piece.levels().stream()
                .map(m -> isUnlike(pattern, piece, said, m) ? m.withOverlap(said.overlap()) : m)
                .toList()));
    }

    /** What the drawing shows of an overlap of which nothing is said, mm: the width beyond a drawn centre line. */
    static OptionalDouble drawn(Pattern pattern, Piece piece, LevelMark mark) {
        LevelMark drawn =
                mark.overlapSaid().isPresent() || end(pattern, piece, mark).isEmpty()
                        ? mark
                        : ButtonStand.on(piece, mark);
        return drawn == mark ? OptionalDouble.empty() : OptionalDouble.of(drawn.overlap());
    }

    /** Takes what the drawing shows at every level of a piece of which nothing is said. */
    public static Pattern asDrawn(Pattern pattern, String pieceId) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPiece(piece.withLevels(piece.levels().stream()
                .map(m -> drawn(pattern, piece, m).stream()
                        .mapToObj(m::withOverlap)
                        .findFirst()
                        .orElse(m))
                .toList()));
    }

    /** Whether of another level of the piece something else is said than of this one, or nothing. */
    static boolean isUnlike(Pattern pattern, Piece piece, LevelMark said) {
        return said.overlapSaid().isPresent()
                && piece.levels().stream().anyMatch(m -> isUnlike(pattern, piece, said, m));
    }

    private static boolean isUnlike(Pattern pattern, Piece piece, LevelMark said, LevelMark other) {
        if (other.overlapSaid().isPresent() && other.overlap() == said.overlap()) {
            return false;
        }
        Optional<Edge> edge = edge(pattern, piece, said);
        return edge.isPresent()
                && end(pattern, piece, other)
                        .filter(end -> end.edge().equals(edge.get()) && said.overlap() < end.cloth())
                        .isPresent();
    }
}
