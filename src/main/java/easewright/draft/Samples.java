package easewright.draft;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.svg.MarksBlock;
import easewright.svg.SvgProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The sample garments: drawing, body file and text for each, by file name. */
public final class Samples {
    private Samples() {}

    /** The drafts, each for one of {@link SampleBodies our invented people}. */
    public static List<Draft> drafts() {
        return Recipe.all().stream()
                .map(r -> r.draft(r.sample(), Map.of(), Map.of()))
                .toList();
    }

    /**
     * All files of the sample directory: file name to text.
     *
     * @throws SvgProblem if a name cannot be written into an SVG file
     */
    public static Map<String, String> files() throws SvgProblem {
        Map<String, String> files = new TreeMap<>();
        for (Draft draft : drafts()) {
            Garment garment = draft.draft();
            files.put(garment.id() + ".svg", svg(garment));
            files.put(garment.id() + ".body.txt", bodyText(draft.body()));
            files.put(garment.id() + ".md", words(garment));
        }
        Garment sized = SizedSkirt.draft();
        files.put(sized.id() + ".svg", svg(sized));
        files.put(sized.id() + ".body.txt", bodyText(SizedSkirt.bodies()));
        files.put(sized.id() + ".md", words(sized));
        return files;
    }

    /**
     * The drawing of a garment with its marks, to be stored as UTF-8.
     *
     * @throws SvgProblem if a name cannot be written into an SVG file
     */
    public static String svg(Garment garment) throws SvgProblem {
        return SvgSheet.of(garment, MarksBlock.text(garment.pattern()));
    }

    static String bodyText(Body body) {
        List<String> lines = new ArrayList<>();
        lines.add("# Measurements of an invented person; names after ISO 8559-1.");
        lines.add("Name: " + body.name());
        for (BodyMeasure measure : body.measures()) {
            String level = measure.level().isEmpty() ? "" : " @" + measure.level();
            lines.add(measure.name() + level + ": " + Facts.cm(measure.mm()) + " cm");
        }
        return String.join("\n", lines) + "\n";
    }

    /** One body for each size. */
    static String bodyText(Map<String, Body> bySize) {
        List<String> parts = new ArrayList<>();
        parts.add("# Measurements for each size; names after ISO 8559-1.\n");
        bySize.forEach((size, body) -> {
            String own = bodyText(body);
            parts.add("Size: " + size + "\n" + own.substring(own.indexOf('\n') + 1));
        });
        return String.join("\n", parts);
    }

    private static String words(Garment garment) {
        StringBuilder text = new StringBuilder("# " + garment.title() + "\n\n");
        boolean person = garment.pattern().bodies().isEmpty();
        text.append(garment.facts().get(0)).append(person ? " The person is invented.\n\n" : "\n\n");
        text.append("Drawn at full scale, millimetres; thin lines are stitching lines, heavy lines cutting lines.\n\n");
        text.append("## Where the drafting rules come from\n\n");
        garment.rules().forEach(rule -> text.append("- ").append(rule).append('\n'));
        text.append("\n## Allowances\n\n");
        garment.pattern().pieces().forEach(piece -> {
            text.append("- ").append(piece.name()).append(": ");
            List<String> edges = piece.edges().stream()
                    .map(e -> String.format(
                            Locale.ROOT,
                            "%s %s cm",
                            e.name(),
                            Facts.cm(e.allowance().orElse(0))))
                    .toList();
            text.append(String.join(", ", edges)).append(".\n");
        });
        return text.toString();
    }
}
