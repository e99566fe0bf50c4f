package easewright.command;

import easewright.print.Use;
import easewright.print.sheet.Paper;
import easewright.text.Unreadable;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the commands that put a pattern on paper read alike. */
final class PrintOptions {
    private PrintOptions() {}

    static Paper paper(Given given) throws Misuse {
        String word = given.text("--paper").orElse("a4");
        Optional<Paper> paper = Paper.named(word);
        if (paper.isEmpty()) {
            throw new Misuse("paper-unknown", Map.of("word", word, "known", List.of(Paper.values())));
        }
        return paper.get();
    }

    /** What the garment is said to be. */
    static Set<Use> uses(Given given) throws Misuse {
        Set<Use> uses = EnumSet.noneOf(Use.class);
        for (String word : given.text("--kind").map(w -> w.split(",")).orElse(new String[0])) {
            Optional<Use> use = Use.named(word);
            if (use.isEmpty()) {
                throw new Misuse("kind-unknown", Map.of("word", word.strip(), "known", List.of(Use.values())));
            }
            uses.add(use.get());
        }
        return uses;
    }

    static double length(Given given, String option, double otherwise, Typed typed) throws Trouble {
        try {
            Optional<String> text = given.text(option);
            return text.isEmpty() ? otherwise : typed.mm(text.get());
        } catch (Unreadable e) {
            throw Said.of(e);
        }
    }
}
