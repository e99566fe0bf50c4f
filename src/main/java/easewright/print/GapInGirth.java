package easewright.print;

import easewright.alter.Scope;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;

/** What the gap of a slash that moves a part square to the grain comes to all round, where its piece counts more than once. */
final class GapInGirth {
    private GapInGirth() {}

    /** By how much each girth across the gap changes, mm; empty where that is the gap, or another at each level. */
    static Optional<Double> of(ChangeNote note, Pattern pattern) {
        Optional<Way> way = Ways.of(note.method());
        boolean alike = way.filter(w -> w.aim() == Way.Aim.GAP && w.amount().equals("amount"))
                .isPresent();
        if (!alike || Scope.of(note).side() != Side.BOTH) {
            return Optional.empty();
        }
        List<Integer> counts = pattern.piece(note.settings().getOrDefault("piece", "")).stream()
                .flatMap(piece -> pattern.levels().stream()
                        .filter(l ->
                                piece.level(l.name()).filter(m -> m.counts()).isPresent())
                        .map(piece::count))
                .distinct()
                .toList();
        return counts.size() == 1 && counts.get(0) > 1
                ? way.flatMap(w -> w.amountOf(note)).map(mm -> mm * counts.get(0))
                : Optional.empty();
    }
}
