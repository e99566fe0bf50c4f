package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where in a pattern a change is made, as it is kept among the settings of its record.
 *
 * @param size the size, where the pattern comes in several
 */
public record Scope(Optional<String> size) {
    /** The whole garment. */
    public static final Scope WHOLE = new Scope(Optional.empty());

    /** Key of the size in a record. */
    public static final String SIZE = "in-size";

    /** What a record says. */
    public static Scope of(ChangeNote note) {
        return new Scope(Optional.ofNullable(note.settings().get(SIZE)));
    }

    /** The record without its scope. */
    static ChangeNote without(ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>(note.settings());
        settings.remove(SIZE);
        return new ChangeNote(note.method(), settings);
    }

    /** The record with this scope. */
    ChangeNote write(ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>(note.settings());
        size.ifPresent(s -> settings.put(SIZE, s));
        return new ChangeNote(note.method(), settings);
    }

    /**
     * The part of the pattern that is meant.
     *
     * @throws Refusal if there is no such size
     */
    public PatternPart in(Pattern pattern) throws Refusal {
        if (size.isPresent() && !PatternPart.sizes(pattern).contains(size.get())) {
            throw Refusal.of("size-not-known").with("size", size.get()).with("known", PatternPart.sizes(pattern));
        }
        return size.map(s -> PatternPart.ofSize(pattern, s)).orElseGet(() -> PatternPart.whole(pattern));
    }
}
