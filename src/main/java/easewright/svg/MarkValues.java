package easewright.svg;

import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/** The attributes of one mark, each asked for once; remembers which were. */
final class MarkValues {
    private final MarkNode node;

    /** By the place of the attribute. */
    private final boolean[] asked;

    MarkValues(MarkNode node) {
        this.node = node;
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

    private <T> Optional<T> read(String name, Function<String, Optional<T>> reader) throws Damage {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<T> value = reader.apply(text.get());
        if (value.isEmpty()) {
            throw new Damage("mark-value-bad", Map.of("attribute", name, "text", text.get()));
        }
        return value;
    }

    Optional<Double> length(String name) throws Damage {
        return read(name, MarkWords::length);
    }

    double neededLength(String name) throws Damage {
        return need(name, length(name));
    }

    Optional<Double> number(String name) throws Damage {
        return read(name, MarkWords::number);
    }

    double neededNumber(String name) throws Damage {
        return need(name, number(name));
    }

    OptionalDouble percent(String name) throws Damage {
        Optional<Double> value = number(name);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    Optional<Point> place(String name) throws Damage {
        return read(name, MarkWords::place);
    }

    Point neededPlace(String name) throws Damage {
        return need(name, place(name));
    }

    boolean yesNo(String name, boolean otherwise) throws Damage {
        return read(name, text -> switch (text) {
                    case "yes" -> Optional.of(true);
                    case "no" -> Optional.of(false);
                    default -> Optional.empty();
                })
                .orElse(otherwise);
    }

    int count(String name, int otherwise) throws Damage {
        return read(name, MarkWords::count).orElse(otherwise);
    }

    <E extends Enum<E>> E word(String name, Class<E> type, E otherwise) throws Damage {
        return read(name, text -> MarkWords.value(type, text)).orElse(otherwise);
    }

    <E extends Enum<E>> E neededWord(String name, Class<E> type) throws Damage {
        return need(name, read(name, text -> MarkWords.value(type, text)));
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
