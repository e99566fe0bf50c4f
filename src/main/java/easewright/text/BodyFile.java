package easewright.text;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.FileTrouble;
import easewright.pattern.LevelKind;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A wearer's measurements in a plain text file that can be written by hand, one a line:
 *
 * <pre>
 * # taken 3 May, over a slip
 * name: Anna
 * unit: cm
 * Hip girth @hip: 98 (20 cm below waist)
 * waist: 29 1/2 in
 * Back waist length: 41
 * </pre>
 *
 * A line that names a girth known here needs no {@code @level}. Centimetres are taken where no unit is written.
 *
 * <p>A line {@code size: 12} begins the measurements of that size, up to the next such line. {@code source:} and
 * {@code standing:} say where a table of sizes comes from.
 */
public final class BodyFile {
    private static final int LARGEST_BYTES = 1 << 20;
    private static final double SMALLEST_MM = 20;
    private static final double LARGEST_MM = 4000;

    private static final Pattern LINE =
            Pattern.compile("(?<name>[^@:=]+?)\\s*(?:@\\s*(?<level>[^:=]+?)\\s*)?[:=]\\s*(?<value>[^(]*?)"
                    + "\\s*(?:\\((?<at>[^)]*)\\)?)?\\s*");

    private static final String GIRTH = " girth";

    private BodyFile() {}

    /**
     * The one wearer of a file.
     *
     * @throws Unreadable if the file cannot be read or a line is not understood, or it holds several sizes; nothing is
     *     guessed or left out
     */
    public static Body read(Path file) throws Unreadable {
        return one(readAll(file), file.toString());
    }

    private static Body one(Bodies all, String file) throws Unreadable {
        if (!all.bySize().isEmpty()) {
            throw new Unreadable(
                    "body-has-sizes",
                    Map.of("file", file, "known", List.copyOf(all.bySize().keySet())));
        }
        return all.one();
    }

    /**
     * The wearer of a file, or those of each size.
     *
     * @throws Unreadable if the file cannot be read or a line is not understood; nothing is guessed or left out
     */
    public static Bodies readAll(Path file) throws Unreadable {
        String shown = file.toString();
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new Unreadable("body-too-large", Map.of("file", shown));
            }
            String text = decoded(Files.readAllBytes(file));
            if (text.stripLeading().startsWith("<")) {
                throw new Unreadable("body-not-a-list", Map.of("file", shown));
            }
            return parseAll(text, shown);
        } catch (IOException e) {
            throw new Unreadable(FileTrouble.of(file, e).unread(), Map.of("file", shown));
        }
    }

    private static String decoded(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            // Plain editors on older systems save so; only the wearer's name and remarks can hold such letters.
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    /**
     * @param file what is read, for what is told of it
     * @throws Unreadable if a line is not understood
     */
    public static Body parse(String text, String file) throws Unreadable {
        return one(parseAll(text, file), file);
    }

    /** What has been read of one wearer. */
    private static final class Page {
        private String wearer = "";
        private final List<BodyMeasure> measures = new ArrayList<>();
        private final Set<String> levels = new HashSet<>();

        Body body() {
            return measures.isEmpty() ? Body.UNKNOWN : new Body(wearer, measures);
        }
    }

    /**
     * @param file what is read, for what is told of it
     * @throws Unreadable if a line is not understood
     */
    static Bodies parseAll(String text, String file) throws Unreadable {
        LengthUnit unit = LengthUnit.CM;
        Page page = new Page();
        Map<String, Page> pages = new LinkedHashMap<>();
        pages.put("", page);
        String source = "";
        String standing = "";
        int number = 0;
        for (String raw : text.replace("\ufeff", "").lines().toList()) {
            number++;
            String line = withoutRemark(raw);
            if (line.isEmpty()) {
                continue;
            }
            Matcher form = LINE.matcher(line);
            if (!form.matches() || form.group("value").isBlank()) {
                throw new Unreadable("body-line-form", Map.of("file", file, "line", number, "text", line));
            }
            String name = form.group("name");
            String value = form.group("value");
            if (name.equalsIgnoreCase("name") || name.equalsIgnoreCase("wearer")) {
                page.wearer = value;
            } else if (name.equalsIgnoreCase("source")) {
                source = line.substring(line.indexOf(':') + 1).strip();
            } else if (name.equalsIgnoreCase("standing")) {
                standing = value;
            } else if (name.equalsIgnoreCase("size")) {
                page = new Page();
                if (pages.put(value, page) != null) {
                    throw new Unreadable("body-size-twice", Map.of("file", file, "line", number, "size", value));
                }
            } else if (name.equalsIgnoreCase("unit") || name.equalsIgnoreCase("units")) {
                int at = number;
                unit = LengthUnit.named(value)
                        .orElseThrow(() ->
                                new Unreadable("body-unit-unknown", Map.of("file", file, "line", at, "text", value)));
            } else {
                BodyMeasure measure = measure(form, unit, file, number);
                if (!measure.level().isEmpty() && !page.levels.add(measure.level())) {
                    throw new Unreadable(
                            "body-line-twice", Map.of("file", file, "line", number, "level", measure.level()));
                }
                page.measures.add(measure);
            }
        }
        if (pages.values().stream().allMatch(p -> p.measures.isEmpty())) {
            throw new Unreadable("body-empty", Map.of("file", file));
        }
        Body one = pages.remove("").body();
        Map<String, Body> bySize = new LinkedHashMap<>();
        pages.forEach((size, each) -> bySize.put(size, each.body()));
        return new Bodies(one, bySize, source, standing);
    }

    private static String withoutRemark(String raw) {
        int hash = raw.indexOf('#');
        return (hash < 0 ? raw : raw.substring(0, hash)).strip();
    }

    private static BodyMeasure measure(Matcher form, LengthUnit unit, String file, int line) throws Unreadable {
        String name = form.group("name").strip();
        double mm;
        try {
            mm = Lengths.parse(form.group("value"), unit);
        } catch (Unreadable e) {
            throw new Unreadable("body-line-length", Map.of("file", file, "line", line, "reason", e));
        }
        if (!(mm >= SMALLEST_MM && mm <= LARGEST_MM)) {
            throw new Unreadable("body-line-range", Map.of("file", file, "line", line, "name", name, "amount", mm));
        }
        String takenAt = form.group("at") == null ? "" : form.group("at").strip();
        if (form.group("level") != null) {
            return new BodyMeasure(name, form.group("level").strip(), mm, takenAt);
        }
        Optional<LevelKind> known = knownKind(stem(name));
        if (known.isPresent()) {
            String level = known.get().word();
            // A level alone stands for the girth there.
            boolean bare = level.equalsIgnoreCase(name);
            return new BodyMeasure(bare ? Words.english(unit).girth(known.get(), level) : name, level, mm, takenAt);
        }
        return new BodyMeasure(name, isGirth(name) ? stem(name) : "", mm, takenAt);
    }

    /** The kind of level of a girth named as the levels are: by "hip", of "Hip girth". */
    private static Optional<LevelKind> knownKind(String stem) {
        // The standard writes "under bust" in two words.
        String joined = stem.replace(" ", "");
        return Stream.of(LevelKind.values())
                .filter(kind ->
                        kind != LevelKind.OTHER && kind.word().replace(" ", "").equals(joined))
                .findFirst();
    }

    /** What a measurement is a girth of: "neck base" of "Neck-base girth". */
    private static String stem(String name) {
        String word = plain(name);
        return isGirth(name) ? word.substring(0, word.length() - GIRTH.length()) : word;
    }

    private static boolean isGirth(String name) {
        return plain(name).endsWith(GIRTH);
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace('-', ' ').replaceAll("\\s+", " ");
    }
}
