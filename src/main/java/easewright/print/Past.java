package easewright.print;

import easewright.alter.Alterations;
import easewright.alter.Refusal;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pattern as it was before the changes recorded in it. */
public final class Past {
    /** The setting of a change that is taken back by the opposite amount, mm; a slash to a hinge has none. */
    private static final String AMOUNT = "amount";

    private Past() {}

    /** Empty where no change is recorded. */
    public static Optional<Pattern> of(Pattern pattern) {
        boolean outlineKept =
                pattern.pieces().stream().anyMatch(p -> p.original().isPresent());
        if (pattern.changes().isEmpty() && !outlineKept) {
            return Optional.empty();
        }
        boolean reversible =
                pattern.changes().stream().allMatch(c -> c.settings().containsKey(AMOUNT));
        Pattern undone;
        try {
            undone = reversible ? undone(pattern) : pattern;
        } catch (Refusal refusal) {
            // A change that cannot be taken back leaves the kept outlines, with the marks where they are now.
            undone = pattern;
        }
        return Optional.of(undone.withPieces(
                        undone.pieces().stream().map(Past::withOriginal).toList())
                .withChanges(List.of()));
    }

    private static Pattern undone(Pattern pattern) throws Refusal {
        Pattern now = pattern;
        List<ChangeNote> changes = pattern.changes();
        for (int i = changes.size() - 1; i >= 0; i--) {
            now = Alterations.from(opposite(changes.get(i))).apply(now).pattern();
        }
        return now;
    }

    private static ChangeNote opposite(ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>(note.settings());
        settings.computeIfPresent(AMOUNT, (key, text) -> text.startsWith("-") ? text.substring(1) : "-" + text);
        return new ChangeNote(note.method(), settings);
    }

    private static Piece withOriginal(Piece piece) {
        return piece.original().map(piece::withOutline).orElse(piece);
    }
}
