package easewright.editor.model;

import easewright.alter.Ways;
import easewright.pattern.LevelKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Something seen on the body, and where and how a handbook says to alter for it: at the source of the problem (E-372,
 * docs/sources.md 4.2).
 *
 * @param levels   kinds of level at which the need lies, the best first
 * @param way      method of changing
 * @param centre   whose centre line, where the way is that one: {@code front} or {@code back}
 * @param oneSided whether it is about one side of the body
 * @param standing how far the source may be trusted
 */
public record FitSign(
        String id,
        Feels feels,
        List<LevelKind> levels,
        String way,
        Optional<String> centre,
        boolean oneSided,
        String source,
        String standing) {
    /** How it shows. */
    public enum Feels {
        PULLS,
        LOOSE,
        LENGTH
    }

    public FitSign {
        levels = List.copyOf(levels);
        if (Ways.of(way).isEmpty() || levels.isEmpty() || source.isBlank() || standing.isBlank()) {
            throw new IllegalArgumentException("The sign " + id + " lacks a way, a level or a source");
        }
    }

    /** All signs of the table that comes with the program. */
    public static List<FitSign> all() {
        try (InputStream in = FitSign.class.getResourceAsStream("/easewright/editor/signs.txt")) {
            return read(new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("A part of the program is missing", e);
        }
    }

    /** Blocks of {@code name: value}, with empty lines between them. */
    static List<FitSign> read(String table) {
        List<FitSign> signs = new ArrayList<>();
        Map<String, String> block = new LinkedHashMap<>();
        for (String line : (table + "\n\n").split("\n", -1)) {
            int colon = line.indexOf(':');
            if (!line.startsWith("#") && colon > 0) {
                block.put(
                        line.substring(0, colon).strip(),
                        line.substring(colon + 1).strip());
            } else if (line.isBlank() && !block.isEmpty()) {
                signs.add(of(block));
                block.clear();
            }
        }
        return List.copyOf(signs);
    }

    private static FitSign of(Map<String, String> block) {
        List<LevelKind> levels = new ArrayList<>();
        for (String kind : block.getOrDefault("levels", "").split(" ")) {
            levels.add(LevelKind.valueOf(constant(kind)));
        }
        return new FitSign(
                block.get("sign"),
                Feels.valueOf(constant(block.getOrDefault("feels", ""))),
                levels,
                block.getOrDefault("way", ""),
                Optional.ofNullable(block.get("centre")),
                block.getOrDefault("sides", "").equals("one"),
                block.getOrDefault("source", ""),
                block.getOrDefault("standing", ""));
    }

    private static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
