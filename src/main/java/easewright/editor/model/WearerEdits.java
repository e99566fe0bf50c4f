package easewright.editor.model;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** What is entered about who wears the garment and how wide it is wished: another pattern each time. */
final class WearerEdits {
    private WearerEdits() {}

    /**
     * The body girth at a level, mm, or with empty none: that of the size, where it has a wearer of its own.
     *
     * @param name what the measurement is called, unless it has a name already
     */
    static Pattern measure(Pattern pattern, Optional<String> size, Level level, OptionalDouble mm, String name) {
        Optional<String> ownSize = size.filter(pattern.bodies()::containsKey);
        Body body = pattern.body(ownSize);
        List<BodyMeasure> measures = new ArrayList<>(body.measures());
        Optional<BodyMeasure> old =
                measures.stream().filter(m -> m.level().equals(level.name())).findFirst();
        old.ifPresent(measures::remove);
        mm.ifPresent(v -> measures.add(new BodyMeasure(
                old.map(BodyMeasure::name).orElse(name),
                level.name(),
                v,
                old.map(BodyMeasure::takenAt).orElse(""))));
        // Its last measurement taken away, it still has a wearer of its own, and not that of all sizes again.
        Body now = measures.isEmpty() && ownSize.isPresent()
                ? named(ownSize.get(), body)
                : new Body(body.name(), measures);
        return ownSize.map(s -> pattern.withBody(s, now)).orElseGet(() -> pattern.withBody(now));
    }

    /** The size with or without a wearer of its own, at first with the measurements that count for all sizes. */
    static Pattern own(Pattern pattern, String size, boolean own) {
        Body shared = pattern.body().equals(Body.UNKNOWN) ? named(size, Body.UNKNOWN) : pattern.body();
        return pattern.withBody(size, own ? shared : Body.UNKNOWN);
    }

    /** Somebody of whom nothing is known is told from nobody by a name. */
    private static Body named(String size, Body body) {
        return new Body(body.name().isEmpty() ? size : body.name(), List.of());
    }

    /** The wished ease at a level, or with empty none. */
    static Pattern wish(Pattern pattern, String level, Optional<Wish> wish) {
        Map<String, Wish> wishes = new TreeMap<>(pattern.wishes());
        wishes.remove(level);
        wish.ifPresent(w -> wishes.put(level, w));
        return pattern.withWishes(wishes);
    }
}
