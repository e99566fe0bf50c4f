package easewright.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import easewright.alter.Setting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a list of changes: a JSON array of entries. Their keys are the options of {@code change}; {@code set} holds
 * settings that have no option, by their own keys.
 */
final class ChangeList {
    private static final List<String> KEYS = keys();
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
        if (!entry.isObject()) {
            throw new Trouble("change-list-entry", Map.of("file", file, "number", number));
        }
        Asked asked = Asked.by(entry.path("method").asText("seam"));
        for (Shorthand each : Shorthand.ALL) {
            asked = each.put(asked, texts(entry.path(each.json())));
        }
        Iterator<Map.Entry<String, JsonNode>> more = entry.path("set").fields();
        while (more.hasNext()) {
            Map.Entry<String, JsonNode> setting = more.next();
            asked = asked.with(setting.getKey(), texts(setting.getValue()));
        }
        Optional<Setting> missing = asked.missing();
        if (missing.isPresent()) {
            String key = Shorthand.of(asked.way(), missing.get())
                    .map(Shorthand::json)
                    .orElse(missing.get().key());
            throw new Trouble(
                    "change-list-needs",
                    Map.of("file", file, "number", number, "key", key, "hint", asked.hint(missing.get())));
        }
        return asked;
    }

    /** The values of a key: one, or an array of them; yes and no may be written as true and false. */
    private static List<String> texts(JsonNode value) {
        List<String> texts = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(each -> texts.add(each.asText()));
        } else if (!value.isMissingNode() && !value.isNull()) {
            texts.add(value.asText());
        }
        return texts;
    }

    private static List<String> keys() {
        List<String> keys = new ArrayList<>(List.of("method"));
        for (Shorthand each : Shorthand.ALL) {
            keys.add(each.json());
        }
        keys.add("set");
        return List.copyOf(keys);
    }
}
