package easewright.editor.model;

import easewright.alter.Taper;
import easewright.alter.Ways;
import easewright.pattern.EdgeRef;
import easewright.pattern.Side;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;

/**
 * What is in the user's hands and not done yet: a change that is tried, and what is typed and not taken. It is no part
 * of the pattern and is never saved, but kept from a crash. Immutable.
 *
 * @param wanted what is tried, or half chosen
 * @param size   the size at work
 * @param typed  what stands in fields and was not taken
 */
public record Unfinished(Optional<Wanted> wanted, Optional<String> size, List<Typed> typed) {
    public static final Unfinished NOTHING = new Unfinished(Optional.empty(), Optional.empty(), List.of());

    /**
     * Text that stands in a field and was not taken.
     *
     * @param field what the field is called
     */
    public record Typed(String field, String text) {}

    public Unfinished {
        typed = List.copyOf(typed);
    }

    /** What is tried on the desk, or half chosen: settings that stay for the next change are nothing by themselves. */
    public static Unfinished on(Desk desk, List<Typed> typed) {
        Optional<Wanted> begun = desk.wanted().filter(w -> !w.equals(w.done()));
        return begun.isEmpty() && typed.isEmpty() ? NOTHING : new Unfinished(begun, desk.size(), typed);
    }

    public boolean isNothing() {
        return wanted.isEmpty() && typed.isEmpty();
    }

    /** Written down; empty for nothing. */
    public String text() {
        if (isNothing()) {
            return "";
        }
        Properties kept = new Properties();
        size.ifPresent(s -> kept.setProperty("size", s));
        for (int i = 0; i < typed.size(); i++) {
            kept.setProperty("typed." + i + ".field", typed.get(i).field());
            kept.setProperty("typed." + i + ".text", typed.get(i).text());
        }
        wanted.ifPresent(w -> put(w, kept));
        StringWriter text = new StringWriter();
        try {
            kept.store(text, null);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written", e);
        }
        return text.toString();
    }

    private static void put(Wanted wanted, Properties kept) {
        kept.setProperty("level", wanted.level());
        kept.setProperty("amount", Double.toString(wanted.amount()));
        kept.setProperty("taper", wanted.taper().name());
        kept.setProperty("carry", Boolean.toString(wanted.carry()));
        kept.setProperty("side", wanted.side().name());
        kept.setProperty("open-up", Boolean.toString(wanted.openUp()));
        kept.setProperty("even", Boolean.toString(wanted.even()));
        putAll("left-out", wanted.leftOut().stream().map(EdgeRef::toString).toList(), kept);
        wanted.other().ifPresent(way -> {
            kept.setProperty("way", way.method());
            putTexts("setting", way.texts(), kept);
        });
        putTexts("beyond", wanted.beyond(), kept);
    }

    private static void putTexts(String name, Map<String, List<String>> texts, Properties kept) {
        List<String> keys = List.copyOf(texts.keySet());
        putAll(name, keys, kept);
        for (int i = 0; i < keys.size(); i++) {
            putAll(name + "." + i, texts.get(keys.get(i)), kept);
        }
    }

    private static void putAll(String name, List<String> values, Properties kept) {
        for (int i = 0; i < values.size(); i++) {
            kept.setProperty(name + "." + i, values.get(i));
        }
    }

    /** Reads it again; nothing where that is not understood, as it may be from another version of the program. */
    public static Unfinished of(String text) {
        Properties kept = new Properties();
        try {
            kept.load(new StringReader(text));
            List<Typed> typed = new ArrayList<>();
            for (int i = 0; kept.containsKey("typed." + i + ".field"); i++) {
                typed.add(new Typed(
                        kept.getProperty("typed." + i + ".field"), kept.getProperty("typed." + i + ".text", "")));
            }
            return new Unfinished(wanted(kept), Optional.ofNullable(kept.getProperty("size")), typed);
        } catch (IOException | IllegalArgumentException notUnderstood) {
            return NOTHING;
        }
    }

    private static Optional<Wanted> wanted(Properties kept) {
        if (!kept.containsKey("level")) {
            return Optional.empty();
        }
        Set<EdgeRef> leftOut = new HashSet<>();
        all("left-out", kept).forEach(ref -> leftOut.add(EdgeRef.parse(ref)));
        return Optional.of(new Wanted(
                kept.getProperty("level"),
                Double.parseDouble(kept.getProperty("amount", "0")),
                leftOut,
                Taper.valueOf(kept.getProperty("taper", "")),
                Boolean.parseBoolean(kept.getProperty("carry")),
                Side.valueOf(kept.getProperty("side", "")),
                Boolean.parseBoolean(kept.getProperty("open-up")),
                Boolean.parseBoolean(kept.getProperty("even")),
                way(kept),
                texts("beyond", kept)));
    }

    private static Optional<OtherWay> way(Properties kept) {
        String method = kept.getProperty("way");
        if (method == null) {
            return Optional.empty();
        }
        if (Ways.of(method).isEmpty()) {
            throw new IllegalArgumentException("Unknown way: " + method);
        }
        return Optional.of(new OtherWay(method, texts("setting", kept)));
    }

    private static Map<String, List<String>> texts(String name, Properties kept) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        List<String> keys = all(name, kept);
        for (int i = 0; i < keys.size(); i++) {
            texts.put(keys.get(i), all(name + "." + i, kept));
        }
        return texts;
    }

    private static List<String> all(String name, Properties kept) {
        List<String> values = new ArrayList<>();
        for (int i = 0; kept.containsKey(name + "." + i); i++) {
            values.add(kept.getProperty(name + "." + i));
        }
        return values;
    }
}
