package easewright.editor.model;

import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The form in which the settings of a way are asked for, made from the way's description.
 *
 * @param what   what the way does
 * @param hint   when to use it
 * @param fields level and amount left out, which stand above every form
 */
public record WayForm(String what, String hint, List<Field> fields) {
    /**
     * One setting.
     *
     * @param options what may be chosen; empty for what is written, shown on the table, or yes or no
     * @param texts   what stands there now
     * @param missing there is no change before something is chosen here
     */
    public record Field(
            String key,
            Setting.Kind kind,
            String label,
            String hint,
            List<Option> options,
            List<String> texts,
            boolean missing) {
        public Field {
            options = List.copyOf(options);
            texts = List.copyOf(texts);
        }
    }

    /**
     * One thing that may be chosen.
     *
     * @param text  as the setting is written
     * @param label as it is shown
     */
    public record Option(String text, String label) {}

    public WayForm {
        fields = List.copyOf(fields);
    }

    /** Every way by its method and its name, the most usual first. */
    public static List<Option> ways(Words words) {
        return Ways.all().stream()
                .map(w -> new Option(w.method(), words.of("way." + w.method() + ".name")))
                .toList();
    }

    public static WayForm of(OtherWay other, Desk desk) {
        Words words = desk.words();
        Way way = other.way();
        String stem = "way." + way.method();
        List<Field> fields = new ArrayList<>();
        for (Setting setting : way.settings()) {
            if (!setting.key().equals(way.amount()) && !other.isLevel(setting)) {
                String key = stem + ".setting." + setting.key();
                fields.add(new Field(
                        setting.key(),
                        setting.kind(),
                        words.of(key),
                        words.of(key + ".hint"),
                        options(setting, key, desk),
                        texts(setting, other),
                        other.missing().contains(setting)));
            }
        }
        return new WayForm(words.of(stem + ".what"), words.of(stem + ".hint"), fields);
    }

    /** What was chosen, or what holds where nothing was. */
    private static List<String> texts(Setting setting, OtherWay other) {
        List<String> chosen = other.texts(setting.key());
        return chosen.isEmpty() && !setting.standard().isEmpty() ? List.of(setting.standard()) : chosen;
    }

    private static List<Option> options(Setting setting, String key, Desk desk) {
        Pattern pattern = desk.pattern();
        Words words = desk.words();
        return switch (setting.kind()) {
            case LEVEL ->
                pattern.levels().stream()
                        .map(Level::name)
                        .map(n -> new Option(n, n))
                        .toList();
            case EDGE, SHARES -> edges(desk);
            case PIECE, PIECES ->
                pattern.pieces().stream().map(p -> new Option(p.id(), p.name())).toList();
            case NAME, NAMES ->
                names(pattern).stream().map(n -> new Option(n, n)).toList();
            case CHOICE ->
                setting.choices().stream()
                        .map(c -> new Option(c, words.of(key + "." + c)))
                        .toList();
            case DARTS -> darts(desk);
            default -> List.of();
        };
    }

    /** Edges of the pieces that count at the level at work: centre lines first, then seams, then the rest. */
    private static List<Option> edges(Desk desk) {
        List<Edge> order = new ArrayList<>();
        Map<Edge, Option> options = new IdentityHashMap<>();
        for (Piece piece : desk.pattern().pieces()) {
            boolean counts = desk.wanted()
                    .flatMap(w -> piece.level(w.level()))
                    .filter(m -> m.counts())
                    .isPresent();
            for (Edge edge : counts ? piece.edges() : List.<Edge>of()) {
                String label = desk.words().of("editor.here.seam", Map.of("piece", piece.name(), "edge", edge.name()));
                order.add(edge);
                options.put(edge, new Option(piece.id() + "/" + edge.name(), label));
            }
        }
        order.sort(Comparator.comparingInt(e -> rank(e.role())));
        return order.stream().map(options::get).toList();
    }

    private static List<Option> darts(Desk desk) {
        List<Option> options = new ArrayList<>();
        for (Piece piece : desk.pattern().pieces()) {
            for (Dart dart : piece.darts()) {
                String label = desk.words().of("editor.here.seam", Map.of("piece", piece.name(), "edge", dart.name()));
                options.add(new Option(piece.id() + "/" + dart.name(), label));
            }
        }
        return options;
    }

    private static int rank(EdgeRole role) {
        return switch (role) {
            case FOLD, CENTRE -> 0;
            case SEAM -> 1;
            default -> 2;
        };
    }

    private static Set<String> names(Pattern pattern) {
        Set<String> names = new LinkedHashSet<>();
        pattern.levels().stream().map(Level::name).forEach(names::add);
        for (Piece piece : pattern.pieces()) {
            piece.notches().stream().map(Notch::name).forEach(names::add);
            piece.edges().stream().map(Edge::name).forEach(names::add);
        }
        return names;
    }

    /** What has still to be chosen, in words; empty where nothing has. */
    public static String stillToChoose(OtherWay other, Words words) {
        List<String> labels = other.missing().stream()
                .map(s -> words.of("way." + other.method() + ".setting." + s.key()))
                .toList();
        return labels.isEmpty() ? "" : words.of("editor.here.still", Map.of("settings", labels));
    }
}
