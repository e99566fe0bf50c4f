package easewright.editor.model;

import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is said of several sizes: those of which the same is said are told together. */
final class BySize {
    private final Map<String, List<String>> sizes = new LinkedHashMap<>();

    /** Adds what is said of a size; nothing where that is empty. */
    void add(String size, String said) {
        if (!said.isEmpty()) {
            sizes.computeIfAbsent(said, s -> new ArrayList<>()).add(size);
        }
    }

    boolean isEmpty() {
        return sizes.isEmpty();
    }

    /** Whether the same is said of all of them. */
    boolean isAlike() {
        return sizes.size() == 1;
    }

    /** What is said, without the sizes. */
    List<String> said() {
        return List.copyOf(sizes.keySet());
    }

    /**
     * With the sizes before it.
     *
     * @param key   of the line for one size; that for several ends in {@code .several}
     * @param level of which it is said
     */
    List<String> lines(Words words, String key, String level) {
        List<String> lines = new ArrayList<>();
        sizes.forEach((said, of) -> lines.add(
                words.of(of.size() == 1 ? key : key + ".several", Map.of("level", level, "sizes", of, "said", said))));
        return lines;
    }
}
