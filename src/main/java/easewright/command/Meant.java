package easewright.command;

import easewright.text.Nearest;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What was probably meant, where trouble is about a name that is not known and tells which are. */
final class Meant {
    /** Under which of its values trouble holds the unknown name. */
    private static final List<String> NAMES =
            List.of("text", "setting", "key", "word", "edge", "notch", "dart", "level", "layer", "size", "piece");

    private Meant() {}

    static Optional<String> by(Trouble trouble) {
        Map<String, Object> values = trouble.values();
        Object known = values.get("known");
        if (known == null) {
            return Optional.empty();
        }
        List<String> names = known instanceof Collection<?> several
                ? several.stream()
                        .map(each -> each instanceof Enum<?> one
                                ? one.name().toLowerCase(Locale.ROOT)
                                : String.valueOf(each))
                        .toList()
                : Arrays.asList(known.toString().split(", "));
        return NAMES.stream()
                .filter(values::containsKey)
                .findFirst()
                .flatMap(key -> Nearest.to(values.get(key).toString(), names));
    }
}
