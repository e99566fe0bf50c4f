package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.print.GirthText;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How it stands at one level in the sizes in which the same is done as in the one at work.
 *
 * @param brief their ease on one line, or their girth where a body is not known
 * @param told  both, a line for each size
 */
public record OtherSizes(String brief, List<String> told) {
    public OtherSizes {
        told = List.copyOf(told);
    }

    /**
     * @param line  of the size at work
     * @param sizes what was read off the pattern in all sizes
     * @param names of the other sizes, in the order of the pattern
     */
    static Optional<OtherSizes> of(EaseLine line, Reading sizes, List<String> names, Words words) {
        List<EaseLine> others = names.stream()
                .flatMap(size -> sizes.sheet().lines().stream()
                        .filter(l -> l.girth().size().equals(Optional.of(size)))
                        .filter(l -> l.level().equals(line.level()) && l.name().equals(line.name())))
                .filter(l -> !l.girth().parts().isEmpty())
                .toList();
        if (others.isEmpty()) {
            return Optional.empty();
        }
        boolean ease = others.stream().allMatch(l -> l.ease().isPresent());
        BySize each = new BySize();
        List<String> told = new ArrayList<>();
        for (EaseLine other : others) {
            String size = other.girth().size().orElseThrow();
            OptionalDouble is = other.ease();
            each.add(size, words.length(ease ? is.getAsDouble() : GirthText.finished(other, words)));
            told.add(
                    is.isPresent()
                            ? words.of(
                                    "editor.ease.also.told",
                                    Map.of(
                                            "size",
                                            size,
                                            "finished",
                                            GirthText.finished(other, words),
                                            "ease",
                                            is.getAsDouble()))
                            : words.of(
                                    "editor.ease.also.told.girth",
                                    Map.of("size", size, "finished", GirthText.finished(other, words))));
        }
        String said = String.join(", ", each.lines(words, "editor.ease.also.in-size", line.name()));
        return Optional.of(new OtherSizes(
                words.of(ease ? "editor.ease.also" : "editor.ease.also.girth", Map.of("each", said)), told));
    }
}
