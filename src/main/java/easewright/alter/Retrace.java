package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
            return kept > 0 ? pattern : drawn(pattern, pattern);
        }
        Optional<Way> proved = proved(pattern, kept);
        return proved.isPresent() ? proved.get().back() : to(pattern, kept, LevelsSince.START);
    }

    /**
     * A way back that leads again to what is now.
     *
     * @param back  the pattern with only its first changes made
     * @param since which levels the changes taken back did not know of
     */
    record Way(Pattern back, LevelsSince since) {}

    /** Empty where none is found. */
    static Optional<Way> proved(Pattern pattern, int kept) {
        for (LevelsSince since : LevelsSince.candidates(pattern)) {
            Optional<Way> way = proved(pattern, kept, since);
            if (way.isPresent()) {
                return way;
            }
        }
        return Optional.empty();
    }

    /** Whether there is one if all levels were there from the start. */
    static boolean isProved(Pattern pattern, int kept) {
        return proved(pattern, kept, LevelsSince.START).isPresent();
    }

    private static Optional<Way> proved(Pattern pattern, int kept, LevelsSince since) {
        try {
            Pattern back = to(pattern, kept, since);
            List<ChangeNote> changes = pattern.changes();
            boolean leads = new MadeAnew(pattern, since).same(since.forward(back, changes, kept, changes.size()));
            return leads ? Optional.of(new Way(back, since)) : Optional.empty();
        } catch (Refusal | IllegalArgumentException notSo) {
            return Optional.empty();
        }
    }

    private static Pattern to(Pattern pattern, int kept, LevelsSince since) throws Refusal {
        Optional<Pattern> anew = new MadeAnew(pattern, since).to(kept);
        return anew.isPresent() ? anew.get() : byOpposites(pattern, kept, since);
    }

    private static Pattern byOpposites(Pattern pattern, int kept, LevelsSince since) throws Refusal {
        Pattern now = pattern;
        List<ChangeNote> changes = pattern.changes();
        for (int i = changes.size() - 1; i >= kept; i--) {
            now = since.made(now, Ways.from(opposite(changes.get(i))), i);
        }
        now = now.withChanges(changes.subList(0, kept));
        return kept > 0 ? known(pattern, now) : drawn(pattern, now);
    }

    /**
     * The pattern as it was drawn, with marks where the opposites bring them: changes that cannot be taken back are
     * passed over, so that marks may lie off. The outlines are exact.
     */
    static Pattern roughly(Pattern pattern, LevelsSince since) {
        Pattern now = pattern;
        for (int i = pattern.changes().size() - 1; i >= 0; i--) {
            try {
                now = since.made(now, Ways.from(opposite(pattern.changes().get(i))), i);
            } catch (Refusal leftAsItIs) {
                continue;
            }
        }
        return drawn(pattern, now);
    }

    private static Pattern drawn(Pattern given, Pattern now) {
        Pattern known = known(given, now);
        return known.withChanges(List.of())
                .withPieces(known.pieces().stream().map(Retrace::asDrawn).toList());
    }

    /**
     * Without what the opposites note as drawn of lines of which the given pattern does not know how they were drawn, as
     * in files from before that was kept: it is how these lie after the changes.
     */
    private static Pattern known(Pattern given, Pattern now) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : now.pieces()) {
            Set<String> unknown = given.piece(piece.id()).stream()
                    .flatMap(p -> p.riders().stream())
                    .filter(r -> r.original().isEmpty())
                    .map(Rider::id)
                    .collect(Collectors.toSet());
            pieces.add(piece.toBuilder()
                    .riders(piece.riders().stream()
                            .map(r -> unknown.contains(r.id()) ? r.unknownAsDrawn() : r)
                            .toList())
                    .build());
        }
        return now.withPieces(pieces);
    }

    /** As if of no line it were known how it was drawn. */
    static Pattern linesUnknown(Pattern pattern) {
        return pattern.withPieces(pattern.pieces().stream()
                .map(p -> p.toBuilder()
                        .riders(p.riders().stream().map(Rider::unknownAsDrawn).toList())
                        .build())
                .toList());
    }

    private static ChangeNote opposite(ChangeNote note) throws Refusal {
        return Ways.from(note).opposite().map(Alteration::note).orElseThrow(() -> Refusal.of("change-one-way"));
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
