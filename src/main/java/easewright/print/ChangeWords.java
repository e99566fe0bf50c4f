package easewright.print;

import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A recorded change in words. */
public final class ChangeWords {
    private final Words words;

    public ChangeWords(Words words) {
        this.words = words;
    }

    /** One sentence: what was done, where, by how much and how it dies away. */
    public String of(ChangeNote note, Pattern pattern) {
        Map<String, String> settings = note.settings();
        List<String> parts = new ArrayList<>();
        String amount = settings.get("amount");
        parts.add(words.of(
                "change.method." + note.method(),
                Map.of(
                        "level",
                        settings.getOrDefault("level", ""),
                        "amount.signed",
                        amount == null ? 0.0 : Double.parseDouble(amount))));
        List<String> edges = new ArrayList<>();
        settings.forEach((key, value) -> {
            if (key.equals("edge") || key.startsWith("edge.")) {
                String weight = settings.get(key.replace("edge", "weight"));
                String edge = edgeName(value, pattern);
                edges.add(
                        weight == null
                                ? edge
                                : words.of("change.share", Map.of("edge", edge, "weight", plain(weight))));
            } else if (!value.isBlank() && !key.equals("level") && !key.equals("amount") && !key.startsWith("weight")) {
                parts.add(words.of("change.setting", Map.of("setting", key.replace('-', ' '), "value", value)));
            }
        });
        if (!edges.isEmpty()) {
            parts.add(1, words.of("change.edges", Map.of("edges", edges)));
        }
        return String.join("; ", parts);
    }

    private static String edgeName(String text, Pattern pattern) {
        try {
            EdgeRef ref = EdgeRef.parse(text);
            return pattern.piece(ref.piece()).map(p -> p.name()).orElse(ref.piece()) + "/" + ref.edge();
        } catch (IllegalArgumentException e) {
            return text;
        }
    }

    private static String plain(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }
}
