package easewright.command;

import easewright.alter.Setting;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The options that describe one change. */
final class ChangeOptions {
    private static final String METHOD = "--method";
    private static final String SET = "--set";
    private static final String STANDARD_METHOD = "seam";

    private ChangeOptions() {}

    static Grammar grammar(Grammar command) {
        Grammar grammar = command.value(METHOD, "METHOD", "option.method");
        for (Shorthand each : Shorthand.ALL) {
            String words = "option." + each.option().substring(2);
            grammar = grammar.and(new Option(List.of(each.option()), each.label(), words, each.many()));
        }
        return grammar.values(SET, "KEY=VALUE", "option.set");
    }

    /** The change that the options describe. */
    static Asked asked(Given given) throws Trouble {
        Asked asked = Asked.by(given.text(METHOD).orElse(STANDARD_METHOD));
        for (Shorthand each : Shorthand.ALL) {
            if (given.has(each.option())) {
                asked = each.put(asked, each.flag() ? List.of("yes") : given.texts(each.option()));
            }
        }
        for (String text : given.texts(SET)) {
            int equals = text.indexOf('=');
            if (equals <= 0) {
                throw new Misuse("set-form", Map.of("text", text));
            }
            asked = asked.withNamed(text.substring(0, equals).strip(), List.of(text.substring(equals + 1)));
        }
        Optional<Setting> missing = asked.missing();
        if (missing.isPresent()) {
            // Missed before any file is opened.
            String option = Shorthand.of(asked.way(), missing.get())
                    .map(s -> s.option() + " " + s.label())
                    .orElse(SET + " " + missing.get().key() + "=…");
            throw new Misuse(
                    "option-needed",
                    Map.of("method", asked.way().method(), "option", option, "hint", asked.hint(missing.get())));
        }
        return asked;
    }

    /** Whether any of them was given. */
    static boolean any(Given given) {
        for (Option option : grammar(Grammar.of("")).options()) {
            if (given.has(option.name())) {
                return true;
            }
        }
        return false;
    }
}
