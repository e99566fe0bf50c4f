package easewright.ease;

import easewright.pattern.LevelKind;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Reads one table file. A file is lines of {@code key: value}; {@code #} starts a comment; rows put their columns
 * between bars and take the unit, source and standing in force (a row may end in a standing of its own):
 *
 * <pre>
 * id: my-blouses
 * garment: blouse
 * level: bust
 * cloth: woven            (or knit)
 * unit: in                (or cm, mm, percent)
 * source: my own notebook, 2024
 * standing: common practice
 * band: fitted | 3 | 4
 * band: loose | 4 1/8 | -
 * minimum: bust | 2 | 2 1/2 | with darts | second-hand
 * knit-class: stable | 18 | -
 * stretch-at-rest: 50
 * </pre>
 */
final class TableReader {
    private static final List<String> SETTINGS =
            List.of("id", "garment", "level", "cloth", "unit", "source", "standing");

    /** The kinds of level that tables are for. */
    private static final List<String> LEVELS = Stream.of(LevelKind.values())
            .filter(k -> k != LevelKind.OTHER)
            .map(LevelKind::word)
            .toList();

    private static final List<String> STANDINGS = List.of("published", "second-hand", "from memory", "common practice");

    /** Settings that can only be one of some words. */
    private static final Map<String, List<String>> CHOICES = Map.of(
            "level",
            LEVELS,
            "cloth",
            List.of("woven", "knit"),
            "unit",
            List.of("mm", "cm", "in", "percent"),
            "standing",
            STANDINGS);

    private final String name;
    private final Map<String, String> settings = new HashMap<>();
    private final List<Band> bands = new ArrayList<>();
    private final List<Minimum> minimums = new ArrayList<>();
    private final List<StretchClass> classes = new ArrayList<>();
    private Optional<StretchMargin> margin = Optional.empty();

    /** The number of the line being read. */
    private int line;

    private TableReader(String name) {
        this.name = name;
    }

    static EaseTables read(Reader reader, String name) throws EaseTableProblem {
        return new TableReader(name).all(reader);
    }

    private EaseTables all(Reader reader) throws EaseTableProblem {
        try (BufferedReader lines = new BufferedReader(reader)) {
            for (String read = lines.readLine(); read != null; read = lines.readLine()) {
                line++;
                String text = read.strip();
                if (!text.isEmpty() && !text.startsWith("#")) {
                    take(text);
                }
            }
        } catch (IOException e) {
            throw problem("file-unreadable", Map.of("file", name), e);
        }
        List<EaseTable> tables = new ArrayList<>();
        if (!bands.isEmpty()) {
            tables.add(table());
        }
        if (tables.isEmpty() && minimums.isEmpty() && classes.isEmpty() && margin.isEmpty()) {
            throw problem("ease-table-empty", Map.of("file", name), null);
        }
        return new EaseTables(tables, minimums, classes, margin);
    }

    private void take(String text) throws EaseTableProblem {
        int colon = text.indexOf(':');
        String key = colon < 0 ? "" : text.substring(0, colon).strip().toLowerCase(Locale.ROOT);
        String value = text.substring(colon + 1).strip();
        if (SETTINGS.contains(key)) {
            settings.put(key, CHOICES.containsKey(key) ? choice(key, value) : value);
            return;
        }
        try {
            row(key, value.split("\\|", -1));
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            throw problem("ease-table-line", Map.of("file", name, "line", (long) line, "text", text), e);
        }
    }

    private void row(String key, String[] columns) throws EaseTableProblem {
        switch (key) {
            case "band":
                Band band = new Band(
                        columns[0].strip(), Figures.read(columns[1], unit()), Figures.readOptional(columns[2], unit()));
                requireRising(band);
                bands.add(band);
                break;
            case "minimum":
                minimums.add(new Minimum(
                        columns[0].strip().toLowerCase(Locale.ROOT),
                        Figures.read(columns[1], unit()),
                        Figures.readOptional(columns[2], unit()),
                        settings.getOrDefault("garment", "any garment"),
                        columns.length > 3 ? columns[3].strip() : "",
                        setting("source"),
                        columns.length > 4 ? choice("standing", columns[4].strip()) : standing()));
                break;
            case "knit-class":
                classes.add(new StretchClass(
                        columns[0].strip(),
                        Figures.readOptional(columns[1], 1),
                        columns.length > 2 ? Figures.readOptional(columns[2], 1) : OptionalDouble.empty(),
                        setting("source"),
                        standing()));
                break;
            case "stretch-at-rest":
                margin = Optional.of(new StretchMargin(Figures.read(columns[0], 1), setting("source"), standing()));
                break;
            default:
                throw new IllegalArgumentException("Not a row: " + key);
        }
    }

    private EaseTable table() throws EaseTableProblem {
        return new EaseTable(
                setting("id"),
                setting("garment"),
                level(),
                bands,
                setting("source"),
                standing(),
                settings.getOrDefault("cloth", "woven").equals("knit"),
                setting("unit").equals("percent"));
    }

    private void requireRising(Band band) throws EaseTableProblem {
        Optional<Band> before = bands.isEmpty() ? Optional.empty() : Optional.of(bands.get(bands.size() - 1));
        String code = "";
        if (band.to().isPresent() && band.to().getAsDouble() < band.from()) {
            code = "ease-table-band-ends";
        } else if (before.isPresent() && before.get().to().isEmpty()) {
            code = "ease-table-band-open";
        } else if (before.isPresent() && band.from() < before.get().to().getAsDouble()) {
            code = "ease-table-band-overlap";
        }
        if (!code.isEmpty()) {
            String last = before.map(Band::word).orElse("");
            throw problem(code, Map.of("file", name, "line", (long) line, "class", band.word(), "before", last), null);
        }
    }

    private LevelKind level() throws EaseTableProblem {
        String text = setting("level");
        return Stream.of(LevelKind.values())
                .filter(kind -> kind.word().equals(text))
                .findFirst()
                .orElseThrow();
    }

    private String standing() throws EaseTableProblem {
        return setting("standing");
    }

    /** The word meant, for a setting that can only be one of some. */
    private String choice(String setting, String text) throws EaseTableProblem {
        String word = text.toLowerCase(Locale.ROOT);
        List<String> known = CHOICES.get(setting);
        if (!known.contains(word)) {
            Map<String, Object> values =
                    Map.of("file", name, "line", (long) line, "setting", setting, "text", text, "known", known);
            throw problem("ease-table-word", values, null);
        }
        return word;
    }

    private double unit() throws EaseTableProblem {
        return Figures.unit(setting("unit"));
    }

    private String setting(String key) throws EaseTableProblem {
        String value = settings.getOrDefault(key, "");
        if (value.isEmpty()) {
            throw problem("ease-table-setting", Map.of("file", name, "setting", key), null);
        }
        return value;
    }

    private static EaseTableProblem problem(String code, Map<String, Object> values, Throwable cause) {
        EaseTableProblem problem = new EaseTableProblem(code, values);
        problem.initCause(cause);
        return problem;
    }
}
