package easewright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An object of a JSON document while it is put together; keys stay in the order in which they came. */
final class Node {
    private final Map<String, Object> values = new LinkedHashMap<>();

    /** An array of a JSON document. */
    static final class Rows {
        private final List<Object> values = new ArrayList<>();

        Rows add(Object value) {
            values.add(plain(value));
            return this;
        }

        Node addObject() {
            Node node = new Node();
            values.add(node.values);
            return node;
        }
    }

    /** Puts a text, a number, a truth, nothing, an object or an array. */
    Node put(String key, Object value) {
        values.put(key, plain(value));
        return this;
    }

    Rows putArray(String key) {
        Rows rows = new Rows();
        values.put(key, rows.values);
        return rows;
    }

    Node putObject(String key) {
        Node node = new Node();
        values.put(key, node.values);
        return node;
    }

    /** As plain maps and lists. */
    Map<String, Object> values() {
        return values;
    }

    private static Object plain(Object value) {
        if (value instanceof Node node) {
            return node.values;
        }
        return value instanceof Rows rows ? rows.values : value;
    }
}
