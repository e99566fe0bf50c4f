package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;

/**
 * Goes back along the recorded changes of a pattern: anew from what was drawn, where all changes together then come to
 * what is now; else by making the opposite of each, the newest first.
 */
public final class Retrace {
    private Retrace() {}

    /**
     * The pattern with only its first changes made. Outlines and marks come back within 1e-6 mm; for none kept, the
     * outlines are the very ones kept from before the first change.
     *
     * @param kept how many changes remain
     * @throws Refusal if one of the later changes has no opposite, or that cannot be made any more
     */
    public static Pattern to(Pattern pattern, int kept) throws Refusal {
        if (kept == pattern.changes().size()) {
            return kept > 0 ? pattern : drawn(pattern);
        }
        Optional<Pattern> anew = new MadeAnew(pattern).to(kept);
        return anew.isPresent() ? anew.get() : byOpposites(pattern, kept);
    }

    private static Pattern byOpposites(Pattern pattern, int kept) throws Refusal {
        Pattern now = pattern;
        List<ChangeNote> changes = pattern.changes();
        for (int i = changes.size() - 1; i >= kept; i--) {
            now = Ways.from(opposite(changes.get(i))).apply(now).pattern();
        }
        now = now.withChanges(changes.subList(0, kept));
        return kept > 0 ? now : drawn(now);
    }

    /**
     * The pattern as it was drawn, with marks where the opposites bring them: changes that cannot be taken back are
     * passed over, so that marks may lie off. The outlines are exact.
     */
    static Pattern roughly(Pattern pattern) {
        Pattern now = pattern;
        for (int i = pattern.changes().size() - 1; i >= 0; i--) {
            try {
                now = Ways.from(opposite(pattern.changes().get(i))).apply(now).pattern();
            } catch (Refusal leftAsItIs) {
                continue;
            }
        }
        return drawn(now);
    }

    private static Pattern drawn(Pattern now) {
        return now.withChanges(List.of())
                .withPieces(now.pieces().stream().map(Retrace::asDrawn).toList());
    }

    private static ChangeNote opposite(ChangeNote note) throws Refusal {
        return Ways.from(note)
                .opposite()
                .map(Alteration::note)
                .orElseThrow(() -> Refusal.of("change-one-way").with("method", note.method()));
    }

    private static Piece asDrawn(Piece piece) {
        boolean untouched = piece.original().isEmpty()
                && piece.riders().stream().allMatch(r -> r.original().isEmpty());
        return untouched
                ? piece
                : piece.toBuilder()
                        .outline(piece.original().orElse(piece.outline()))
                        .original(Optional.empty())
                        .riders(piece.riders().stream().map(Rider::asDrawn).toList())
                        .build();
    }
}
