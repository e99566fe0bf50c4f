package easewright.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a command was given.
 *
 * @param places  what stands at its places, in order
 * @param options the values of each option that was given, by its chief name; those of a flag are none
 */
record Given(List<String> places, Map<String, List<String>> options) {
    Given {
        places = List.copyOf(places);
        options = Map.copyOf(options);
    }

    boolean has(String option) {
        return options.containsKey(option);
    }

    List<String> texts(String option) {
        return options.getOrDefault(option, List.of());
    }

    Optional<String> text(String option) {
        List<String> values = texts(option);
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(0));
    }

    Optional<Path> path(String option) throws Misuse {
        Optional<String> text = text(option);
        return text.isEmpty() ? Optional.empty() : Optional.of(file(text.get()));
    }

    /** The files that an option names, in order. */
    List<Path> paths(String option) throws Misuse {
        List<Path> paths = new ArrayList<>();
        for (String text : texts(option)) {
            paths.add(file(text));
        }
        return List.copyOf(paths);
    }

    /** The file named at a place, counted from 0. */
    Path path(int place) throws Misuse {
        return file(places.get(place));
    }

    private static Path file(String text) throws Misuse {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new Misuse("file-name-form", Map.of("file", e.getInput(), "reason", e.getReason()));
        }
    }
}
