package easewright.print;

import easewright.alter.OneChange;
import easewright.alter.Scope;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Recorded changes in plain words. */
public final class ChangeWords {
    /** Settings that are lengths in mm; all others are words. */
    private static final Set<String> LENGTHS = Set.of("amount", "gap", "below");

    /** Settings that the sentence itself tells, or that are places which say nothing to a reader. */
    private static final Set<String> TOLD = Set.of(
            "level",
            "amount",
            "gap",
            "below",
            "piece",
            "edge",
            "weight",
            "hinge",
            "opening",
            "turning",
            "one",
            "other",
            "beyond",
            "fixed",
            "slash",
            "back",
            "dart",
            "dart-weight",
            "matter",
            "mate",
            "end",
            "notch",
            "at",
            "stroke",
            Scope.SIZE,
            Scope.SIDE,
            Scope.AS_IN);

    /** Edges whose ends are this near to each other meet there, mm. */
    private static final double AT_CORNER = 0.5;

    private final Words words;

    public ChangeWords(Words words) {
        this.words = words;
    }

    /** All changes of a pattern, oldest first; what was made alike in several sizes once. */
    public List<String> of(Pattern pattern) {
        return OneChange.made(pattern).stream()
                .map(change -> of(change, pattern))
                .toList();
    }

    /** A change with all sizes in which it was made. */
    public String of(OneChange change, Pattern pattern) {
        return of(change.note(), change.sizes(), pattern);
    }

    /** The same, with nothing but what was done: where the girths that came of it stand beside. */
    public String done(OneChange change, Pattern pattern) {
        return done(change.note(), change.sizes(), pattern);
    }

    /** What was done, at which level, by how much and where; then how it dies away. */
    public String of(ChangeNote note, Pattern pattern) {
        return of(note, Scope.of(note).size().stream().toList(), pattern);
    }

    /**
     * @param sizes in which it was made; where they are several, pieces are called as they are in each
     */
    private String of(ChangeNote note, List<String> sizes, Pattern pattern) {
        List<String> sentences = new ArrayList<>();
        sentences.add(done(note, sizes, pattern));
        GapInGirth.of(note, pattern)
                .ifPresent(mm -> sentences.add(words.of("change.gap.girth", Map.of("girth.signed", mm))));
        List<String> manners = manners(note);
        if (!manners.isEmpty()) {
            sentences.add(words.of("change.manners", Map.of("manners", words.listed(manners))));
        }
        return String.join(" ", sentences);
    }

    private String done(ChangeNote note, List<String> sizes, Pattern pattern) {
        boolean plainly = sizes.size() > 1;
        Map<String, Object> values = new TreeMap<>();
        note.settings()
                .forEach((key, text) ->
                        values.put(key, LENGTHS.contains(key) ? length(text) : key(text, pattern, plainly)));
        if (values.get("amount") instanceof Double amount) {
            values.put("amount.signed", amount);
        }
        if (values.get("gap") instanceof Double gap) {
            values.put("gap.signed", gap);
        }
        values.putIfAbsent("level", "");
        values.put("where", where(note, pattern, plainly));
        joined(note, pattern, values);
        Side side = Scope.of(note).side();
        values.put(
                "whole",
                side == Side.BOTH
                        ? AllRound.of(pattern, String.valueOf(values.get("level")), words)
                        : words.of("change.in-girth"));
        String made = sentence(note, values);
        String done = side == Side.BOTH ? made : words.of("change.on-side." + side.name(), Map.of("change", made));
        return inSizes(sizes, done);
    }

    private String inSizes(List<String> sizes, String done) {
        return switch (sizes.size()) {
            case 0 -> done;
            case 1 -> words.of("change.in-size", Map.of("size", sizes.get(0), "change", done));
            default -> words.of("change.in-sizes", Map.of("sizes", sizes, "change", done));
        };
    }

    /** What a truing made true is told by its matter; every other change by its method. */
    private String sentence(ChangeNote note, Map<String, Object> values) {
        String method = note.method();
        String key =
                values.get("matter") instanceof String matter ? "change.true." + matter : "change.method." + method;
        if (values.containsKey("line")) {
            return words.of("change.true.joined-line.named", values);
        }
        String line = words.of(key, values).startsWith(key) ? "change.method." + method : key;
        return known(line, values, "change.method-other", Map.of("method", method));
    }

    /** Of a line that goes on across a seam, the edges that meet there, and the pieces that the seam joins. */
    private static void joined(ChangeNote note, Pattern pattern, Map<String, Object> values) {
        String name = note.settings().getOrDefault("mate", "");
        Optional<Mate> mate = note.settings().getOrDefault("matter", "").equals("joined-line")
                ? pattern.mates().stream().filter(m -> m.name().equals(name)).findFirst()
                : Optional.empty();
        if (mate.isEmpty() || mate.get().first().size() != 1) {
            return;
        }
        EdgeRef ref = mate.get().first().get(0);
        pattern.edge(ref).ifPresent(seam -> {
            Point corner = note.settings().getOrDefault("end", "").equals("end") ? seam.to() : seam.from();
            List<String> lines = pattern.piece(ref.piece()).stream()
                    .flatMap(piece -> piece.edges().stream())
                    .filter(e -> !e.name().equals(seam.name()))
                    .filter(e -> Math.min(e.from().distance(corner), e.to().distance(corner)) < AT_CORNER)
                    .map(Edge::name)
                    .toList();
            if (!lines.isEmpty()) {
                MateSides sides = MateSides.of(pattern, mate.get());
                values.put("line", lines);
                values.put(
                        "pieces",
                        Stream.concat(sides.first().stream(), sides.second().stream())
                                .toList());
            }
        });
    }

    /** The same without how it dies away, for a label. */
    public String brief(ChangeNote note, Pattern pattern) {
        return of(new ChangeNote(note.method(), told(note.settings())), pattern);
    }

    private static Map<String, String> told(Map<String, String> settings) {
        Map<String, String> kept = new TreeMap<>(settings);
        kept.keySet().removeIf(key -> !TOLD.contains(stem(key)));
        return kept;
    }

    /** The edges the change was put at, each by its piece's name, with its share where shares differ. */
    private String where(ChangeNote note, Pattern pattern, boolean plainly) {
        Map<String, String> settings = note.settings();
        boolean uneven = settings.keySet().stream()
                        .filter(k -> stem(k).equals("weight"))
                        .map(settings::get)
                        .distinct()
                        .count()
                > 1;
        List<String> edges = new ArrayList<>();
        settings.forEach((key, text) -> {
            if (stem(key).equals("edge")) {
                String edge = edge(text, pattern, plainly);
                String weight = settings.get(key.replace("edge", "weight"));
                edges.add(
                        uneven && weight != null
                                ? words.of("change.share", Map.of("edge", edge, "weight", plain(weight)))
                                : edge);
            }
        });
        return edges.isEmpty() ? words.of("change.all-seams") : String.join("; ", edges);
    }

    private List<String> manners(ChangeNote note) {
        Set<String> manners = new LinkedHashSet<>();
        List<String> keeps = new ArrayList<>();
        note.settings().forEach((key, text) -> {
            String stem = stem(key);
            if (stem.equals("keep")) {
                keeps.add(text);
            } else if (!TOLD.contains(stem)) {
                String line =
                        "change.setting." + stem + (text.equals("yes") ? "" : "." + text.toLowerCase(Locale.ROOT));
                Map<String, String> plainly = Map.of("setting", stem.replace('-', ' '), "value", text);
                manners.add(known(line, Map.of(), "change.setting-other", plainly));
            }
        });
        if (!keeps.isEmpty()) {
            manners.add(words.of("change.setting.keep", Map.of("places", keeps)));
        }
        return List.copyOf(manners);
    }

    /** A line of the bundle, or another one where a newer version recorded what has no line here. */
    private String known(String key, Map<String, ?> values, String otherwise, Map<String, ?> plainly) {
        String said = words.of(key, values);
        return said.startsWith(key) ? words.of(otherwise, plainly) : said;
    }

    /** A setting's name without its number: {@code edge} of {@code edge.2}. */
    private static String stem(String key) {
        int dot = key.indexOf('.');
        return dot < 0 ? key : key.substring(0, dot);
    }

    private String edge(String text, Pattern pattern, boolean plainly) {
        try {
            EdgeRef edge = EdgeRef.parse(text);
            return words.of("change.edge", Map.of("piece", key(edge.piece(), pattern, plainly), "edge", edge.edge()));
        } catch (IllegalArgumentException e) {
            return text;
        }
    }

    /** A piece by its name where the text is the id of one. */
    private static String key(String text, Pattern pattern, boolean plainly) {
        return pattern.piece(text).map(plainly ? Piece::plainName : Piece::name).orElse(text);
    }

    private static Object length(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return text;
        }
    }

    private static String plain(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }
}
