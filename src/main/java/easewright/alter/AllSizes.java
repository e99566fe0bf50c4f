package easewright.alter;

import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/**
 * One change for several sizes of a nest. Where the sizes are marked, the settings name them under {@link Scope#SIZE}, or
 * say {@code all}. Where each size has levels and pieces of its own, named alike but for the size ({@code hip 38} and
 * {@code hip 40}, {@code front 38} and {@code front 40}), a {@code *} in the written settings stands for the size:
 * {@code hip *}, {@code front *}{@code /side}. Each size is then changed by the amount, exactly and on its own.
 */
public final class AllSizes {
    private static final String STAR = "*";
    private static final String ALL = "all";

    private AllSizes() {}

    /**
     * The settings for each size, in the order of the pattern's levels and pieces; the given ones alone where they have
     * no {@code *}.
     *
     * @param texts as {@link SettingText#read} takes them
     * @throws Refusal if no level and no piece is named so
     */
    public static List<Map<String, List<String>>> of(Map<String, List<String>> texts, Pattern pattern) throws Refusal {
        List<String> named = texts.getOrDefault(Scope.SIZE, List.of());
        return named.isEmpty() ? byStar(texts, pattern) : bySize(texts, named, pattern);
    }

    private static List<Map<String, List<String>>> bySize(
            Map<String, List<String>> texts, List<String> named, Pattern pattern) throws Refusal {
        List<Map<String, List<String>>> all = new ArrayList<>();
        for (String size : named(named, pattern)) {
            all.add(inSize(texts, size));
        }
        return all;
    }

    /**
     * The sizes that texts such as {@code 10,12} or {@code all} name, each once, as they are named.
     *
     * @throws Refusal if one is not known, or none is marked
     */
    public static List<String> named(List<String> named, Pattern pattern) throws Refusal {
        List<String> known = PatternPart.sizes(pattern);
        if (known.isEmpty()) {
            throw Refusal.of("no-size-marked");
        }
        Set<String> meant = new LinkedHashSet<>();
        for (String text : named) {
            for (String part : text.split("[,;]")) {
                if (part.strip().equalsIgnoreCase(ALL)) {
                    meant.addAll(known);
                } else {
                    meant.add(known.stream()
                            .filter(k -> k.equalsIgnoreCase(part.strip()))
                            .findFirst()
                            .orElseThrow(() -> Refusal.of("size-not-known")
                                    .with("size", part.strip())
                                    .with("known", known)));
                }
            }
        }
        return List.copyOf(meant);
    }

    private static Map<String, List<String>> inSize(Map<String, List<String>> texts, String size) {
        Map<String, List<String>> one = new LinkedHashMap<>();
        texts.forEach((key, values) ->
                one.put(key, values.stream().map(v -> v.replace(STAR, size)).toList()));
        one.put(Scope.SIZE, List.of(size));
        return one;
    }

    private static List<Map<String, List<String>>> byStar(Map<String, List<String>> texts, Pattern pattern)
            throws Refusal {
        Set<String> starred = starred(texts, pattern);
        if (starred.isEmpty()) {
            return List.of(texts);
        }
        List<Map<String, List<String>>> all = new ArrayList<>();
        List<String> marked = PatternPart.sizes(pattern);
        for (String size : starred) {
            Map<String, List<String>> one = inSize(texts, size);
            if (!marked.contains(size)) {
                one.remove(Scope.SIZE);
            }
            all.add(one);
        }
        return all;
    }

    /**
     * What the {@code *} of settings stands for, in the order of {@link #of}; nothing where they have none.
     *
     * @throws Refusal if no level and no piece is named so
     */
    public static Set<String> starred(Map<String, List<String>> texts, Pattern pattern) throws Refusal {
        Optional<String> starred = Stream.concat(
                        texts.getOrDefault("level", List.of()).stream(),
                        texts.values().stream().flatMap(List::stream))
                .filter(t -> t.contains(STAR))
                .findFirst();
        return starred.isEmpty() ? Set.of() : sizes(starred.get(), pattern);
    }

    /** What the star stands for in the names of levels, or else of pieces. */
    private static Set<String> sizes(String text, Pattern pattern) throws Refusal {
        int slash = text.indexOf('/');
        String name = (slash < 0 ? text : text.substring(0, slash)).strip();
        int star = name.indexOf(STAR);
        if (star < 0) {
            throw Refusal.of("size-form").with("text", text);
        }
        java.util.regex.Pattern form = java.util.regex.Pattern.compile(
                java.util.regex.Pattern.quote(name.substring(0, star)) + "(.+)"
                        + java.util.regex.Pattern.quote(name.substring(star + 1)),
                java.util.regex.Pattern.CASE_INSENSITIVE | java.util.regex.Pattern.UNICODE_CASE);
        List<String> names = slash < 0
                ? pattern.levels().stream().map(Level::name).toList()
                : pattern.pieces().stream().map(Piece::name).toList();
        Set<String> sizes = new LinkedHashSet<>();
        for (String each : names) {
            Matcher matcher = form.matcher(each);
            if (matcher.matches()) {
                sizes.add(matcher.group(1));
            }
        }
        if (sizes.isEmpty()) {
            throw Refusal.of("size-unknown").with("text", name).with("known", names);
        }
        return sizes;
    }
}
