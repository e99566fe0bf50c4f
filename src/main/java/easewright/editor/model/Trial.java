package easewright.editor.model;

import easewright.alter.Altered;
import easewright.alter.Refusal;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a wanted change would do, or why it cannot be done. Nothing has been done yet. */
public sealed interface Trial {
    Wanted wanted();

    /** It works. */
    record Shown(Wanted wanted, Altered altered, Reading reading, List<Finding> findings) implements Trial {
        public Shown {
            findings = List.copyOf(findings);
        }
    }

    /** It was refused. */
    record Refused(Wanted wanted, Refusal refusal) implements Trial {
        /** The largest amount that would work, mm, where that is known. */
        public OptionalDouble largest() {
            return refusal.largest();
        }
    }

    /** The wanted change tried on the pattern; empty for nothing. */
    static Optional<Trial> of(Pattern pattern, Reading reading, Wanted wanted) {
        if (wanted.amount() == 0) {
            return Optional.empty();
        }
        List<Hold> holds = reading.measures().girths().stream()
                .filter(g -> g.level().name().equals(wanted.level()))
                .findFirst()
                .map(g -> Hold.of(pattern, g))
                .orElse(List.of());
        try {
            Altered altered = wanted.change(holds).apply(pattern);
            Reading after = Reading.quick(altered.pattern());
            return Optional.of(new Shown(wanted, altered, after, altered.findings()));
        } catch (Refusal refusal) {
            return Optional.of(new Refused(wanted, refusal));
        }
    }
}
