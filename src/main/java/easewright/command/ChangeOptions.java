package easewright.command;

/** The options that describe one change. */
final class ChangeOptions {
    private ChangeOptions() {}

    static Grammar grammar(Grammar command) {
        return command.value("--at", "LEVEL", "option.at")
                .value("--by", "AMOUNT", "option.by")
                .values("--edge", "PIECE/EDGE[=SHARE]", "option.edge")
                .value("--method", "METHOD", "option.method")
                .value("--taper", "TAPER", "option.taper")
                .flag("--carry", "option.carry")
                .flag("--one-side", "option.one-side")
                .values("--keep", "PLACE", "option.keep")
                .flag("--accept", "option.accept");
    }

    static Asked asked(Given given) {
        return new Asked(
                given.text("--at").orElse(""),
                given.text("--by").orElse(""),
                given.texts("--edge"),
                given.text("--method").orElse("seam"),
                given.text("--taper").orElse("smooth"),
                given.has("--carry"),
                given.has("--one-side"),
                given.texts("--keep"),
                given.has("--accept"));
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
