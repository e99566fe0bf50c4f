package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.paint.Ink;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Words stand out from their ground by 4.5 to 1, and what shows where a field is by 3 to 1: W3C, Web Content
 * Accessibility Guidelines 2.2, success criteria 1.4.3 and 1.4.11; the formula is that of its glossary under "contrast
 * ratio" (from memory).
 */
class ContrastTest {
    /** What words of the sheet stand on. */
    private static final List<String> GROUNDS = List.of(
            "-color-bg-default", "-color-bg-subtle", "-color-bg-overlay", "-color-accent-subtle", "-ease-change-wash");

    private static final double WORDS = 4.5;
    private static final double SHAPES = 3;

    private static double light(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double part) {
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }

    private static double contrast(Color one, Color other) {
        double a = light(one);
        double b = light(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    @Test
    void blackOnWhiteIsTheGreatest() {
        assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
    }

    private static Map<String, Color> colours(String light) throws IOException {
        String css = Files.readString(Path.of("src/main/resources/easewright/editor/editor.css"));
        String block = css.substring(css.indexOf(".editor." + light));
        Matcher each = Pattern.compile("(-[\\w-]+): (#\\w{6});").matcher(block.substring(0, block.indexOf('}')));
        Map<String, Color> colours = new TreeMap<>();
        while (each.find()) {
            colours.put(each.group(1), Color.web(each.group(2)));
        }
        return colours;
    }

    @ParameterizedTest
    @CsvSource({"by-day", "by-lamp"})
    void wordsOfTheSheetStandOut(String light) throws IOException {
        Map<String, Color> colours = colours(light);
        for (String ground : GROUNDS) {
            for (String words : List.of(
                    "-color-fg-default", "-color-fg-muted", "-color-accent-fg", "-color-danger-fg", "-ease-change")) {
                assertThat(contrast(colours.get(words), colours.get(ground)))
                        .as("%s on %s", words, ground)
                        .isGreaterThanOrEqualTo(WORDS);
            }
        }
        assertThat(contrast(colours.get("-color-fg-subtle"), colours.get("-color-bg-default")))
                .as("what a field asks for")
                .isGreaterThanOrEqualTo(WORDS);
        assertThat(contrast(Color.WHITE, colours.get("-color-accent-emphasis"))).isGreaterThanOrEqualTo(WORDS);
    }

    @ParameterizedTest
    @CsvSource({"by-day", "by-lamp"})
    void fieldsAreSeenByTheirLine(String light) throws IOException {
        Map<String, Color> colours = colours(light);
        for (String ground : List.of("-color-bg-default", "-color-bg-subtle", "-color-accent-subtle")) {
            assertThat(contrast(colours.get("-ease-field-line"), colours.get(ground)))
                    .as(ground)
                    .isGreaterThanOrEqualTo(SHAPES);
        }
    }

    /** What cannot be pressed is exempt there, and is to be read all the same: as plain as other words, and never faded. */
    @ParameterizedTest
    @CsvSource({"by-day", "by-lamp"})
    void whatCannotBePressedIsStillLegible(String light) throws IOException {
        Map<String, Color> colours = colours(light);
        for (String ground : GROUNDS) {
            assertThat(contrast(colours.get("-ease-off"), colours.get(ground)))
                    .as(ground)
                    .isGreaterThanOrEqualTo(WORDS);
        }
        String css = Files.readString(Path.of("src/main/resources/easewright/editor/editor.css"));
        for (String control : List.of(".button", ".toggle-button", ".label", ".check-box", ".radio-button")) {
            Matcher rule = Pattern.compile(
                            "(?m)^[^{}]*" + Pattern.quote(control) + ":disabled[,\\s][^{}]*\\{([^}]*)\\}")
                    .matcher(css);
            assertThat(rule.find()).as(control).isTrue();
            assertThat(rule.group(1)).as(control).contains("-fx-opacity: 1;").contains("-fx-text-fill: -ease-off;");
        }
    }

    @Test
    void wordsOnTheTableStandOut() {
        for (Ink ink : List.of(Ink.LIGHT, Ink.DARK)) {
            for (Color words : List.of(ink.text(), ink.quiet(), ink.level(), ink.moved(), ink.guard())) {
                assertThat(contrast(words, ink.paper())).isGreaterThanOrEqualTo(WORDS);
            }
            assertThat(contrast(ink.quiet(), ink.table())).isGreaterThanOrEqualTo(WORDS);
            assertThat(contrast(ink.levelText(), ink.level())).isGreaterThanOrEqualTo(WORDS);
            assertThat(contrast(ink.paper(), ink.moved())).as("the amount").isGreaterThanOrEqualTo(WORDS);
            assertThat(contrast(ink.line(), ink.paper())).isGreaterThanOrEqualTo(SHAPES);
            assertThat(contrast(ink.ghost(), ink.paper())).as("dots are thin").isGreaterThanOrEqualTo(WORDS);
        }
    }

    /** Of a size in which nothing is done the lines are followed, on the table and on its paper or that of a size in hand. */
    @Test
    void piecesAsideAreQuieterAndStillLegible() {
        for (Ink ink : List.of(Ink.LIGHT, Ink.DARK)) {
            Ink aside = ink.aside();
            for (Color ground : List.of(ink.table(), ink.paper(), aside.paper())) {
                for (Color line : List.of(aside.line(), aside.quiet(), aside.level(), aside.moved(), aside.guard())) {
                    assertThat(contrast(line, ground)).isGreaterThanOrEqualTo(SHAPES);
                }
                assertThat(contrast(aside.line(), ground)).isLessThan(contrast(ink.line(), ground) / 1.8);
                assertThat(contrast(ink.quiet(), ground)).as("their names").isGreaterThanOrEqualTo(WORDS);
            }
        }
    }
}
