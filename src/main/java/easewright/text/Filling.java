package easewright.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts values into a line of the bundle, each in the form that its name, or the line, asks for (see {@link Words}). */
record Filling(Words words, Map<String, ?> values) {
    private static final String KEYBOARD = "key.";

    /** Lengths as they may be typed, those in the unit first. */
    private static final String EXAMPLES = "unit.examples";

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z][A-Za-z0-9_.-]*)\\}");

    /** What stands before the last of a list. */
    private static final Set<String> JOINED = Set.of("and", "or");

    /** Forms in which a seam is told to fit: what was, what is, and what would be. */
    private static final Set<String> STANDING = Set.of("then", "now", "so");

    /** Between two sentences: a full stop, a gap, and what begins the next. */
    private static final Pattern SENTENCES = Pattern.compile("(?<=[.?!]) (?=[\\p{Lu}\"\u201c{])");

    /** What stands for a value that nobody gave, where there is no sentence without it. */
    private static final String UNSAID = "\u2026";

    /**
     * The line with its values, without the sentences for which a value was not given: what is told of a fault, such as the
     * largest amount that works, is not known everywhere that the fault is met.
     */
    String sayable(String line) {
        if (isWhole(line)) {
            return of(line);
        }
        String some = SENTENCES.splitAsStream(line).filter(this::isWhole).collect(Collectors.joining(" "));
        return some.isEmpty() ? PLACEHOLDER.matcher(of(line)).replaceAll(UNSAID) : of(some);
    }

    private boolean isWhole(String line) {
        return PLACEHOLDER
                .matcher(line)
                .results()
                .map(place -> place.group(1))
                .allMatch(name -> values.get(name) != null || asked(name).isPresent());
    }

    /** The line with its values; what has none stays as it is. */
    String of(String line) {
        Matcher place = PLACEHOLDER.matcher(line);
        StringBuilder out = new StringBuilder();
        while (place.find()) {
            String name = place.group(1);
            Object value = values.get(name);
            String text = value == null ? asked(name).orElse(place.group()) : shown(name, value);
            // A whole sentence in the place of a part of one brings a full stop of its own.
            boolean stops = text.endsWith(".") && line.startsWith(".", place.end());
            place.appendReplacement(out, Matcher.quoteReplacement(stops ? text.substring(0, text.length() - 1) : text));
        }
        return place.appendTail(out).toString();
    }

    /** All values by their names, for a key that has no line. */
    String listed() {
        return new TreeMap<>(values)
                .entrySet().stream()
                        .map(e -> e.getKey() + "=" + shown(e.getKey(), e.getValue()))
                        .collect(Collectors.joining(", ", "(", ")"));
    }

    /** The name of a key on the keyboard, or a length in the form that a line asks for. */
    private Optional<String> asked(String name) {
        if (name.equals(EXAMPLES)) {
            return Optional.of(words.line(name + (words.unit() == LengthUnit.INCH ? ".inch" : ".metric")));
        }
        return name.startsWith(KEYBOARD) ? Optional.ofNullable(words.line(name)) : inForm(name);
    }

    /** A length in the form that a line asks for. */
    private Optional<String> inForm(String name) {
        int dot = name.lastIndexOf('.');
        Object value = dot > 0 ? values.get(name.substring(0, dot)) : null;
        String form = name.substring(dot + 1);
        if (value instanceof Collection<?> many && JOINED.contains(form)) {
            String each = name.substring(0, dot);
            return Optional.of(
                    words.listed(many.stream().map(one -> shown(each, one)).toList(), form));
        }
        if (value != null && form.equals("known")) {
            return Optional.of(words.known(String.valueOf(value), String.valueOf(values.get("standing"))));
        }
        if (value != null && form.equals("agreeing")) {
            String key = name.substring(0, dot);
            // Where sizes differ, each figure is a range, and no reader takes one range from another.
            return Agreeing.of(values, words)
                    .flatMap(all -> Agreeing.single(value).map(mm -> all.said(key, mm)))
                    .or(() -> Optional.of(shown(key, value)));
        }
        if (value != null && form.equals("misfit")) {
            return Misfit.said(values, words);
        }
        if (value instanceof Double mm && form.equals("tape")) {
            return Optional.of(
                    words.isLessThanTapeShows(mm) ? words.of("length.less") : shown(name.substring(0, dot), value));
        }
        if (value instanceof Double mm && form.equals("at-most")) {
            return Optional.of(
                    words.isLessThanTapeShows(mm)
                            ? words.of("length.less")
                            : words.of("length.at-most", Map.of("length", mm)));
        }
        if (value != null && STANDING.contains(form)) {
            return Standing.said(form, name.substring(0, dot), value, values, words);
        }
        if (value instanceof Span span) {
            return formed(form, span.low())
                    .flatMap(low -> formed(form, span.high()).map(high -> spanned(low, high)));
        }
        return value instanceof Double mm ? formed(form, mm) : Optional.empty();
    }

    private Optional<String> formed(String form, double mm) {
        return switch (form) {
            case "coarse" -> Optional.of(words.coarse(mm));
            case "exact" -> Optional.of(Words.number(mm, 6));
            case "part" ->
                Optional.of(Lengths.part(mm, words.unit())
                        .orElseGet(() -> words.of("length.about", Map.of("amount.signed", mm))));
            default -> Optional.empty();
        };
    }

    private String spanned(String low, String high) {
        return low.equals(high) ? low : words.of("length.span", Map.of("low", low, "high", high));
    }

    private String shown(String name, Object value) {
        if (value instanceof Double number) {
            if (name.endsWith(".percent") || name.endsWith(".degrees")) {
                return Words.number(number, 1);
            }
            if (name.endsWith(".number")) {
                return Words.number(number, 3);
            }
            if (name.equals("largest")) {
                return words.length(Lengths.within(number, words.unit()));
            }
            if (name.endsWith(".signed")) {
                return words.signed(number);
            }
            boolean little = words.isLessThanTapeShows(number) && Math.abs(number) >= Lengths.nothing(LengthUnit.MM);
            return little ? words.of("length.less") : words.length(number);
        }
        if (value instanceof Span span) {
            return spanned(shown(name, span.low()), shown(name, span.high()));
        }
        if (value instanceof Collection<?> many) {
            return many.stream().map(each -> shown(name, each)).collect(Collectors.joining(", "));
        }
        if (value instanceof Unreadable why) {
            return words.problem(why.code(), why.values());
        }
        if (value instanceof Enum<?> constant) {
            return constant(constant);
        }
        return String.valueOf(value);
    }

    /** By its name in the bundle, {@code draft-line.dart}; words that are typed on the command line are their own. */
    private String constant(Enum<?> constant) {
        String block = constant.getDeclaringClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
        String said = words.name(block, constant);
        return said.startsWith(block + ".")
                ? constant.name().toLowerCase(Locale.ROOT).replace('_', ' ')
                : said;
    }
}
