package easewright.ease;

import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables in use, all of them editable data. */
public final class EaseTables {
    private static final String INDEX = "tables.txt";

    private final List<EaseTable> tables;
    private final List<Minimum> minimums;
    private final List<StretchClass> knitClasses;
    private final Optional<StretchMargin> margin;
    private final Optional<Garment> garment;

    /** Every word for a garment, of these tables and of those left out as being for another garment. */
    private final List<String> garments;

    EaseTables(
            List<EaseTable> tables,
            List<Minimum> minimums,
            List<StretchClass> knitClasses,
            Optional<StretchMargin> margin) {
        this(tables, minimums, knitClasses, margin, Optional.empty(), words(tables, minimums));
    }

    private EaseTables(
            List<EaseTable> tables,
            List<Minimum> minimums,
            List<StretchClass> knitClasses,
            Optional<StretchMargin> margin,
            Optional<Garment> garment,
            List<String> garments) {
        this.garment = garment;
        this.garments = List.copyOf(garments);
        this.tables = List.copyOf(tables);
        this.minimums = List.copyOf(minimums);
        this.knitClasses = List.copyOf(knitClasses);
        this.margin = margin;
    }

    /** Read once, on first use. */
    private static final class Standard {
        static final EaseTables TABLES = readAll();
    }

    /** The tables that come with the program: the files of this package that {@code tables.txt} lists. */
    public static EaseTables standard() {
        return Standard.TABLES;
    }

    /** No table at all. */
    public static EaseTables none() {
        return new EaseTables(List.of(), List.of(), List.of(), Optional.empty());
    }

    private static EaseTables readAll() {
        EaseTables all = none();
        try (BufferedReader index = new BufferedReader(open(INDEX))) {
            for (String name = index.readLine(); name != null; name = index.readLine()) {
                if (!name.isBlank() && !name.startsWith("#")) {
                    all = all.with(read(open(name.strip()), name.strip()));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (EaseTableProblem e) {
            throw new IllegalStateException("A table that came with the program is damaged: " + e.getMessage(), e);
        }
        return all;
    }

    private static Reader open(String name) throws IOException {
        InputStream in = EaseTables.class.getResourceAsStream(name);
        if (in == null) {
            throw new IOException("Table file is missing: " + name);
        }
        return new InputStreamReader(in, StandardCharsets.UTF_8);
    }

    /**
     * Reads a table file of the user's own and closes the reader; its form is that of the files that come with the
     * program (docs/ease-tables.md).
     *
     * @param name what to call the file in messages
     * @throws EaseTableProblem if a line is not understood or something needed is missing
     */
    public static EaseTables read(Reader reader, String name) throws EaseTableProblem {
        return TableReader.read(reader, name);
    }

    /** These tables and more; a table of the same id, and a stretch margin, replace the one held here. */
    public EaseTables with(EaseTables more) {
        List<EaseTable> joined = new ArrayList<>(tables);
        for (EaseTable added : more.tables) {
            joined.removeIf(old -> old.id().equals(added.id()));
            joined.add(added);
        }
        List<Minimum> least = joined(minimums, more.minimums);
        return new EaseTables(
                joined,
                least,
                joined(knitClasses, more.knitClasses),
                more.margin.isPresent() ? more.margin : margin,
                more.garment.isPresent() ? more.garment : garment,
                words(joined, least));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** Only what holds for a garment: its own tables and those for all garments. */
    public EaseTables forGarment(Garment worn) {
        return new EaseTables(
                tables.stream().filter(t -> worn.fits(t.garment())).toList(),
                minimums.stream().filter(m -> worn.fits(m.garment())).toList(),
                knitClasses,
                margin,
                Optional.of(worn),
                garments);
    }

    /** These tables if they were chosen for a garment; else those for what the pattern's marks show. */
    public EaseTables fitting(Pattern pattern) {
        return garment.isPresent() ? this : forGarment(Garment.of(pattern));
    }

    /** The garment these tables were chosen for; empty where they are all there are. */
    public Optional<Garment> garment() {
        return garment;
    }

    /** Every word that the tables have for a garment, in their order; also those of tables left out as for another. */
    public List<String> garments() {
        return garments;
    }

    /** Whether some table, be it left out here or not, has the word for a garment, or it stands for all of them. */
    boolean know(String garmentWord) {
        return Garment.isAny(garmentWord) || garments.contains(garmentWord);
    }

    private static List<String> words(List<EaseTable> tables, List<Minimum> minimums) {
        return Stream.concat(
                        tables.stream().map(EaseTable::garment),
                        minimums.stream().map(Minimum::garment))
                .flatMap(garments -> Garment.named(garments).words().stream())
                .filter(word -> !Garment.isAny(word))
                .distinct()
                .toList();
    }

    public List<EaseTable> tables() {
        return tables;
    }

    public List<Minimum> minimums() {
        return minimums;
    }

    public List<StretchClass> knitClasses() {
        return knitClasses;
    }

    public Optional<StretchMargin> margin() {
        return margin;
    }

    /** The class tables for a level on a knit or a woven. */
    public List<EaseTable> at(LevelKind level, boolean knit) {
        List<EaseTable> found = new ArrayList<>();
        for (EaseTable table : tables) {
            if (table.level() == level && table.knit() == knit) {
                found.add(table);
            }
        }
        return found;
    }

    /** The least wearing ease at a level by every source: by the kind of level, or by the name of the user's own. */
    public List<Minimum> minimumsAt(Level level) {
        LevelKind kind = level.kind();
        String region = kind == LevelKind.OTHER ? level.name().toLowerCase(Locale.ROOT) : kind.word();
        List<Minimum> found = new ArrayList<>();
        for (Minimum minimum : minimums) {
            if (minimum.region().equals(region)) {
                found.add(minimum);
            }
        }
        return found;
    }
}
