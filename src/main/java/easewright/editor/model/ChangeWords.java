package easewright.editor.model;

import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The changes made, in plain words. */
public final class ChangeWords {
    private ChangeWords() {}

    public static List<String> of(Desk desk) {
        List<String> lines = new ArrayList<>();
        for (ChangeNote note : desk.pattern().changes()) {
            lines.add(of(note, desk.pattern(), desk.words()));
        }
        return List.copyOf(lines);
    }

    /** One change as a sentence: what it did at which level, then where it was put. */
    static String of(ChangeNote note, Pattern pattern, Words words) {
        Map<String, Object> values = new TreeMap<>();
        note.settings().forEach((key, text) -> values.put(key, value(text)));
        if (values.get("amount") instanceof Double amount) {
            values.put("amount.signed", amount);
        }
        if (values.get("piece") instanceof String id) {
            values.put("piece", name(id, pattern));
        }
        values.put("where", where(note, pattern, words));
        return words.of("editor.change." + note.method(), values);
    }

    /** The edges the change was put at, each by its piece's name. */
    private static String where(ChangeNote note, Pattern pattern, Words words) {
        List<String> edges = new ArrayList<>();
        note.settings().forEach((key, text) -> {
            if (key.equals("edge") || key.startsWith("edge.")) {
                edges.add(edge(text, pattern, words));
            }
        });
        return edges.isEmpty() ? words.of("editor.change.all-seams") : String.join("; ", edges);
    }

    private static String edge(String text, Pattern pattern, Words words) {
        try {
            EdgeRef edge = EdgeRef.parse(text);
            return words.of("editor.here.seam", Map.of("piece", name(edge.piece(), pattern), "edge", edge.edge()));
        } catch (IllegalArgumentException e) {
            return text;
        }
    }

    private static String name(String piece, Pattern pattern) {
        return pattern.piece(piece).map(Piece::name).orElse(piece);
    }

    private static Object value(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return text;
        }
    }
}
