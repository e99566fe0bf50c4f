package easewright.editor.model;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What saving does to the drawing that was opened.
 *
 * @param of           the pattern that would be saved
 * @param redrawn      names of the pieces whose lines are drawn anew; all other lines stay as they are in the file
 * @param consequences what else becomes of drawn lines
 */
public record SavingDoes(Pattern of, List<String> redrawn, List<Finding> consequences) {
    public SavingDoes {
        redrawn = List.copyOf(redrawn);
        consequences = List.copyOf(consequences);
    }

    public static SavingDoes by(SvgFile.Written written, Pattern of) {
        return new SavingDoes(of, written.redrawn(), written.consequences());
    }

    /** In whole sentences: which lines, and what else becomes of some. */
    public String whole(Words words) {
        List<String> said = new ArrayList<>();
        said.add(words.of(
                redrawn.isEmpty() ? "editor.saving.whole.marks" : "editor.saving.whole.lines",
                Map.of("pieces", redrawn)));
        consequences.forEach(found -> said.add(words.of(found)));
        return String.join(" ", said);
    }

    /** The same once it is done. */
    public String done(Words words) {
        return words.of(
                redrawn.isEmpty() ? "editor.saving.done.marks" : "editor.saving.done.lines", Map.of("pieces", redrawn));
    }
}
