package easewright.text;

import easewright.pattern.Finding;
import easewright.pattern.LevelKind;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Sentences from the bundle, with values filled in by name. A value of type {@code Double} is a length in mm and is
 * shown in the user's unit, unless its key ends in {@code .percent}, {@code .degrees} or {@code .number}; lists are
 * shown with commas; a key ending in {@code .signed} shows a length with its plus or minus; {@code largest} is a limit,
 * and rounded towards 0; of a {@link Span} both ends are shown, once if they look alike. A line may ask for a value in a form of its own, {@code {amount.part}} for the value
 * {@code amount}: {@code .coarse} to the millimetre, {@code .part} as one of several that must add up,
 * {@code .agreeing} so that two lengths and what they differ by do not contradict each other, {@code .then} and
 * {@code .now} that a seam fitted or fits or how much it is off,
 * {@code .exact} a plain number to be typed again, {@code .and} a list whose last has an "and" before it.
 *
 * <p>Some lines are worded otherwise for who types commands ({@code <key>.command}) or who sits before a Mac
 * ({@code <key>.mac}); a line by itself is for the window and for paper. The name of a key on the keyboard is a line
 * too, which any other may ask for: {@code {key.ctrl}}.
 */
public final class Words {
    private static final String KEYBOARD = "key.";
    private static final String COMMAND = ".command";

    private final Lines bundle;
    private final LengthUnit unit;

    /** What a key ends in if its line has a wording of its own for this listener; empty for who sees the window. */
    private final String listener;

    /** Read once, on first use; by itself rather than by search, since there is one language so far. */
    private static final class English {
        static final Lines BUNDLE = new Lines("messages.properties");
    }

    /** What is looked for in lines that have values; most have none, and none waits for these. */
    private static final class Sought {
        static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z][A-Za-z0-9_.-]*)\\}");

        private static final String NUMBER = "\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?";

        static final Pattern LENGTH =
                Pattern.compile("\\b(?<from>" + NUMBER + ")(?: to (?<to>" + NUMBER + "))? (?<unit>mm|cm|in)\\b");
    }

    private Words(Lines bundle, LengthUnit unit, String listener) {
        this.bundle = bundle;
        this.unit = unit;
        this.listener = listener;
    }

    /** For who sees the window, or paper. */
    public static Words english(LengthUnit unit) {
        return new Words(English.BUNDLE, unit, "");
    }

    /** For who types commands: what helps is an option, not a button. */
    public Words forCommands() {
        return new Words(bundle, unit, COMMAND);
    }

    /** For who sees the window on a Mac, whose keys have other names. */
    public Words onMac() {
        return new Words(bundle, unit, ".mac");
    }

    /** All lines as they are. */
    public ResourceBundle bundle() {
        return bundle;
    }

    public LengthUnit unit() {
        return unit;
    }

    /** The sentence of a key without values. */
    public String of(String key) {
        return of(key, Map.of());
    }

    /** The sentence of a key; a key that has none is shown as it is with its values, so that nothing is lost. */
    public String of(String key, Map<String, ?> values) {
        String line = line(key);
        if (line == null) {
            return values.isEmpty() ? key : key + " " + shown(values);
        }
        if (line.indexOf('{') < 0) {
            return line;
        }
        Matcher place = Sought.PLACEHOLDER.matcher(line);
        StringBuilder out = new StringBuilder();
        while (place.find()) {
            String name = place.group(1);
            Object value = values.get(name);
            String text = value == null ? asked(name, values).orElse(place.group()) : shown(name, value);
            place.appendReplacement(out, Matcher.quoteReplacement(text));
        }
        return place.appendTail(out).toString();
    }

    /** The line of a key in the listener's own wording, if it has one; null without any. */
    private String line(String key) {
        String own = listener.isEmpty() ? null : bundle.line(key + listener);
        String line = own == null ? bundle.line(key) : own;
        return line == null || listener.equals(COMMAND) ? line : printed(line);
    }

    /** With the quotes and apostrophes of printed matter, which not every terminal has, and which nobody types. */
    private static String printed(String line) {
        if (line.indexOf('"') < 0 && line.indexOf('\'') < 0) {
            return line;
        }
        StringBuilder out = new StringBuilder(line.replace('\'', '\u2019'));
        for (int at = 0; at < out.length(); at++) {
            if (out.charAt(at) == '"') {
                boolean opens = at == 0 || " (".indexOf(out.charAt(at - 1)) >= 0;
                out.setCharAt(at, opens ? '\u201c' : '\u201d');
            }
        }
        return out.toString();
    }

    /** The name of a key on the keyboard, or a length in the form that a line asks for. */
    private Optional<String> asked(String name, Map<String, ?> values) {
        return name.startsWith(KEYBOARD) ? Optional.ofNullable(line(name)) : inForm(name, values);
    }

    /** A length in the form that a line asks for. */
    private Optional<String> inForm(String name, Map<String, ?> values) {
        int dot = name.lastIndexOf('.');
        Object value = dot > 0 ? values.get(name.substring(0, dot)) : null;
        String form = name.substring(dot + 1);
        if (value instanceof Collection<?> many && form.equals("and")) {
            String each = name.substring(0, dot);
            return Optional.of(listed(many.stream().map(one -> shown(each, one)).toList()));
        }
        if (value != null && form.equals("agreeing")) {
            String key = name.substring(0, dot);
            // Where sizes differ, each figure is a range, and no reader takes one range from another.
            return Agreeing.of(values, unit)
                    .flatMap(all -> Agreeing.single(value).map(mm -> all.said(key, mm)))
                    .or(() -> Optional.of(shown(key, value)));
        }
        if (value != null && (form.equals("then") || form.equals("now"))) {
            return Optional.of(standing(form, name.substring(0, dot), value, values));
        }
        if (value instanceof Span span) {
            return formed(form, span.low())
                    .flatMap(low -> formed(form, span.high()).map(high -> spanned(low, high)));
        }
        return value instanceof Double mm ? formed(form, mm) : Optional.empty();
    }

    /** That two lengths fitted or fit, or by how much they were or are off: nobody reads "off by 0 cm" with profit. */
    private String standing(String form, String key, Object value, Map<String, ?> values) {
        if (value instanceof Double mm && Math.abs(mm) < Lengths.nothing(unit)) {
            boolean fits = Math.abs(mm) < Lengths.nothing(LengthUnit.MM);
            return of("standing." + form + (fits ? ".fits" : ".little"));
        }
        String off = Agreeing.single(value)
                .flatMap(mm -> Agreeing.of(values, unit).map(all -> all.said(key, mm)))
                .orElseGet(() -> shown(key, value));
        return of("standing." + form + ".off", Map.of("off", off));
    }

    private Optional<String> formed(String form, double mm) {
        return switch (form) {
            case "coarse" -> Optional.of(coarse(mm));
            case "exact" -> Optional.of(number(mm, 6));
            case "part" -> Optional.of(Lengths.part(mm, unit).orElse(of("length.about", Map.of("amount.signed", mm))));
            default -> Optional.empty();
        };
    }

    /** One after the other, the last with an "and". */
    public String listed(List<String> each) {
        int last = each.size() - 1;
        return last < 1
                ? String.join("", each)
                : of("list.and", Map.of("others", String.join(", ", each.subList(0, last)), "last", each.get(last)));
    }

    private String spanned(String low, String high) {
        return low.equals(high) ? low : of("length.span", Map.of("low", low, "high", high));
    }

    /** What something known by a constant is called: {@code level.high-hip} for {@code HIGH_HIP} of the levels. */
    public String name(String block, Enum<?> constant) {
        return of(block + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** What the girth of the body at a level is called; a level of the user's own gives it its name. */
    public String girth(LevelKind kind, String level) {
        return of("girth." + kind.word().replace(' ', '-'), Map.of("level", level));
    }

    public String of(Finding finding) {
        return of("finding." + finding.code(), withPiece(finding));
    }

    /** The words of a problem that some room reported by code. */
    public String problem(String code, Map<String, ?> values) {
        return of("problem." + code, values);
    }

    public String length(double mm) {
        return Lengths.format(mm, unit);
    }

    /** To the millimetre or 1/16 in: for printed figures, which were rounded before they were converted. */
    public String coarse(double mm) {
        return Lengths.coarse(mm, unit);
    }

    /** A text from elsewhere with its lengths put into the unit, such as "3 in below the waist"; as coarse as they were. */
    public String retold(String text) {
        Matcher length = Sought.LENGTH.matcher(text);
        StringBuilder out = new StringBuilder();
        while (length.find()) {
            String from = retold(length.group("from"), length.group("unit"));
            String to = length.group("to") == null ? "" : " to " + retold(length.group("to"), length.group("unit"));
            length.appendReplacement(out, Matcher.quoteReplacement(from + to));
        }
        return length.appendTail(out).toString();
    }

    private String retold(String number, String inUnit) {
        try {
            return coarse(Lengths.parse(number + " " + inUnit, unit));
        } catch (Unreadable unreadable) {
            return number + " " + inUnit;
        }
    }

    /** The unit in words, for what stands above a table. */
    public String unitName() {
        return of("unit." + unit.name().toLowerCase(Locale.ROOT));
    }

    /** The length that is shown for this one, mm: rounded as it is when written. */
    public double shown(double mm) {
        return Lengths.shown(mm, unit);
    }

    /** Without the unit, for a column that has it at its head. */
    public String figure(double mm) {
        return Lengths.figure(mm, unit);
    }

    /** The same with its plus or minus. */
    public String signedFigure(double mm) {
        return Lengths.signedFigure(mm, unit);
    }

    public String signed(double mm) {
        return Lengths.signed(mm, unit);
    }

    private static Map<String, Object> withPiece(Finding finding) {
        Map<String, Object> values = new TreeMap<>(finding.values());
        values.putIfAbsent("piece", finding.piece());
        return values;
    }

    private String shown(Map<String, ?> values) {
        return new TreeMap<>(values)
                .entrySet().stream()
                        .map(e -> e.getKey() + "=" + shown(e.getKey(), e.getValue()))
                        .collect(Collectors.joining(", ", "(", ")"));
    }

    private String shown(String name, Object value) {
        if (value instanceof Double number) {
            if (name.endsWith(".percent") || name.endsWith(".degrees")) {
                return number(number, 1);
            }
            if (name.endsWith(".number")) {
                return number(number, 3);
            }
            if (name.equals("largest")) {
                return length(Lengths.within(number, unit));
            }
            return name.endsWith(".signed") ? signed(number) : length(number);
        }
        if (value instanceof Span span) {
            return spanned(shown(name, span.low()), shown(name, span.high()));
        }
        if (value instanceof Collection<?> many) {
            return many.stream().map(each -> shown(name, each)).collect(Collectors.joining(", "));
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
        String said = name(block, constant);
        return said.startsWith(block + ".")
                ? constant.name().toLowerCase(Locale.ROOT).replace('_', ' ')
                : said;
    }

    /** A plain number with a real minus sign, rounded. */
    public static String number(double value, int places) {
        if (!Double.isFinite(value)) {
            return "?";
        }
        return Lengths.decimal(value, places).replace('-', '\u2212');
    }
}
