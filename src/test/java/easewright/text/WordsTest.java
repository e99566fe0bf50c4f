package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.BodyMeasure;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LevelKind;
import easewright.pattern.Severity;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordsTest {
    private static final Path BUNDLE = Path.of("src/main/resources/easewright/text/messages.properties");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9]*(?:-[a-z0-9]+)*)\"");
    /** Lines whose count is more than one wherever they are shown. */
    private static final Set<String> NEVER_ONE = Set.of(
            "command.places",
            "editor.follow.some",
            "editor.here.title.many",
            "editor.scale.stated",
            "editor.scale.usual",
            "editor.scale.usual.likely",
            "finding.inner-lines-many",
            "finding.marks-several",
            "problem.print-too-many-sheets");

    /** Where a code is first given: to a finding or a problem, directly or through one of the rooms' own factories. */
    private static final Pattern GIVEN = Pattern.compile(
            "\\b(?:(?:new )?(?:Finding|Unreadable|Unfit|SvgProblem|Refusal|Trouble|Misuse"
                    + "|EaseTableProblem|PrintProblem)(?:\\.of)?|about|below|problem|notes\\.add)\\(\\s*\"([a-z][a-z0-9-]*)\"");

    @Test
    void fillsByNameInTheUsersUnit() {
        Words inches = Words.english(LengthUnit.INCH);
        assertThat(inches.problem(
                        "body-line-range", Map.of("file", "me.txt", "line", 3, "name", "Hip girth", "amount", 12.7)))
                .contains("Line 3 ")
                .contains("Hip girth of 1/2\u00a0in");
    }

    @Test
    void keepsAnUnknownCodeVisibleWithItsValues() {
        Finding finding = Finding.of("never-said", Severity.NOTE, "front")
                .with("slope.degrees", 12.34)
                .with("names", List.of("hip", "waist"))
                .with("cloth.percent", -5.0);
        assertThat(Words.english(LengthUnit.MM).of(finding))
                .isEqualTo("finding.never-said (cloth.percent=\u22125, names=hip, waist, piece=front,"
                        + " slope.degrees=12.3)");
    }

    /** A figure that was read where another quotes it is not a garment that was worn before. */
    @Test
    void howWellAFigureIsKnownIsToldInPlainWords() {
        Words words = Words.english(LengthUnit.CM);
        Map<String, String> source = Map.of("source", "Threads 221", "standing", "second-hand");
        assertThat(words.of("editor.where.source", source)).isEqualTo("After: Threads 221; as quoted elsewhere.");
        assertThat(words.known("Anna", "published")).as("read there").isEqualTo("Anna");
        assertThat(words.known("Anna", "from memory")).isEqualTo("Anna; from memory");
        assertThat(words.known("Rule of thumb", "common practice")).isEqualTo("Rule of thumb; common practice");
    }

    /** Whatever a fault is told with, nobody is shown the name of a value in braces. */
    @Test
    void noFaultShowsAPlaceholder() throws IOException {
        Properties lines = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE)) {
            lines.load(reader);
        }
        Words words = Words.english(LengthUnit.CM);
        for (String key : lines.stringPropertyNames()) {
            if (key.startsWith("problem.") || key.startsWith("finding.")) {
                for (Map<String, Object> given : List.<Map<String, Object>>of(
                        Map.of(),
                        Map.of("piece", "Back"),
                        Map.of("piece", "Back", "edge", "side", "dart", "d", "level", "hip"))) {
                    assertThat(words.of(key, given))
                            .as(key)
                            .doesNotContainPattern("\\{[a-z][a-z.-]*\\}")
                            .isNotBlank();
                }
            }
        }
        assertThat(words.problem("dart-point-left-out", Map.of("piece", "Back", "dart", "d")))
                .startsWith("The point of dart")
                .endsWith("or take the width out of the dart.");
        assertThat(words.problem("dart-point-left-out", Map.of("piece", "Back", "dart", "d", "largest", 10.0)))
                .endsWith("The largest amount that works here is 1\u00a0cm.");
    }

    /** The second of two would be shown in both places, without a word. */
    @Test
    void noKeyStandsTwice() throws IOException {
        List<String> keys = Files.readAllLines(BUNDLE).stream()
                .filter(line -> line.matches("[a-z][^ =]*=.*"))
                .map(line -> line.substring(0, line.indexOf('=')))
                .toList();
        assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(500);
    }

    @Test
    void everyCodeInTheSourcesHasALineAndEveryLineACode() throws IOException {
        Properties lines = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE)) {
            lines.load(reader);
        }
        Set<String> literals = new TreeSet<>();
        Set<String> missing = new TreeSet<>();
        for (Path source : sources()) {
            String text = Files.readString(source);
            LITERAL.matcher(text).results().forEach(m -> literals.add(m.group(1)));
            Matcher given = GIVEN.matcher(text);
            while (given.find()) {
                String code = given.group(1);
                if (!lines.containsKey("finding." + code) && !lines.containsKey("problem." + code)) {
                    missing.add(code + " of " + source.getFileName());
                }
            }
        }
        assertThat(missing).as("codes without a line in the bundle").isEmpty();
        Set<String> unused = new TreeSet<>();
        for (String key : lines.stringPropertyNames()) {
            String code = key.substring(key.indexOf('.') + 1).replaceFirst("\\.(command|why)$", "");
            if (key.matches("(finding|problem)\\..+") && !literals.contains(code)) {
                unused.add(key);
            }
        }
        assertThat(unused).as("lines without a code in the sources").isEmpty();
    }

    /** "1 sheets": a count stands after its noun, or the noun has a line of its own for one. */
    @Test
    void noLineCountsOneOfMany() throws IOException {
        Properties lines = new Properties();
        try (Reader reader = Files.newBufferedReader(BUNDLE)) {
            lines.load(reader);
        }
        Pattern counted = Pattern.compile("\\{(count|times|pages|pieces)\\} [a-z]+s\\b");
        assertThat(lines.stringPropertyNames())
                .filteredOn(key -> counted.matcher(lines.getProperty(key)).find())
                .allSatisfy(key -> assertThat(NEVER_ONE.contains(key) || lines.containsKey(key + ".one"))
                        .as(key + "=" + lines.getProperty(key))
                        .isTrue());
    }

    /** What is known by a constant has its name in the bundle, and a girth named by its level alone gets that name. */
    @Test
    void levelsGirthsAndUsesOfEdgesAreNamedByTheBundle() throws Unreadable {
        Words words = Words.english(LengthUnit.CM);
        for (LevelKind kind : LevelKind.values()) {
            assertThat(words.girth(kind, "yoke")).endsWith(" girth").doesNotContain("{", "girth.");
            if (kind != LevelKind.OTHER) {
                assertThat(words.name("level", kind)).doesNotContain("level.");
                assertThat(BodyFile.parse(kind.word() + ": 50", "me.txt").measures())
                        .singleElement()
                        .isEqualTo(new BodyMeasure(words.girth(kind, ""), kind.word(), 500, ""));
            }
        }
        for (EdgeRole role : EdgeRole.values()) {
            assertThat(words.name("role", role)).doesNotContain("role.");
        }
        assertThat(words.girth(LevelKind.OTHER, "yoke")).isEqualTo("yoke girth");
    }

    private static List<Path> sources() {
        try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
            return all.filter(p -> p.toString().endsWith(".java")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
