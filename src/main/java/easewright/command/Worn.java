package easewright.command;

import easewright.pattern.Body;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Severity;
import easewright.text.Bodies;
import easewright.text.BodyFile;
import easewright.text.SizeTables;
import easewright.text.Unreadable;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whom a pattern is to be compared with in place of those in it: the people of a body file, or a row of a size table
 * ({@code astm-2011:12}) for one and all, or without a row ({@code astm-2011}) each size with its own.
 */
record Worn(Bodies bodies) {
    /**
     * @param text a file, or a table with or without a size
     */
    static Worn of(String text, Path file) throws Trouble {
        int colon = text.lastIndexOf(':');
        Optional<Bodies> table = SizeTables.of(text);
        if (table.isPresent()) {
            return new Worn(table.get());
        }
        if (colon > 0 && SizeTables.of(text.substring(0, colon)).isPresent()) {
            return row(
                    SizeTables.of(text.substring(0, colon)).get(),
                    text.substring(colon + 1).strip());
        }
        try {
            return new Worn(BodyFile.readAll(file));
        } catch (Unreadable e) {
            throw Said.of(e);
        }
    }

    private static Worn row(Bodies table, String size) throws Trouble {
        Body body = table.bySize().get(size);
        if (body == null) {
            throw new Trouble(
                    "body-size-not-known",
                    Map.of("size", size, "known", List.copyOf(table.bySize().keySet())));
        }
        return new Worn(new Bodies(body, Map.of(), table.source(), table.standing()));
    }

    /** Refuses people none of whom the pattern is for. */
    void require(Pattern pattern) throws Trouble {
        List<String> sizes = PatternPart.sizes(pattern);
        boolean some = sizes.stream().anyMatch(bodies.bySize()::containsKey);
        if (!some && bodies.one().equals(Body.UNKNOWN)) {
            throw new Trouble(
                    sizes.isEmpty() ? "body-size-needed" : "body-no-such-size",
                    Map.of("known", List.copyOf(bodies.bySize().keySet()), "sizes", sizes));
        }
    }

    /** The pattern on these people. */
    Pattern bodies(Pattern pattern) {
        return bodies.on(pattern);
    }

    /** Where a table was published: no figure of one is shown without. */
    List<Finding> findings() {
        return bodies.source().isEmpty()
                ? List.of()
                : List.of(Finding.of("body-from-table", Severity.NOTE, "")
                        .with("source", bodies.source())
                        .with("standing", bodies.standing()));
    }
}
