package easewright.command;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.jr.ob.JSON;
import easewright.alter.Setting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
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
        Object root;
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new Trouble("change-list-unreadable", Map.of("file", name, "reason", "it is larger than 1 MB"));
            }
            root = JSON.std.anyFrom(Files.readAllBytes(file));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            long line = at == null ? 0 : at.getLineNr();
            throw new Trouble("change-list-not-json", Map.of("file", name, "line", line));
        } catch (NoSuchFileException e) {
            throw new Trouble("change-list-unreadable", Map.of("file", name, "reason", "there is no such file"));
        } catch (IOException e) {
            throw new Trouble("change-list-unreadable", Map.of("file", name, "reason", String.valueOf(e.getMessage())));
        }
        if (!(root instanceof List<?> entries) || entries.isEmpty()) {
            throw new Trouble("change-list-empty", Map.of("file", name));
        }
        List<Asked> all = new ArrayList<>();
        for (Object entry : entries) {
            if (!(entry instanceof Map<?, ?> written)) {
                throw new Trouble("change-list-entry", Map.of("file", name, "number", all.size() + 1));
            }
            all.add(asked(written, all.size() + 1, name));
        }
        return all;
    }

    private static Asked asked(Map<?, ?> entry, int number, String file) throws Trouble {
        for (Object key : entry.keySet()) {
            if (!KEYS.contains(key)) {
                throw new Trouble("change-list-key", Map.of("file", file, "number", number, "key", key, "known", KEYS));
            }
        }
        Object method = entry.get("method");
        Asked asked = Asked.by(method == null ? "seam" : method.toString());
        for (Shorthand each : Shorthand.ALL) {
            asked = each.put(asked, texts(entry.get(each.json())));
        }
        if (entry.get("set") instanceof Map<?, ?> more) {
            for (Map.Entry<?, ?> setting : more.entrySet()) {
                asked = asked.with(setting.getKey().toString(), texts(setting.getValue()));
            }
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
    private static List<String> texts(Object value) {
        List<String> texts = new ArrayList<>();
        if (value instanceof List<?> several) {
            several.forEach(each -> texts.add(String.valueOf(each)));
        } else if (value != null) {
            texts.add(value.toString());
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
