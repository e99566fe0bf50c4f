package easewright.editor.model;

import easewright.draft.Draft;
import easewright.draft.Garment;
import easewright.draft.Samples;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A garment to try things out on, drafted on the spot.
 *
 * @param title what it is, in words
 */
public record Sample(String id, String title, Draft draft) {
    public static List<Sample> all() {
        List<Sample> samples = new ArrayList<>();
        for (Draft draft : Samples.drafts()) {
            Garment garment = draft.draft();
            samples.add(new Sample(garment.id(), garment.title(), draft));
        }
        return List.copyOf(samples);
    }

    public String fileName() {
        return id + ".svg";
    }

    /** The sample as if it had been opened from a file. */
    public SvgFile read() throws SvgProblem {
        return SvgFile.read(Samples.svg(draft.draft()).getBytes(StandardCharsets.UTF_8), fileName());
    }
}
