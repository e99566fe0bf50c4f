package easewright.editor.model;

import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.pattern.Body;
import easewright.pattern.Pattern;
import easewright.pattern.Wish;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * How every size stands to the wishes: a wish is an ease, and one for all sizes, each on its own body.
 *
 * @param all none where the pattern comes in one size
 */
public record SizeWishes(List<OfSize> all) {
    static final SizeWishes NONE = new SizeWishes(List.of());

    /**
     * One size at one level for which an ease is wished.
     *
     * @param missing what must still be added, mm, taken away if negative; empty where the body is not known
     */
    record OfSize(Girth girth, OptionalDouble missing) {
        boolean met() {
            return missing.isPresent() && Math.abs(missing.getAsDouble()) <= EaseRow.MET_WITHIN;
        }
    }

    /**
     * In words, for one level.
     *
     * @param unmet the sizes that do not meet the wish while others do; none where all are alike
     * @param alike those of them of which the same is said as of the size at work, and that one; none where there are
     *              no others
     * @param each  the sizes of which the same is said, together
     */
    public record Said(String words, List<String> unmet, List<String> alike, List<List<String>> each) {
        public Said {
            unmet = List.copyOf(unmet);
            alike = List.copyOf(alike);
            each = List.copyOf(each);
        }

        /** Beside the verdict on one size, which is not told of twice. */
        Said beside(Optional<String> size) {
            List<String> as = each.stream()
                    .filter(of -> of.size() > 1 && size.filter(of::contains).isPresent() && unmet.containsAll(of))
                    .findFirst()
                    .orElse(List.of());
            return new Said(
                    words,
                    unmet.stream()
                            .filter(s -> size.isEmpty() || !s.equals(size.get()) && !s.startsWith(size.get() + " ("))
                            .toList(),
                    as,
                    each);
        }
    }

    public SizeWishes {
        all = List.copyOf(all);
    }

    /**
     * @param measures of all sizes
     */
    static SizeWishes of(Pattern pattern, GarmentMeasures measures) {
        List<OfSize> all = new ArrayList<>();
        for (Girth girth : measures.girths()) {
            Wish wish = pattern.wishes().get(girth.level().name());
            if (wish == null || girth.size().isEmpty() || girth.parts().isEmpty()) {
                continue;
            }
            Body wearer = pattern.body(girth.size());
            OptionalDouble own = wearer.girth(girth.name());
            OptionalDouble body =
                    own.isPresent() ? own : wearer.girth(girth.level().name());
            OptionalDouble missing = body.isPresent()
                    ? OptionalDouble.of(wish.on(body).orElseThrow() - (girth.finished() - body.getAsDouble()))
                    : OptionalDouble.empty();
            all.add(new OfSize(girth, missing));
        }
        return new SizeWishes(all);
    }

    /** What to say beside the wish for a level; nothing where there is none, or one size only. */
    Optional<Said> said(String level, Words words) {
        List<OfSize> here =
                all.stream().filter(s -> s.girth().level().name().equals(level)).toList();
        if (here.isEmpty()) {
            return Optional.empty();
        }
        Map<String, List<String>> sizes = new LinkedHashMap<>();
        here.forEach(s ->
                sizes.computeIfAbsent(how(s, words), h -> new ArrayList<>()).add(size(s.girth())));
        String each = sizes.entrySet().stream()
                .map(e -> words.of("editor.ease.sizes.each", Map.of("sizes", e.getValue(), "how", e.getKey())))
                .collect(Collectors.joining(words.of("editor.ease.between")));
        boolean differ = here.stream().map(OfSize::met).distinct().count() > 1;
        List<String> unmet = here.stream()
                .filter(s -> differ && !s.met())
                .map(s -> size(s.girth()))
                .toList();
        return Optional.of(new Said(
                words.of("editor.ease.sizes", Map.of("each", each)), unmet, List.of(), List.copyOf(sizes.values())));
    }

    private static String how(OfSize one, Words words) {
        double missing = one.missing().orElse(0);
        String how = one.missing().isEmpty() ? "unknown" : one.met() ? "met" : missing > 0 ? "missing" : "over";
        return words.of("editor.ease.sizes." + how, Map.of("amount", Math.abs(missing)));
    }

    /** With the limb where left and right have each their own girth. */
    private static String size(Girth girth) {
        String size = girth.size().orElseThrow();
        return girth.name().equals(girth.level().name()) ? size : size + " (" + girth.name() + ")";
    }
}
