package easewright.print;

import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.Ways;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.measure.MovedRuns;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which recorded changes moved which piece: seen by making them one after the other, since a change may reach pieces that
 * its record does not name, and name pieces that it leaves as they are.
 *
 * @param changes by the piece's id, oldest first
 */
public record MovedBy(Map<String, List<ChangeNote>> changes) {
    /** Less than the last digit of any figure, mm: nobody could see or cut it. */
    private static final double SEEN = 0.1;

    /**
     * @param before as it was before any of them
     */
    public static MovedBy of(Pattern before, Pattern after) {
        Map<String, List<ChangeNote>> changes = new HashMap<>();
        Pattern was = before;
        for (ChangeNote note : after.changes()) {
            Optional<Pattern> is = made(note, was);
            for (Piece piece : after.pieces()) {
                boolean moved =
                        is.isPresent() ? moved(was, is.get(), piece.id()) : isThere(note, piece) && changed(piece);
                if (moved) {
                    changes.computeIfAbsent(piece.id(), id -> new ArrayList<>()).add(note);
                }
            }
            was = is.orElse(was);
        }
        return new MovedBy(changes);
    }

    private static Optional<Pattern> made(ChangeNote note, Pattern was) {
        try {
            return Optional.of(Ways.from(note).apply(was).pattern());
        } catch (Refusal | IllegalArgumentException cannotBeMadeAgain) {
            return Optional.empty();
        }
    }

    private static boolean moved(Pattern was, Pattern is, String id) {
        Optional<Piece> now = is.piece(id);
        return now.isPresent() && moved(outlineBefore(was, now.get()), now.get().outline());
    }

    /** The outline that a piece had, where it lies now: of a copy made since for the other side, the one it was made with. */
    public static Outline outlineBefore(Pattern was, Piece now) {
        return was.piece(now.id())
                .map(Piece::outline)
                .orElseGet(() -> now.original().orElse(now.outline()));
    }

    /** Whether an outline lies visibly elsewhere. */
    public static boolean moved(Outline was, Outline is) {
        return was != is && !runs(was, is).isEmpty();
    }

    /** What of an outline lies visibly elsewhere. */
    public static List<Segment> runs(Outline was, Outline is) {
        return MovedRuns.between(was, is, SEEN);
    }

    private static boolean changed(Piece piece) {
        return piece.original().filter(o -> moved(o, piece.outline())).isPresent();
    }

    /** Where a change cannot be made again: whether it was made in the piece's size and on its side. */
    private static boolean isThere(ChangeNote note, Piece piece) {
        Scope scope = Scope.of(note);
        return (scope.size().isEmpty() || scope.size().equals(piece.size()))
                && scope.side().belongsTo(piece.side());
    }

    /** Those that moved a piece. */
    public List<ChangeNote> piece(Piece piece) {
        return changes.getOrDefault(piece.id(), List.of());
    }
}
