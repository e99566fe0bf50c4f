package easewright.editor.model;

import easewright.alter.Altered;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.measure.StitchLines;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
     * @param sizes    in which it is made, in the order of the pattern; none where that comes in one
     * @param several  what is read in all of them, before it and with it
     * @param offer    what was offered and is tried; empty where it is what is wanted
     */
    record Shown(
            Wanted wanted,
            Altered altered,
            Reading reading,
            List<Finding> findings,
            List<EdgeFate> fates,
            List<String> sizes,
            SeveralRead several,
            Optional<FollowUp.Press> offer)
            implements Trial {
        public Shown {
            sizes = List.copyOf(sizes);
            findings = List.copyOf(findings);
            fates = List.copyOf(fates);
        }
    }

    /**
     * It was refused.
     *
     * @param size which of several sizes refused it, of which then none is changed; of several the one that allows least
     */
    record Refused(Wanted wanted, Refusal refusal, Optional<String> size) implements Trial {
        /** The largest amount that would work, mm, where that is known; none that is shown as nothing. */
        public OptionalDouble largest(Words words) {
            return shown(refusal.largest(), words);
        }

        static OptionalDouble shown(OptionalDouble amount, Words words) {
            return amount.stream().filter(mm -> words.shown(mm) != 0).findFirst();
        }

        /** Why, and in which of several sizes. */
        public String words(Words words) {
            String why = words.problem(refusal.code(), refusal.values());
            return size.map(s -> words.problem("change-refused-in-size", Map.of("size", s, "reason", why)))
                    .orElse(why);
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
            return Optional.of(new Refused(wanted, before.refusal(), before.size()));
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
            Optional<Shown> alike = last.filter(Shown.class::isInstance)
                    .map(Shown.class::cast)
                    .filter(l -> l.offer().isEmpty()
                            && l.wanted().level().equals(wanted.level())
                            && l.wanted().alsoIn().equals(wanted.alsoIn()));
            List<String> sizes =
                    alike.map(Shown::sizes).orElseGet(() -> AlsoIn.taking(pattern, reading.size(), wanted));
            EachSize.Outcome outcome =
                    new EachSize(wanted, sizes, pieces.alone(), taking).made(pattern, reading.size(), lines);
            if (outcome.refused().isPresent()) {
                return Optional.of(outcome.refused().get());
            }
            Altered altered = outcome.altered();
            Reading after = Reading.quick(altered.pattern(), pattern, reading, lines);
            List<Finding> findings = new ArrayList<>(altered.findings());
            SeveralRead several =
                    SeveralRead.of(pattern, reading, altered.pattern(), after, sizes, alike.map(Shown::several));
            findings.addAll(Reading.drift(pattern, reading, altered.pattern(), several));
            List<EdgeFate> fates = EdgeFate.of(pattern, altered.pattern());
            return Optional.of(new Shown(wanted, altered, after, findings, fates, sizes, several, Optional.empty()));
        } catch (Refusal refusal) {
            return Optional.of(new Refused(wanted, refusal, Optional.empty()));
        }
    }

    /** Something that is offered tried on the pattern, in place of anything that is wanted by an amount. */
    static Trial of(Pattern pattern, Reading reading, Wanted wanted, FollowUp.Press offer) {
        Pattern made = offer.result();
        Reading after = Reading.quick(made, pattern, reading, new StitchLines(reading.measures()));
        List<Finding> findings = new ArrayList<>(offer.findings());
        List<String> sizes = changed(pattern, made, reading.size());
        SeveralRead several = SeveralRead.of(pattern, reading, made, after, sizes, Optional.empty());
        findings.addAll(Reading.drift(pattern, reading, made, several));
        return new Shown(
                wanted,
                new Altered(made, List.of(), findings),
                after,
                findings,
                EdgeFate.of(pattern, made),
                sizes,
                several,
                Optional.of(offer));
    }

    /** The size at work, and those others of which a piece is another than before. */
    private static List<String> changed(Pattern pattern, Pattern made, Optional<String> work) {
        List<String> touched = made.pieces().stream()
                .filter(p -> !pattern.piece(p.id()).equals(Optional.of(p)))
                .flatMap(p -> p.size().stream())
                .toList();
        return work.isEmpty()
                ? List.of()
                : PatternPart.sizes(pattern).stream()
                        .filter(s -> work.get().equals(s) || touched.contains(s))
                        .toList();
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
