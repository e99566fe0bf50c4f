package easewright.svg;

import easewright.pattern.Pattern;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a person said about a file on opening it.
 *
 * @param mmPerUnit what a line of known length shows: mm per user unit of the root element, if anything
 * @param layers    keys of the only layers to read, hidden ones among them; empty for all that are shown
 * @param besides   keys of layers to read although they are hidden
 * @param without   keys of layers to leave out although they are shown
 * @param resting   marked pieces in layers that are not read, which are to stay in the file; empty for those that it holds
 */
public record ReadOptions(
        OptionalDouble mmPerUnit,
        Set<String> layers,
        Set<String> besides,
        Set<String> without,
        Optional<Pattern> resting) {
    /** The file as it stands. */
    public static final ReadOptions AS_FILED =
            new ReadOptions(OptionalDouble.empty(), Set.of(), Set.of(), Set.of(), Optional.empty());

    /**
     * @throws IllegalArgumentException if {@code mmPerUnit} is not above 0
     */
    public ReadOptions {
        if (mmPerUnit.isPresent() && !(mmPerUnit.getAsDouble() > 0 && Double.isFinite(mmPerUnit.getAsDouble()))) {
            throw new IllegalArgumentException("Millimetres per unit must be above 0");
        }
        layers = Set.copyOf(layers);
        besides = Set.copyOf(besides);
        without = Set.copyOf(without);
    }

    public ReadOptions withScale(double mm) {
        return new ReadOptions(OptionalDouble.of(mm), layers, besides, without, resting);
    }

    /** Only these layers; all that are shown if there are none. */
    public ReadOptions withLayers(Set<String> chosen) {
        return new ReadOptions(mmPerUnit, chosen, Set.of(), Set.of(), resting);
    }

    /** What is shown, and these layers besides, without those. */
    public ReadOptions withShown(Set<String> more, Set<String> less) {
        return new ReadOptions(mmPerUnit, Set.of(), more, less, resting);
    }

    /** With the marks of these pieces kept in the file although their layers are not read. */
    public ReadOptions withResting(Pattern pieces) {
        return new ReadOptions(mmPerUnit, layers, besides, without, Optional.of(pieces));
    }
}
