package easewright.alter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One setting of a {@link Way}, as forms and commands need to know it.
 *
 * @param key      name of the setting in a {@link easewright.pattern.ChangeNote}; entries of kinds that are lists are
 *                 kept there as {@code key.1}, {@code key.2} and so on
 * @param required whether there is no change without it
 * @param standard what it is where nothing is said, in the form in which it is written ({@link SettingText}); empty
 *                 where it then is nothing at all
 * @param choices  what a {@link Kind#CHOICE} may be; else empty
 */
public record Setting(String key, Kind kind, boolean required, String standard, List<String> choices) {
    /** What a setting is about. */
    public enum Kind {
        /** The name of a level of the pattern. */
        LEVEL(false),
        /** A length of either sign, mm. */
        SIGNED_LENGTH(false),
        /** Edges that take part, each with its share. */
        SHARES(true),
        /** One edge of one piece. */
        EDGE(false),
        /** One piece. */
        PIECE(false),
        /** Several pieces. */
        PIECES(true),
        /** A place on the outline of a piece, or in it. */
        PLACE(false),
        /** Several such places. */
        PLACES(true),
        /** Slashes from one place of an outline to another, each with its share. */
        SLASHES(true),
        /** Darts that take part, each with its share. */
        DARTS(true),
        /** The name of a notch, level or edge. */
        NAME(false),
        /** Several such names. */
        NAMES(true),
        /** One of a few words. */
        CHOICE(false),
        /** Yes or no. */
        FLAG(false);

        private final boolean list;

        Kind(boolean list) {
            this.list = list;
        }

        /** Whether it may be given more than once. */
        public boolean isList() {
            return list;
        }
    }

    public Setting {
        choices = List.copyOf(choices);
    }

    /** A setting without which there is no change. */
    static Setting needed(String key, Kind kind) {
        return new Setting(key, kind, true, "", List.of());
    }

    /** A setting that may be left out, and then is nothing. */
    static Setting free(String key, Kind kind) {
        return new Setting(key, kind, false, "", List.of());
    }

    static Setting length(String key, double standard) {
        return new Setting(
                key,
                Kind.SIGNED_LENGTH,
                false,
                new BigDecimal(Settings.plain(standard)).stripTrailingZeros().toPlainString() + " mm",
                List.of());
    }

    static Setting flag(String key) {
        return free(key, Kind.FLAG);
    }

    static <T extends Enum<T>> Setting choice(String key, T standard) {
        List<String> names = Stream.of(standard.getDeclaringClass().getEnumConstants())
                .map(Settings::name)
                .toList();
        return new Setting(key, Kind.CHOICE, false, Settings.name(standard), names);
    }

    /** The word of a choice that was meant, whatever the capitals. */
    Optional<String> choice(String text) {
        return choices.stream().filter(c -> c.equalsIgnoreCase(text)).findFirst();
    }
}
