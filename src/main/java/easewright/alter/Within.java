package easewright.alter;

import easewright.measure.StitchLines;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Any change, made in one of several sizes or on one side of the garment, or both: exactly there, while the pieces of
 * other sizes and of the other side stay the same objects. Its record is that of the change, with the size and the side
 * among its settings.
 *
 * @param scope  where it is made
 * @param change what is made there
 */
public record Within(Scope scope, Alteration change) implements Alteration {
    /**
     * The change within the scope; the change itself where that is the whole garment.
     *
     * @throws IllegalArgumentException if the change has a scope already
     */
    public static Alteration of(Scope scope, Alteration change) {
        return scope.isWholeGarment() ? change : new Within(scope, change);
    }

    /** The change in a size, where one is meant. */
    public static Alteration of(Optional<String> size, Alteration change) {
        return of(new Scope(size, Side.BOTH), change);
    }

    public Within {
        if (change instanceof Within) {
            throw new IllegalArgumentException("A change has one scope only");
        }
    }

    @Override
    public ChangeNote note() {
        return scope.write(change.note());
    }

    @Override
    public Alteration withAmount(double mm) {
        return new Within(scope, change.withAmount(mm));
    }

    @Override
    public Optional<Alteration> opposite() {
        return change.opposite().map(o -> new Within(scope, o));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        return make(pattern, new StitchLines());
    }

    @Override
    public Altered make(Pattern pattern, StitchLines lines) throws Refusal {
        PatternPart part = scope.garment(pattern);
        Altered done = scope.side() == Side.BOTH
                ? change.make(part.alone(), lines)
                : new OneSide(part.alone(), scope.side(), change).done(lines);
        Pattern changed = done.pattern();
        if (changed == part.alone()) {
            return Altered.nothing(pattern);
        }
        requireOwn(pattern, changed);
        return new Altered(
                part.back(changed).withChanges(pattern.changes()).withChange(note()), done.moved(), done.findings());
    }

    /** What belongs to every size must not change in one: the others' girths would change with it. */
    private static void requireOwn(Pattern before, Pattern changed) throws Refusal {
        if (!PatternPart.severalSizes(before)) {
            return;
        }
        Map<String, Piece> was = new LinkedHashMap<>();
        before.pieces().forEach(p -> was.put(p.id(), p));
        for (Piece piece : changed.pieces()) {
            if (piece.size().isEmpty() && was.get(piece.id()) != piece) {
                throw Refusal.of("piece-of-all-sizes")
                        .with("piece", piece.name())
                        .with("known", List.copyOf(PatternPart.sizes(before)));
            }
        }
    }
}
