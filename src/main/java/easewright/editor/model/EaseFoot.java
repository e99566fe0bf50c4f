package easewright.editor.model;

import java.util.ArrayList;
import java.util.List;

/** Collects sources that stand below a page, each once, and gives the number that leads to it. */
final class EaseFoot {
    private final List<String> sources = new ArrayList<>();

    /** The number of a source, in brackets: a raised one would make square centimetres of an ease. */
    String mark(String source) {
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return bracketed(sources.indexOf(source) + 1);
    }

    private static String bracketed(int number) {
        return "[" + number + "]";
    }

    /** Every source after its number, in the order of the numbers. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            lines.add(bracketed(i + 1) + " " + sources.get(i));
        }
        return List.copyOf(lines);
    }
}
