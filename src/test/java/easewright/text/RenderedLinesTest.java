package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All lines as they are read, with values such as they mostly have, in centimetres and in inches. */
class RenderedLinesTest {
    /** What a person takes in at a glance beside the pieces: three lines of the sheet or so. */
    private static final int LONGEST = 160;

    /** On paper there is room, and what the law asks for is not to be cut short; the command line reads on. */
    private static final List<String> ON_PAPER = List.of("print.", "report.", "caution.");

    private static final List<String> ELSEWHERE = List.of("command.", "option.", "methods.", "easewright.", "main.");

    /** What goes wrong when a value comes into a line, by what it is called. */
    private static final Map<String, Pattern> FAULTS = faults();

    private static Map<String, Pattern> faults() {
        Map<String, Pattern> faults = new LinkedHashMap<>();
        faults.put("a value that is missing", Pattern.compile("\\{[a-z][A-Za-z.-]*\\}"));
        faults.put("two spaces", Pattern.compile("\\S[ \u00a0]{2,}\\S"));
        faults.put("two stops", Pattern.compile("[.!?][.;:,]|,,|;;"));
        faults.put("a space before a stop", Pattern.compile("\\s[,.;:!?](\\s|$)"));
        faults.put("nothing in brackets or quotes", Pattern.compile("\\(\\s*\\)|\"\"|\u201c\u201d"));
        faults.put("no whole inch before a fraction", Pattern.compile("\\b0[ \u00a0]\\d+/\\d"));
        faults.put("an inch with a decimal point", Pattern.compile("\\d\\.\\d+\u00a0in\\b"));
        faults.put("an inch by its sign", Pattern.compile("\\d[ \u00a0]?\u2033"));
        faults.put("in in", Pattern.compile("\\bin in\\b"));
        faults.put("two signs", Pattern.compile("[+\u2212-][+\u2212]"));
        faults.put("a before a vowel", Pattern.compile("\\b[Aa] ([aeio]|8|11\\b|18\\b)"));
        faults.put("an before none", Pattern.compile("\\b[Aa]n ([bcdfgjklmnpqrstvwyz]|[0-79])"));
        faults.put("a word twice", Pattern.compile("(?<!\\w)(the|a|an|of|to|in|is|at|on|by|and) \\1(?!\\w)"));
        return faults;
    }

    private static Words words(LengthUnit unit) {
        return Words.english(unit);
    }

    private static Map<String, String> rendered(LengthUnit unit, double scale) {
        Words words = words(unit);
        Map<String, String> all = new TreeMap<>();
        for (String key : new TreeSet<>(Collections.list(words.bundle().getKeys()))) {
            String line = words.bundle().getString(key);
            // Some lines hold what is to be typed into a file, in its own brackets.
            if (!line.contains("[{")) {
                Words hears = key.endsWith(".command") ? words.forCommands() : words;
                all.put(key, hears.of(key, TypicalValues.of(key, line, scale)));
            }
        }
        return all;
    }

    /** As they mostly are, a tenth of that, and the hundredfold: little moves and long edges. */
    private static Stream<Map<String, String>> allRenderings() {
        return Stream.of(LengthUnit.CM, LengthUnit.INCH)
                .flatMap(unit -> Stream.of(1.0, 0.1, 10.0).map(scale -> rendered(unit, scale)));
    }

    @Test
    void valuesComeIntoTheirLinesWithoutFaults() {
        List<String> faulty = new ArrayList<>();
        allRenderings().forEach(lines -> {
            assertThat(lines).hasSizeGreaterThan(1900);
            lines.forEach((key, line) -> FAULTS.forEach((fault, form) -> {
                if (form.matcher(line).find()) {
                    faulty.add(fault + ": " + key + "=" + line);
                }
            }));
        });
        assertThat(faulty).isEmpty();
    }

    /** The faults are faults: each is found in a line that has it. */
    @Test
    void everyFaultIsFound() {
        List<String> faulty = List.of(
                "by {amount} wider",
                "by  2 cm",
                "It cannot be read: no such file.. Check it.",
                "2 cm wider .",
                "edge \"\" of Front",
                "by 0 1/16\u00a0in",
                "by up to 0.01\u00a0in",
                "1/2\u2033 wider",
                "+1/2\u00a0in in in length",
                "by +\u22122 cm",
                "A ellipse on Front",
                "an skirt",
                "the the edge");
        assertThat(FAULTS).hasSameSizeAs(faulty);
        int at = 0;
        for (Map.Entry<String, Pattern> fault : FAULTS.entrySet()) {
            assertThat(faulty.get(at++)).as(fault.getKey()).containsPattern(fault.getValue());
        }
    }

    @Test
    void whatTheWindowShowsIsShort() {
        List<String> tooLong = new ArrayList<>();
        for (LengthUnit unit : List.of(LengthUnit.CM, LengthUnit.INCH)) {
            rendered(unit, 1).forEach((key, line) -> {
                boolean seen = !key.endsWith(".command")
                        && Stream.concat(ON_PAPER.stream(), ELSEWHERE.stream()).noneMatch(key::startsWith)
                        && SeenLines.inTheWindow(key);
                if (seen && line.length() > LONGEST) {
                    tooLong.add(line.length() + " " + key + "=" + line);
                }
            });
        }
        assertThat(tooLong).as("lines of more than %d signs", LONGEST).isEmpty();
    }

    /** An amount that someone typed is told as it is or with "about": {@code .part} sees to that. */
    @Test
    void amountsThatWereTypedAreToldExactlyOrWithAbout() {
        assertThat(Collections.list(words(LengthUnit.CM).bundle().getKeys()))
                .filteredOn(key -> key.startsWith("editor.") || key.startsWith("change."))
                .filteredOn(key -> !key.startsWith("editor.here.largest"))
                .allSatisfy(key -> assertThat(words(LengthUnit.CM).bundle().getString(key))
                        .as(key)
                        .doesNotContain("{amount.signed}"));
        Map<String, Object> typed = Map.of("level", "hip", "amount.signed", 20.0);
        assertThat(words(LengthUnit.INCH).of("editor.table.amount", typed)).isEqualTo("hip about +13/16\u00a0in");
        assertThat(words(LengthUnit.CM).of("editor.table.amount", typed)).isEqualTo("hip +2\u00a0cm");
    }

    /** A line of several sentences ends as a sentence does, unless it ends with the key that does the same. */
    @Test
    void severalSentencesAllEnd() {
        Pattern several = Pattern.compile("[.?] [A-Z\u201c]");
        Pattern ends = Pattern.compile("([.?!:\u2026]|[.?!]\u201d|(\\. |: )(Alt|Ctrl|F\\d|Escape|Enter|[A-Z]$)[^.]*)$");
        rendered(LengthUnit.CM, 1).forEach((key, line) -> {
            boolean open = words(LengthUnit.CM).bundle().getString(key).endsWith("}");
            if (key.startsWith("editor.") && several.matcher(line).find() && !open) {
                assertThat(line).as(key).containsPattern(ends);
            }
        });
    }

    /** Ease is room for the body. The extra length of one side of a seam is eased in. */
    @Test
    void whatIsEasedInIsNotCalledEase() {
        Pattern room = Pattern.compile("(?i)(?<!to )\\bease\\b(?! in\\b)");
        assertThat(Collections.list(words(LengthUnit.CM).bundle().getKeys()))
                .filteredOn(key -> key.matches("(finding\\.mate-|editor\\.seams?\\.|reason\\.(near|same|about)-length"
                        + "|(report\\.column|sheet)\\.meant|editor\\.effect\\.ease-drifted).*"))
                .hasSizeGreaterThan(30)
                .allSatisfy(key -> assertThat(words(LengthUnit.CM)
                                .bundle()
                                .getString(key)
                                .replaceAll("\\{[^}]*\\}", "")
                                .replace('\u00a0', ' '))
                        .as(key)
                        .doesNotContainPattern(room));
    }
}
