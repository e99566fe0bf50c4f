package easewright.command;

import easewright.alter.Refusal;
import easewright.pattern.Finding;
import easewright.svg.SvgProblem;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Turns what the rooms report into the one kind of trouble a command can have. */
final class Said {
    private Said() {}

    static Trouble of(SvgProblem problem, Path file) {
        Map<String, Object> values = new TreeMap<>(problem.values());
        values.putIfAbsent("file", file.toString());
        return new Trouble(problem.code(), values);
    }

    static Trouble of(Refusal refusal) {
        return new Trouble(refusal.code(), refusal.values());
    }

    static Trouble of(Unreadable unreadable) {
        return new Trouble(unreadable.code(), unreadable.values());
    }

    /** A drawing without a closed outline: with what the reader noticed, since that is the likely reason. */
    static Trouble noPiece(Path file, List<Finding> noticed, Words words) {
        if (noticed.isEmpty()) {
            return new Trouble("no-piece", Map.of("file", file.toString()));
        }
        // That there is none is said already, and its likely reason by the others.
        List<Finding> reasons =
                noticed.stream().filter(f -> !f.code().equals("no-pieces")).toList();
        String why = (reasons.isEmpty() ? noticed : reasons)
                .stream().map(words::of).distinct().limit(5).collect(Collectors.joining(" "));
        return new Trouble("no-piece-because", Map.of("file", file.toString(), "why", why));
    }
}
