package easewright.ease;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What sources say of a knit that stretches so far: what they call it, and how much smaller than the body garments of
 * knits are made. They do not agree on the words, and a word of one is never taken for the same word of another.
 *
 * @param stretch    of the cloth across, percent
 * @param recovery   how much of a stretch the cloth takes back when it is let go, percent, if it was tried
 * @param named      what each source that goes by stretch calls it
 * @param reductions of each source that gives some without saying for what stretch, in rising order
 * @param margin     the share of the stretch that a garment may use at rest
 */
public record StretchSaid(
        double stretch,
        OptionalDouble recovery,
        List<Named> named,
        List<List<StretchClass>> reductions,
        Optional<StretchMargin> margin) {
    /** Percentages nearer than this are the same: half of the tenth to which they are shown. */
    private static final double SAME = 0.05;

    /**
     * One source's word.
     *
     * @param is   the highest class whose stretch is reached, or several that begin there; none below the lowest
     * @param next the class above it; empty above the highest. One of the two is there
     */
    public record Named(List<StretchClass> is, Optional<StretchClass> next) {
        public Named {
            is = List.copyOf(is);
        }
    }

    /**
     * Where a garment lies among the reductions of one source.
     *
     * @param asMuchAs the class with the largest reduction that it reaches
     * @param lessThan the class with the next larger one; one of the two is there
     */
    public record Reduced(Optional<StretchClass> asMuchAs, Optional<StretchClass> lessThan) {}

    public StretchSaid {
        named = List.copyOf(named);
        reductions = reductions.stream().map(List::copyOf).toList();
    }

    static StretchSaid of(double stretch, OptionalDouble recovery, EaseTables tables) {
        List<Named> named = new ArrayList<>();
        List<List<StretchClass>> reductions = new ArrayList<>();
        Map<String, List<StretchClass>> bySource = new LinkedHashMap<>();
        tables.knitClasses()
                .forEach(c -> bySource.computeIfAbsent(c.source(), s -> new ArrayList<>())
                        .add(c));
        for (List<StretchClass> source : bySource.values()) {
            List<StretchClass> byStretch = source.stream()
                    .filter(c -> c.stretch().isPresent())
                    .sorted(Comparator.comparingDouble(c -> c.stretch().getAsDouble()))
                    .toList();
            List<StretchClass> byWord = source.stream()
                    .filter(c -> c.stretch().isEmpty() && c.reduction().isPresent())
                    .sorted(Comparator.comparingDouble(c -> c.reduction().getAsDouble()))
                    .toList();
            if (!byStretch.isEmpty()) {
                named.add(named(byStretch, stretch));
            }
            if (!byWord.isEmpty()) {
                reductions.add(byWord);
            }
        }
        return new StretchSaid(stretch, recovery, named, reductions, tables.margin());
    }

    /** Among classes in rising order of their stretch. */
    private static Named named(List<StretchClass> classes, double stretch) {
        List<StretchClass> reached = classes.stream()
                .filter(c -> c.stretch().orElseThrow() <= stretch + SAME)
                .toList();
        double top = last(reached).map(c -> c.stretch().orElseThrow()).orElse(0.0);
        return new Named(
                reached.stream().filter(c -> c.stretch().orElseThrow() == top).toList(),
                classes.stream()
                        .filter(c -> c.stretch().orElseThrow() > stretch + SAME)
                        .findFirst());
    }

    /**
     * Where a garment lies among the reductions of one source.
     *
     * @param percent by how much it is smaller than the body, percent of the body
     */
    public static Reduced reduced(List<StretchClass> classes, double percent) {
        return new Reduced(
                last(classes.stream()
                        .filter(c -> c.reduction().orElseThrow() <= percent + SAME)
                        .toList()),
                classes.stream()
                        .filter(c -> c.reduction().orElseThrow() > percent + SAME)
                        .findFirst());
    }

    /** The ease, mm, with which a garment at rest would use just the share of the stretch that it may. */
    public OptionalDouble easeAtMargin(double bodyMm) {
        return margin.map(m -> OptionalDouble.of(bodyMm / (1 + stretch * m.atRestPercent() / 10000) - bodyMm))
                .orElse(OptionalDouble.empty());
    }

    /**
     * By how much a garment may stay wider than it was cut once it has been worn, mm, for what the body stretched it by
     * and the cloth does not take back: 100 (L1 − L2)/(L1 − L0) is its recovery (docs/sources.md 5). It is at most so
     * much, since the cloth was tried at its full stretch. Empty where the recovery is not known.
     *
     * @param easeMm of the new garment; one that is not smaller than the body is not stretched by it
     */
    public OptionalDouble staysWider(double easeMm) {
        return recovery.isPresent()
                ? OptionalDouble.of(Math.max(0, -easeMm) * (1 - recovery.getAsDouble() / 100))
                : OptionalDouble.empty();
    }

    private static Optional<StretchClass> last(List<StretchClass> classes) {
        return classes.isEmpty() ? Optional.empty() : Optional.of(classes.get(classes.size() - 1));
    }
}
