package easewright.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Reads a list of changes: a JSON array of entries whose keys are the options of {@code change}. */
final class ChangeList {
    private static final List<String> KEYS =
            List.of("at", "by", "edges", "method", "taper", "carry", "one_side", "keep", "accept");
    private static final long LARGEST_BYTES = 1 << 20;

    private ChangeList() {}

    static List<Asked> read(Path file) throws Trouble {
        String name = file.toString();
        JsonNode root;
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new Trouble("change-list-unreadable", Map.of("file", name, "reason", "it is larger than 1 MB"));
            }
            root = new ObjectMapper().readTree(Files.readAllBytes(file));
        } catch (JsonProcessingException e) {
            long line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new Trouble("change-list-not-json", Map.of("file", name, "line", line));
        } catch (NoSuchFileException e) {
            throw new Trouble("change-list-unreadable", Map.of("file", name, "reason", "there is no such file"));
        } catch (IOException e) {
            throw new Trouble("change-list-unreadable", Map.of("file", name, "reason", String.valueOf(e.getMessage())));
        }
        if (!root.isArray() || root.isEmpty()) {
            throw new Trouble("change-list-empty", Map.of("file", name));
        }
        List<Asked> all = new ArrayList<>();
        for (JsonNode entry : root) {
            all.add(asked(entry, all.size() + 1, name));
        }
        return all;
    }

    private static Asked asked(JsonNode entry, int number, String file) throws Trouble {
        Iterator<String> keys = entry.fieldNames();
        while (keys.hasNext()) {
            String key = keys.next();
            if (!KEYS.contains(key)) {
                throw new Trouble("change-list-key", Map.of("file", file, "number", number, "key", key, "known", KEYS));
            }
        }
        if (!entry.path("at").isTextual() || !entry.path("by").isTextual()) {
            throw new Trouble("change-list-entry", Map.of("file", file, "number", number));
        }
        return new Asked(
                entry.path("at").asText(),
                entry.path("by").asText(),
                texts(entry.path("edges")),
                entry.path("method").asText("seam"),
                entry.path("taper").asText("smooth"),
                entry.path("carry").asBoolean(false),
                entry.path("one_side").asBoolean(false),
                texts(entry.path("keep")),
                entry.path("accept").asBoolean(false));
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(each -> texts.add(each.asText()));
        return texts;
    }
}
