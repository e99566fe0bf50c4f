package easewright.print;

import easewright.alter.Refusal;
import easewright.alter.Retrace;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/** The pattern as it was before the changes recorded in it. */
public final class Past {
    private Past() {}

    /** Empty where no change is recorded. */
    public static Optional<Pattern> of(Pattern pattern) {
        boolean outlineKept =
                pattern.pieces().stream().anyMatch(p -> p.original().isPresent());
        if (pattern.changes().isEmpty() && !outlineKept) {
            return Optional.empty();
        }
        try {
            return Optional.of(Retrace.to(pattern, 0));
        } catch (Refusal refusal) {
            // A change that cannot be taken back leaves the kept outlines, with the marks where they are now.
            return Optional.of(pattern.withPieces(
                            pattern.pieces().stream().map(Past::withOriginal).toList())
                    .withChanges(List.of()));
        }
    }

    private static Piece withOriginal(Piece piece) {
        return piece.original().map(piece::withOutline).orElse(piece);
    }
}
