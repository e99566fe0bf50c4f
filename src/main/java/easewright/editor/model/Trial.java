package easewright.editor.model;

import easewright.alter.Altered;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.Within;
import easewright.measure.StitchLines;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a wanted change would do, or why it cannot be done. Nothing has been done yet. */
public sealed interface Trial {
    Wanted wanted();

    /**
     * It works.
     *
     * @param findings what it brings with it
     * @param fates    what it does to each edge of the pieces it touches
     */
    record Shown(Wanted wanted, Altered altered, Reading reading, List<Finding> findings, List<EdgeFate> fates)
            implements Trial {
        public Shown {
            findings = List.copyOf(findings);
            fates = List.copyOf(fates);
        }
    }

    /** It was refused. */
    record Refused(Wanted wanted, Refusal refusal) implements Trial {
        /** The largest amount that would work, mm, where that is known. */
        public OptionalDouble largest() {
            return refusal.largest();
        }
    }

    /**
     * The wanted change tried on the pattern; empty for nothing.
     *
     * @param last what the last wish on the same pattern came to
     */
    static Optional<Trial> of(Pattern pattern, Reading reading, Wanted wanted, Optional<Trial> last) {
        boolean unready = wanted.other().map(o -> !o.missing().isEmpty()).orElse(false);
        if (wanted.amount() == 0 || unready) {
            return Optional.empty();
        }
        // Finding the largest amount that works takes some twenty tries; a hand that pulls on need not wait for it.
        if (last.isPresent() && last.get() instanceof Refused before && wanted.asksMoreThan(before.wanted())) {
            return Optional.of(new Refused(wanted, before.refusal()));
        }
        StitchLines lines = new StitchLines(reading.measures());
        try {
            Scope scope = new Scope(reading.size(), wanted.side());
            PatternPart pieces = scope.part(pattern);
            List<EdgeRef> taking = holds(pattern, reading, wanted).stream()
                    .map(Hold::edge)
                    .distinct()
                    .filter(e -> !wanted.leftOut().contains(e))
                    .flatMap(e -> pieces.idInPart(e.piece()).stream().map(id -> EdgeRef.of(id, e.edge())))
                    .toList();
            Altered altered =
                    Within.of(scope, wanted.change(pieces.alone(), taking)).apply(pattern, lines);
            Reading after = Reading.quick(altered.pattern(), pattern, reading, lines);
            List<Finding> findings = new ArrayList<>(altered.findings());
            findings.addAll(Reading.drift(pattern, reading, altered.pattern(), after));
            return Optional.of(new Shown(wanted, altered, after, findings, EdgeFate.of(pattern, altered.pattern())));
        } catch (Refusal refusal) {
            return Optional.of(new Refused(wanted, refusal));
        }
    }

    /** The seams at the level, which only have to be known where some of them are left out. */
    private static List<Hold> holds(Pattern pattern, Reading reading, Wanted wanted) {
        return reading.measures().girths().stream()
                .filter(g -> !wanted.leftOut().isEmpty() && g.level().name().equals(wanted.level()))
                .findFirst()
                .map(g -> Hold.of(pattern, g))
                .orElse(List.of());
    }
}
