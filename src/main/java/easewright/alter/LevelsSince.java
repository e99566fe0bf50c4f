package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Levels that were marked after some of the changes had been made: those changes neither ended at them nor had to keep
 * their girths, and are made again as if they were not there. A file does not tell when a level was marked, so that it
 * is tried: of the times that come into question the first counts at which what is now comes out.
 *
 * @param seen how many changes had been made when a level was marked, by its name; one that is not named was there always
 */
record LevelsSince(Map<String, Integer> seen) {
    /** All levels were there from the start. */
    static final LevelsSince START = new LevelsSince(Map.of());

    LevelsSince {
        seen = Map.copyOf(seen);
    }

    /** What comes into question: all from the start; one level late; all late that the changes before did not name. */
    static List<LevelsSince> candidates(Pattern now) {
        int made = now.changes().size();
        Map<String, Integer> named = new HashMap<>();
        for (Level level : now.levels()) {
            int first = 0;
            while (first < made && !names(now.changes().get(first), level.name())) {
                first++;
            }
            named.put(level.name(), first);
        }
        Set<LevelsSince> all = new LinkedHashSet<>();
        all.add(START);
        for (Level level : now.levels()) {
            all.add(since(Map.of(level.name(), named.get(level.name())), made));
        }
        for (int changes = made; changes > 0; changes--) {
            all.add(since(named, changes));
        }
        return new ArrayList<>(all);
    }

    private static LevelsSince since(Map<String, Integer> named, int changes) {
        Map<String, Integer> seen = new HashMap<>();
        named.forEach((level, first) -> {
            int at = Math.min(first, changes);
            if (at > 0) {
                seen.put(level, at);
            }
        });
        return new LevelsSince(seen);
    }

    private static boolean names(ChangeNote note, String level) {
        return note.settings().values().stream().anyMatch(level::equals);
    }

    /**
     * A change made as it was made when so many had been made before it. The levels marked since go along on the pieces.
     *
     * @throws Refusal if it cannot be made
     */
    Pattern made(Pattern before, Alteration change, int earlier) throws Refusal {
        List<Level> there = before.levels().stream()
                .filter(l -> seen.getOrDefault(l.name(), 0) <= earlier)
                .toList();
        if (there.size() == before.levels().size()) {
            return change.apply(before).pattern();
        }
        return change.apply(before.withLevels(there)).pattern().withLevels(before.levels());
    }

    /** The changes of a pattern from one to before another, made again. */
    Pattern forward(Pattern then, List<ChangeNote> changes, int from, int to) throws Refusal {
        Pattern again = then;
        for (int i = from; i < to; i++) {
            again = made(again, Ways.from(changes.get(i)), i);
        }
        return again;
    }

    /**
     * How many changes had been made before those of another course, each as far as it is one of those that were made.
     *
     * @param wanted the other course, of which the first so many are the same
     */
    static List<Integer> earlier(List<ChangeNote> made, List<ChangeNote> wanted, int same) {
        List<Integer> earlier = new ArrayList<>();
        int last = same - 1;
        for (ChangeNote note : wanted.subList(same, wanted.size())) {
            Optional<Integer> is = Optional.of(made.subList(same, made.size()).indexOf(note))
                    .filter(i -> i >= 0)
                    .map(i -> i + same);
            last = is.orElse(last + 1);
            earlier.add(last);
        }
        return earlier;
    }
}
