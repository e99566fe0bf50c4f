package easewright.command;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.jr.ob.JSON;
import easewright.alter.Setting;
import easewright.pattern.FileTrouble;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a list of changes: a JSON array of entries. Their keys are the names of the settings: those of the options of
 * {@code change} without the dashes, and of settings that have no option; an object {@code set} may hold some of them.
 */
final class ChangeList {
    private static final String METHOD = "method";
    private static final String SET = "set";
    private static final long LARGEST_BYTES = 1 << 20;

    private ChangeList() {}

    static List<Asked> read(Path file) throws Trouble {
        String name = file.toString();
        Object root;
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new Trouble("change-list-too-large", Map.of("file", name));
            }
            root = JSON.std.anyFrom(Files.readAllBytes(file));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            long line = at == null ? 0 : at.getLineNr();
            throw new Trouble("change-list-not-json", Map.of("file", name, "line", line));
        } catch (IOException e) {
            throw new Trouble(FileTrouble.of(file, e).unread(), Map.of("file", name));
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
        Object method = entry.get(METHOD);
        Asked asked = Asked.by(method == null ? "seam" : method.toString());
        for (Map.Entry<?, ?> each : entry.entrySet()) {
            String key = each.getKey().toString();
            if (key.equals(SET) && each.getValue() instanceof Map<?, ?> more) {
                for (Map.Entry<?, ?> setting : more.entrySet()) {
                    asked = asked.withNamed(setting.getKey().toString(), texts(setting.getValue()));
                }
            } else if (!key.equals(METHOD)) {
                List<String> known = names(asked);
                if (!known.contains(key) && Shorthand.named(key).isEmpty()) {
                    throw new Trouble(
                            "change-list-key", Map.of("file", file, "number", number, "key", key, "known", known));
                }
                asked = asked.withNamed(key, texts(each.getValue()));
            }
        }
        Optional<Setting> missing = asked.missing();
        if (missing.isPresent()) {
            String key = Shorthand.name(asked.way(), missing.get());
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

    /** The names that an entry of this way may have. */
    private static List<String> names(Asked asked) {
        List<String> names = new ArrayList<>(List.of(METHOD));
        for (Setting setting : asked.way().settings()) {
            String name = Shorthand.name(asked.way(), setting);
            if (!names.contains(name)) {
                names.add(name);
            }
        }
        return names;
    }
}
