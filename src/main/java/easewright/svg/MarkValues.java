package easewright.svg;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The attributes of one mark, each asked for once; remembers which were. */
final class MarkValues {
    private final MarkNode node;

    /** By the place of the attribute. */
    private final boolean[] asked;

    private final String called;

    MarkValues(MarkNode node) {
        this(node, "");
    }

    /**
     * @param called what the mark is called; may be empty
     */
    MarkValues(MarkNode node, String called) {
        this.node = node;
        this.called = called;
        this.asked = new boolean[node.attributes().size()];
    }

    /** Why a mark cannot be used: the finding's code and values. */
    static final class Damage extends Exception {
        private static final long serialVersionUID = 1L;
        private final String code;
        private final TreeMap<String, Object> values;

        Damage(String code, Map<String, Object> values) {
            super(code);
            this.code = code;
            this.values = new TreeMap<>(values);
        }

        String code() {
            return code;
        }

        Map<String, Object> values() {
            return values;
        }
    }

    String called() {
        return called;
    }

    Optional<String> text(String name) {
        int place = node.place(name);
        if (place < 0) {
            return Optional.empty();
        }
        asked[place] = true;
        return Optional.of(node.value(place));
    }

    String needed(String name) throws Damage {
        return need(name, text(name));
    }

    private static <T> T need(String name, Optional<T> value) throws Damage {
        if (value.isEmpty()) {
            throw new Damage("mark-value-missing", Map.of("attribute", name));
        }
        return value.get();
    }

    /** The value that a text stands for; a text that stands for none is damage. */
    private static <T> Optional<T> understood(String name, Optional<String> text, Optional<T> value) throws Damage {
        if (value.isEmpty() && text.isPresent()) {
            throw new Damage("mark-value-bad", Map.of("attribute", name, "text", text.get()));
        }
        return value;
    }

    Optional<Double> length(String name) throws Damage {
        Optional<String> text = text(name);
        return text.isEmpty() ? Optional.empty() : understood(name, text, MarkWords.length(text.get()));
    }

    double neededLength(String name) throws Damage {
        return need(name, length(name));
    }

    Optional<Double> number(String name) throws Damage {
        Optional<String> text = text(name);
        return text.isEmpty() ? Optional.empty() : understood(name, text, MarkWords.number(text.get()));
    }

    double neededNumber(String name) throws Damage {
        return need(name, number(name));
    }

    OptionalDouble percent(String name) throws Damage {
        Optional<Double> value = number(name);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    Optional<Point> place(String name) throws Damage {
        Optional<String> text = text(name);
        return text.isEmpty() ? Optional.empty() : understood(name, text, MarkWords.place(text.get()));
    }

    Point neededPlace(String name) throws Damage {
        return need(name, place(name));
    }

    boolean yesNo(String name, boolean otherwise) throws Damage {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            return otherwise;
        }
        boolean yes = text.get().equals("yes");
        boolean known = yes || text.get().equals("no");
        return need(name, understood(name, text, known ? Optional.of(yes) : Optional.empty()));
    }

    int count(String name, int otherwise) throws Damage {
        Optional<String> text = text(name);
        return text.isEmpty() ? otherwise : need(name, understood(name, text, MarkWords.count(text.get())));
    }

    <E extends Enum<E>> E word(String name, Class<E> type, E otherwise) throws Damage {
        Optional<String> text = text(name);
        return text.isEmpty() ? otherwise : need(name, understood(name, text, MarkWords.value(type, text.get())));
    }

    <E extends Enum<E>> E neededWord(String name, Class<E> type) throws Damage {
        Optional<String> text = text(name);
        return need(
                name, text.isEmpty() ? Optional.empty() : understood(name, text, MarkWords.value(type, text.get())));
    }

    /** Holds where a mark is written without content: what is inside all the same would be lost when it is written. */
    void requireEmpty() throws Damage {
        if (!node.children().isEmpty()) {
            throw new Damage(
                    "mark-content", Map.of("content", node.children().get(0).name()));
        }
    }

    /** Attributes that nobody asked for. */
    List<String> unknown() {
        List<String> rest = new ArrayList<>(0);
        for (int i = 0; i < asked.length; i++) {
            if (!asked[i]) {
                rest.add(node.attributes().get(i).name());
            }
        }
        rest.addAll(node.foreign());
        return rest;
    }
}
