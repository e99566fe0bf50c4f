package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.text.Lengths;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Body and garment at every level as two circles of those girths.
 *
 * @param words the same in a sentence, for those who do not see the picture
 */
public record Rings(List<Ring> rings) {
    public Rings {
        rings = List.copyOf(rings);
    }

    /** What is left for the garment around the widest body, as a multiple of the body: most ease is less than that. */
    private static final double ROOM = 1.2;

    /**
     * One level. Radii are girth / 2π, mm; the gap is the difference, the air all round if it were even.
     *
     * @param body 0 where the body girth is not known, or where no piece has the level
     */
    public record Ring(String level, double body, double garment, double gap, String words) {}

    /**
     * The radius that is drawn as large as there is room for, mm. It goes by the bodies, so that they stay as large as they
     * are while the ease changes; garments that need more room get it in steps.
     */
    public double widest() {
        double body = rings.stream().mapToDouble(Ring::body).max().orElse(0);
        double all = rings.stream()
                .mapToDouble(r -> Math.max(r.body(), r.garment()))
                .max()
                .orElse(1);
        double widest = ROOM * body;
        while (body > 0 && widest < all) {
            widest *= ROOM;
        }
        return body > 0 ? widest : all;
    }

    public static Rings of(Reading reading, Words words) {
        List<Ring> rings = new ArrayList<>();
        boolean stretches = reading.sheet().mayStretch();
        for (EaseLine line : reading.sheet().lines()) {
            double garment = line.finished() / (2 * Math.PI);
            boolean nowhere = line.girth().parts().isEmpty();
            double body = nowhere ? 0 : line.body().orElse(0) / (2 * Math.PI);
            double gap = body > 0 ? garment - body : 0;
            String name = line.name();
            String text = text(line, nowhere, gap, stretches, words);
            String said = new EaseText(words)
                    .sides(line.girth())
                    .map(sides -> text + " " + EaseWords.sentence(sides) + ".")
                    .orElse(text);
            rings.add(new Ring(name, body, garment, gap, Lengths.together(said)));
        }
        return new Rings(rings);
    }

    private static String text(EaseLine line, boolean nowhere, double gap, boolean stretches, Words words) {
        if (nowhere) {
            return words.of("editor.rings.nowhere");
        }
        if (line.body().isEmpty()) {
            return words.of(
                    "editor.rings.nobody", Map.of("level", line.name(), "garment", GirthText.finished(line, words)));
        }
        double ease = line.finished() - line.body().getAsDouble();
        return words.of(
                gap >= 0 ? "editor.rings.text" : stretches ? "editor.rings.stretched" : "editor.rings.too-small",
                Map.of(
                        "level", line.name(),
                        "garment", GirthText.finished(line, words),
                        "body", line.body().getAsDouble(),
                        "ease", Math.abs(ease),
                        "gap", Math.abs(gap),
                        "stretch.percent", line.stretchNeeded().orElse(0)));
    }
}
