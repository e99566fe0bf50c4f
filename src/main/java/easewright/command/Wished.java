package easewright.command;

import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Wish;
import easewright.text.PerCent;
import easewright.text.Unreadable;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Eases that are wished for in place of those in the file, each written {@code LEVEL=EASE}: a length, or a part of the
 * body there in per cent.
 */
record Wished(List<String> texts) {
    Wished {
        texts = List.copyOf(texts);
    }

    /**
     * The pattern with these wishes.
     *
     * @param worn whether the body is that of another file, read later
     * @throws Trouble if one is not understood, or a part of a body that is not known
     */
    Pattern on(Pattern pattern, Typed typed, boolean worn) throws Trouble {
        Pattern now = pattern;
        for (String text : texts) {
            int equals = text.lastIndexOf('=');
            String name = equals < 0 ? text.strip() : text.substring(0, equals).strip();
            Level level = pattern.levels().stream()
                    .filter(l -> l.name().equalsIgnoreCase(name))
                    .findFirst()
                    .orElse(null);
            if (level == null || equals < 0) {
                List<String> known = pattern.levels().stream().map(Level::name).toList();
                throw known.isEmpty()
                        ? new Trouble("wish-no-level", Map.of("text", text))
                        : new Trouble("wish-form", Map.of("text", text, "known", known));
            }
            now = now.withWish(level.name(), wish(text.substring(equals + 1), level, pattern, typed, worn));
        }
        return now;
    }

    private static Wish wish(String said, Level level, Pattern pattern, Typed typed, boolean worn) throws Trouble {
        try {
            OptionalDouble percent = PerCent.of(said);
            if (percent.isEmpty()) {
                return Wish.of(typed.mm(said));
            }
            boolean known = worn
                    || pattern.body().girth(level.name()).isPresent()
                    || pattern.bodies().values().stream()
                            .anyMatch(b -> b.girth(level.name()).isPresent());
            if (!known) {
                throw new Unreadable("percent-without-body", Map.of("text", said, "level", level.name()));
            }
            return new Wish(0, percent);
        } catch (Unreadable e) {
            throw Said.of(e);
        }
    }
}
