package easewright.editor.model;

import easewright.draft.Recipe;
import easewright.draft.Samples;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;

/**
 * A garment to try things out on, drafted when it is opened.
 *
 * @param picture its pieces as path data, within {@value #WIDE} × {@value #HIGH} pixels, drawn beforehand
 */
public record Sample(String id, String picture) {
    public static final double WIDE = 104;
    public static final double HIGH = 68;

    /** All samples, without drafting any. */
    public static List<Sample> all() {
        Properties pictures = new Properties();
        try (InputStream in = Sample.class.getResourceAsStream("/easewright/editor/sample-pictures.properties")) {
            pictures.load(Objects.requireNonNull(in));
        } catch (IOException e) {
            throw new UncheckedIOException("A part of the program is missing", e);
        }
        return Recipe.all().stream()
                .map(r -> new Sample(r.garment(), pictures.getProperty(r.garment(), "")))
                .toList();
    }

    public String title(Words words) {
        return words.of("editor.sample." + id);
    }

    public String fileName() {
        return id + ".svg";
    }

    /** The sample as if it had been opened from a file. */
    public SvgFile read() throws SvgProblem {
        Recipe recipe = Recipe.all().stream()
                .filter(r -> r.garment().equals(id))
                .findFirst()
                .orElseThrow();
        String svg =
                Samples.svg(recipe.draft(recipe.sample(), Map.of(), Map.of()).draft());
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), fileName());
    }
}
