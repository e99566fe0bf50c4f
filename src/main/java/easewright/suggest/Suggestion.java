package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One thing that the drawing most likely means. Immutable; nothing is done until somebody applies it. */
public sealed interface Suggestion permits Suggestion.OfPiece, LevelSuggestion, MateSuggestion {
    /** What kind of mark it is. */
    enum Kind {
        NO_PIECE,
        OWN_SIZE,
        STITCHING_LINE,
        NAME,
        SIZE,
        CUT,
        GRAIN,
        EDGES,
        DART,
        NOTCHES,
        LEVEL,
        MATE
    }

    Kind kind();

    /** Names this suggestion among all of one sheet, the same whenever the sheet is looked at again. */
    String key();

    Reason reason();

    /** What is suggested; the words are in the bundle under {@code suggestion.<kind>}. */
    Map<String, Object> values();

    /** The lines it speaks of, as they lie on the sheet; may be empty. */
    List<Segment> shown();

    /** What is suggested in its place where it is left out, if that is known. */
    default Optional<Suggestion> otherwise() {
        return Optional.empty();
    }

    /** The pattern with the mark made; unchanged if what it speaks of is not there. */
    Pattern apply(Pattern pattern);

    /** A suggestion about one piece. */
    sealed interface OfPiece extends Suggestion permits NoPiece, OwnSize, OnPiece {
        /** Id of the piece. */
        String piece();
    }

    /** A mark on the piece itself. */
    sealed interface OnPiece extends OfPiece
            permits StitchingLine, PieceName, PieceSize, CutCount, GrainLine, PieceEdges, DartSuggestion, PieceNotches {
        /** The piece with the mark made. */
        Piece marked(Piece old);

        @Override
        default List<Segment> shown() {
            return List.of();
        }

        @Override
        default Pattern apply(Pattern pattern) {
            return pattern.withPieces(pattern.pieces().stream()
                    .map(p -> p.id().equals(piece()) ? marked(p) : p)
                    .toList());
        }
    }
}
