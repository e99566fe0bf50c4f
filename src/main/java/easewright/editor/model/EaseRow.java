package easewright.editor.model;

import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.Minimum;
import easewright.pattern.Level;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * One level of the ease sheet as it is shown, all in words.
 *
 * @param body    empty where not known
 * @param name    of the level, with the limb where left and right have each their own
 * @param classes each with its number and its table; empty where no table speaks of the level
 * @param verdict how the ease stands to the wish and the minimum, in a short sentence
 */
public record EaseRow(
        Level level,
        String name,
        String body,
        String finished,
        String ease,
        String percent,
        String wish,
        List<String> classes,
        List<String> minimums,
        Standing standing,
        String verdict,
        OptionalDouble missing,
        EaseScale scale) {
    /** How the ease stands. */
    public enum Standing {
        /** No body girth, so no ease. */
        UNKNOWN,
        /** Below the smallest ease any source allows for wearing. */
        TIGHT,
        /** Away from the wish. */
        AWAY,
        /** As wished. */
        MET,
        /** There is ease, and no wish. */
        NO_WISH
    }

    /** Nearer to the wish than this is met: half of what a tape shows, mm. */
    static final double MET_WITHIN = 0.5;

    public static EaseRow of(EaseLine line, Words words) {
        Standing standing = standing(line);
        return new EaseRow(
                line.level(),
                line.name(),
                length(line.body(), words),
                words.length(line.finished()),
                length(line.ease(), words),
                line.percent().isPresent()
                        ? words.of(
                                "editor.ease.percent",
                                Map.of("ease.percent", line.percent().getAsDouble()))
                        : "",
                length(line.wish(), words),
                classes(line, words),
                minimums(line, words),
                standing,
                verdict(standing, line, words),
                line.missing(),
                EaseScale.of(line));
    }

    private static Standing standing(EaseLine line) {
        if (line.ease().isEmpty()) {
            return Standing.UNKNOWN;
        }
        if (line.missing().isPresent()) {
            return Math.abs(line.missing().getAsDouble()) <= MET_WITHIN ? Standing.MET : Standing.AWAY;
        }
        OptionalDouble least = least(line);
        boolean tight = least.isPresent() && line.ease().getAsDouble() < least.getAsDouble() - MET_WITHIN;
        return tight ? Standing.TIGHT : Standing.NO_WISH;
    }

    /** The smallest ease that any source still calls enough. */
    static OptionalDouble least(EaseLine line) {
        return line.minimums().stream().mapToDouble(Minimum::low).min();
    }

    private static String verdict(Standing standing, EaseLine line, Words words) {
        return switch (standing) {
            case UNKNOWN -> words.of("editor.ease.unknown");
            case MET -> words.of("editor.ease.met");
            case NO_WISH -> words.of("editor.ease.no-wish");
            case TIGHT -> words.of("editor.ease.tight");
            case AWAY -> {
                double missing = line.missing().orElse(0);
                yield missing > 0
                        ? words.of("editor.ease.missing", Map.of("amount", missing))
                        : words.of("editor.ease.over", Map.of("amount", -missing));
            }
        };
    }

    private static List<String> classes(EaseLine line, Words words) {
        List<String> out = new ArrayList<>();
        // What a table has a word for comes first; that an ease lies outside another table matters less.
        List<Classed> sorted = line.classes().stream()
                .sorted(Comparator.comparing(c -> c.where() != Classed.Where.WITHIN))
                .toList();
        for (Classed classed : sorted) {
            Map<String, Object> values = new TreeMap<>();
            values.put("word", classed.word());
            values.put("lowest", classed.table().bands().get(0).word());
            values.put("ease", line.ease().orElse(0));
            values.put("garment", classed.table().garment());
            values.put("source", classed.table().source());
            values.put("standing", classed.table().standing());
            out.add(words.of("editor.ease.class." + classed.where().name().toLowerCase(Locale.ROOT), values));
        }
        return List.copyOf(out);
    }

    private static List<String> minimums(EaseLine line, Words words) {
        List<String> out = new ArrayList<>();
        for (Minimum minimum : line.minimums()) {
            Map<String, Object> values = new TreeMap<>();
            values.put("low", minimum.low());
            minimum.high().ifPresent(high -> values.put("high", high));
            values.put("source", minimum.source());
            values.put("standing", minimum.standing());
            values.put("note", minimum.note());
            String key = minimum.high().isPresent() ? "editor.ease.minimum.range" : "editor.ease.minimum";
            out.add(words.of(key, values));
        }
        return List.copyOf(out);
    }

    private static String length(OptionalDouble mm, Words words) {
        return mm.isPresent() ? words.length(mm.getAsDouble()) : "";
    }
}
