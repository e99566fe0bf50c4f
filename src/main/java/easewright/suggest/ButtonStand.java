package easewright.suggest;

import easewright.pattern.Caption;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.List;

/** How far a front reaches over the centre line that is drawn on it. */
public final class ButtonStand {
    private ButtonStand() {}

    /** The mark with the overlap that the drawing shows; the same mark where it shows none. */
    public static LevelMark on(Piece piece, LevelMark mark) {
        return on(piece, mark, List.of());
    }

    /**
     * What of a pair reaches over its centre line lies on the other one and is none of the girth.
     *
     * @param words on the piece
     */
    static LevelMark on(Piece piece, LevelMark mark, List<Caption> words) {
        boolean pair = piece.times() > 1 && !piece.onFold();
        return pair
                ? CentreLine.on(piece, words)
                        .map(centre -> mark.withOverlap(centre.overlap(piece, mark)))
                        .orElse(mark)
                : mark;
    }
}
