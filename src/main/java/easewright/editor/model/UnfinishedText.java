package easewright.editor.model;

import easewright.alter.Taper;
import easewright.alter.Ways;
import easewright.geom.Line;
import easewright.geom.Point;
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

/** How {@link Unfinished} is written down: as keys and values, of which those that are not known are passed over. */
final class UnfinishedText {
    private final Properties kept;

    private UnfinishedText(Properties kept) {
        this.kept = kept;
    }

    static String of(Unfinished hand) {
        UnfinishedText text = new UnfinishedText(new Properties());
        text.put("size", hand.size());
        text.put("as-saved", hand.asSaved());
        hand.wanted().ifPresent(text::put);
        text.put(hand.begun());
        StringWriter written = new StringWriter();
        try {
            text.kept.store(written, null);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written", e);
        }
        return written.toString();
    }

    static Unfinished read(String written) {
        UnfinishedText text = new UnfinishedText(new Properties());
        try {
            text.kept.load(new StringReader(written));
            Unfinished hand = new Unfinished(text.wanted(), text.optional("size"), text.begun(), text.flag("as-saved"));
            return hand.isNothing() ? Unfinished.at(hand.begun()) : hand;
        } catch (IOException | IllegalArgumentException notUnderstood) {
            return Unfinished.NOTHING;
        }
    }

    // ---- what is tried ----

    private void put(Wanted wanted) {
        put("level", wanted.level());
        put("amount", Double.toString(wanted.amount()));
        put("taper", wanted.taper().name());
        put("carry", wanted.carry());
        put("side", wanted.side().name());
        put("open-up", wanted.openUp());
        put("even", wanted.even());
        putAll("also-in", List.copyOf(wanted.alsoIn()));
        putAll("left-out", wanted.leftOut().stream().map(EdgeRef::toString).toList());
        wanted.other().ifPresent(way -> {
            put("way", way.method());
            putTexts("setting", way.texts());
        });
        putTexts("beyond", wanted.beyond());
    }

    private void putTexts(String key, Map<String, List<String>> texts) {
        List<String> keys = List.copyOf(texts.keySet());
        putAll(key, keys);
        for (int i = 0; i < keys.size(); i++) {
            putAll(key + "." + i, texts.get(keys.get(i)));
        }
    }

    private Optional<Wanted> wanted() {
        if (!kept.containsKey("level")) {
            return Optional.empty();
        }
        Set<EdgeRef> leftOut = new HashSet<>();
        all("left-out").forEach(ref -> leftOut.add(EdgeRef.parse(ref)));
        return Optional.of(new Wanted(
                text("level"),
                Double.parseDouble(kept.getProperty("amount", "0")),
                leftOut,
                Taper.valueOf(text("taper")),
                flag("carry"),
                Side.valueOf(text("side")),
                flag("open-up"),
                flag("even"),
                way(),
                texts("beyond"),
                Set.copyOf(all("also-in"))));
    }

    private Optional<OtherWay> way() {
        String method = kept.getProperty("way");
        if (method == null) {
            return Optional.empty();
        }
        if (Ways.of(method).isEmpty()) {
            throw new IllegalArgumentException("Unknown way: " + method);
        }
        return Optional.of(new OtherWay(method, texts("setting")));
    }

    private Map<String, List<String>> texts(String key) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        List<String> keys = all(key);
        for (int i = 0; i < keys.size(); i++) {
            texts.put(keys.get(i), all(key + "." + i));
        }
        return texts;
    }

    // ---- what is begun ----

    private void put(Begun begun) {
        put("page", begun.page());
        for (int i = 0; i < begun.typed().size(); i++) {
            Begun.Typed typed = begun.typed().get(i);
            String at = "typed." + i + ".";
            put(at + "page", typed.page());
            put(at + "id", typed.id());
            put(at + "field", typed.field());
            put(at + "text", typed.text());
            put(at + "keys", typed.keys());
        }
        begun.cut().ifPresent(cut -> {
            put("cut", cut.field());
            put("cut.from", cut.from());
        });
        begun.marking().ifPresent(this::put);
    }

    private void put(Begun.Marking marking) {
        put("mark.step", marking.step());
        put("mark.open", marking.open());
        put("mark.tool", marking.tool());
        put("mark.piece", marking.piece());
        put("mark.level", marking.level());
        putLine("mark.line", marking.line());
        putAll("mark.suggestion-left-out", List.copyOf(marking.leftOut()));
        for (int i = 0; i < marking.places().size(); i++) {
            Begun.Place place = marking.places().get(i);
            String at = "mark.place." + i + ".";
            put(at + "kind", place.kind());
            put(at + "at", place.at());
            put(at + "piece", place.piece());
            putLine(at + "line", place.line());
        }
    }

    private Begun begun() {
        List<Begun.Typed> typed = new ArrayList<>();
        for (int i = 0; kept.containsKey("typed." + i + ".field"); i++) {
            String at = "typed." + i + ".";
            typed.add(new Begun.Typed(
                    text(at + "page"), text(at + "id"), text(at + "field"), text(at + "text"), flag(at + "keys")));
        }
        Optional<Begun.Cut> cut = optional("cut").map(field -> new Begun.Cut(field, point("cut.from")));
        return new Begun(text("page"), typed, marking(), cut);
    }

    private Optional<Begun.Marking> marking() {
        List<Begun.Place> places = new ArrayList<>();
        for (int i = 0; kept.containsKey("mark.place." + i + ".kind"); i++) {
            String at = "mark.place." + i + ".";
            places.add(new Begun.Place(text(at + "kind"), point(at + "at"), optional(at + "piece"), line(at + "line")));
        }
        return optional("mark.step")
                .map(step -> new Begun.Marking(
                        flag("mark.open"),
                        step,
                        text("mark.tool"),
                        optional("mark.piece"),
                        optional("mark.level"),
                        places,
                        line("mark.line"),
                        Set.copyOf(all("mark.suggestion-left-out"))));
    }

    // ---- keys and values ----

    private void put(String key, String value) {
        kept.setProperty(key, value);
    }

    private void put(String key, boolean value) {
        put(key, Boolean.toString(value));
    }

    private void put(String key, Optional<String> value) {
        value.ifPresent(v -> put(key, v));
    }

    private void put(String key, Point at) {
        put(key + ".x", Double.toString(at.x()));
        put(key + ".y", Double.toString(at.y()));
    }

    private void putLine(String key, Optional<Line> line) {
        line.ifPresent(l -> {
            put(key + ".from", l.start());
            put(key + ".to", l.end());
        });
    }

    private void putAll(String key, List<String> values) {
        for (int i = 0; i < values.size(); i++) {
            put(key + "." + i, values.get(i));
        }
    }

    private String text(String key) {
        return kept.getProperty(key, "");
    }

    private Optional<String> optional(String key) {
        return Optional.ofNullable(kept.getProperty(key));
    }

    private boolean flag(String key) {
        return Boolean.parseBoolean(kept.getProperty(key));
    }

    private Point point(String key) {
        return new Point(Double.parseDouble(text(key + ".x")), Double.parseDouble(text(key + ".y")));
    }

    private Optional<Line> line(String key) {
        return kept.containsKey(key + ".from.x")
                ? Optional.of(new Line(point(key + ".from"), point(key + ".to")))
                : Optional.empty();
    }

    private List<String> all(String key) {
        List<String> values = new ArrayList<>();
        for (int i = 0; kept.containsKey(key + "." + i); i++) {
            values.add(kept.getProperty(key + "." + i));
        }
        return values;
    }
}
