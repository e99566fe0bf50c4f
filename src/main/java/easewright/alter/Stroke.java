package easewright.alter;

import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One stroke of the pencil of a truing: what it does to a piece, how it is written down, and how it is taken back. */
sealed interface Stroke permits LaidStroke, RunStroke, NotchStroke, CutStroke {
    /** Id of the piece it is made on. */
    String piece();

    Piece on(Piece piece) throws Refusal;

    /** Whether the line that it draws over is still there as it was, but for what rounding in a file does. */
    default boolean continues(Piece piece) {
        return true;
    }

    /** The runs of the outline that it moves, for drawing. */
    List<Moved> moved(Piece piece) throws Refusal;

    /** What takes it back; empty where nothing does. */
    Optional<Stroke> opposite();

    /** In words of its own, which {@link #parse} understands. */
    String text();

    static Stroke parse(String text) throws Refusal {
        StrokeText read = new StrokeText(text);
        return switch (read.word()) {
            case LaidStroke.WORD -> LaidStroke.parse(read);
            case RunStroke.BARE -> RunStroke.parse(read, true);
            case RunStroke.WORD -> RunStroke.parse(read, false);
            case NotchStroke.WORD -> NotchStroke.parse(read);
            case CutStroke.WORD -> CutStroke.parse(read);
            default -> throw read.unreadable();
        };
    }

    /** What takes several back, the last first; empty where one of them cannot be taken back. */
    static Optional<List<Stroke>> opposite(List<Stroke> strokes) {
        List<Stroke> back = new ArrayList<>();
        for (Stroke stroke : strokes) {
            Optional<Stroke> one = stroke.opposite();
            if (one.isEmpty()) {
                return Optional.empty();
            }
            back.add(0, one.get());
        }
        return Optional.of(List.copyOf(back));
    }
}
