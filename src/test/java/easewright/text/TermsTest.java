package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** One thing has one name, and all lines are set alike (docs/decisions/0126-one-name-for-one-thing.md). */
class TermsTest {
    /** What is not said, and what is said in its place. */
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("(?<!text )editor", "window"),
            Map.entry("app(lication)?|screen", "window or program"),
            Map.entry("vector (editor|program)|graphics program", "drawing program"),
            Map.entry("bell(y|ies)|abdomen|stomach", "tummy"),
            Map.entry("bum|bottom|buttocks", "seat"),
            Map.entry("muslin|mock-?up", "toile"),
            Map.entry("fabrics?|material", "cloth"),
            Map.entry("centers?", "centre"),
            Map.entry("gr[ae]y", "quiet"),
            Map.entry("grain line", "grainline"),
            Map.entry("(sewing|stitch|sewn) line|seam ?line", "stitching line"),
            Map.entry("cut line", "cutting line"),
            Map.entry("mates?", "seam"),
            Map.entry("further", "farther, or more"),
            Map.entry("shall", "is to, or should"),
            Map.entry("known line|line that you know|line of known length", "line whose length you know"),
            Map.entry("repeated", "made again"),
            Map.entry("cancel(led)?|abort(ed)?|give up", "stop"),
            Map.entry("invalid|illegal", "cannot be right, or is not understood"),
            Map.entry("user", "you"),
            Map.entry("mouths?", "the open end of a dart, or its legs"),
            Map.entry("(units?|points?) (of the drawing|to the inch)", "dots to the inch, or in millimetres"),
            Map.entry("second-?hand", "quoted elsewhere"),
            Map.entry("judged as|judged by (its|the) marks", "garment: ..., going by the marks"),
            Map.entry("stands? in (Changes|Marks|Notes|True)", "the page ... lists it"),
            Map.entry("do that too|make it so|match it", "try it, or make it fit"),
            Map.entry("tables? of ease", "ease table"),
            Map.entry("put the tool away", "stop using it"),
            Map.entry("for cutting that is the same", "too little to matter in cutting"),
            Map.entry("by (the|as) (same|much) all along|seams there alike", "equally wide, or in equal shares"),
            Map.entry("is then listed|by how much is listed", "you are told by how much"));

    /** Labels are short, and one of them names a kind of thing where the sentence names the thing. */
    private static final List<String> EXCEPT = List.of("editor.scale.lines.name");

    private final Words words = Words.english(LengthUnit.CM);

    @Test
    void oneThingHasOneName() {
        NAMES.forEach((not, rather) -> {
            Pattern name = Pattern.compile("(?i)\\b(" + not + ")\\b");
            assertThat(keys())
                    .filteredOn(key -> !EXCEPT.contains(key))
                    .filteredOn(key -> name.matcher(said(key)).find())
                    .as("%s: say %s", not, rather)
                    .isEmpty();
        });
    }

    @Test
    void linesAreSetAlike() {
        assertThat(keys()).allSatisfy(key -> {
            String line = words.bundle().getString(key);
            assertThat(line)
                    .as(key)
                    .doesNotContain("...")
                    .doesNotContain("\u201c", "\u201d", "\u2019")
                    .doesNotContain("} %")
                    .doesNotContainPattern("\\S  \\S")
                    .doesNotContainPattern(" [,.;:!?)]( |$)");
        });
    }

    /** What is wrong is said in sentences, and the last one is whole: with its stop, or with what can be typed. */
    @Test
    void findingsAndProblemsAreWholeSentences() {
        assertThat(keys())
                .filteredOn(
                        key -> key.startsWith("finding.") || key.startsWith("problem.") || key.startsWith("caution."))
                .allSatisfy(key ->
                        assertThat(words.bundle().getString(key)).as(key).matches("(?s)[A-Z{\"].*([.}\\]?]|[:,] .*)"));
    }

    /** Without the names of values, which are the program's own. */
    private String said(String key) {
        return words.bundle().getString(key).replaceAll("\\{[^}]*\\}", "");
    }

    private List<String> keys() {
        List<String> keys = new ArrayList<>(Collections.list(words.bundle().getKeys()));
        Collections.sort(keys);
        return keys;
    }
}
