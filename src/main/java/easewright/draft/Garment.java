package easewright.draft;

import easewright.pattern.Pattern;
import java.util.List;

/**
 * A drafted garment.
 *
 * @param id    file name without its end
 * @param title heading of the drawing
 * @param facts lines below the heading: for whom, with what ease
 * @param rules the drafting rules used, each with source and standing, as Markdown list items
 */
public record Garment(
        String id, String title, List<String> facts, List<String> rules, Pattern pattern, List<PieceDraft.Face> faces) {
    public Garment {
        facts = List.copyOf(facts);
        rules = List.copyOf(rules);
        faces = List.copyOf(faces);
    }
}
