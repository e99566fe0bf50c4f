package easewright.editor.model;

import easewright.ease.EaseLine;
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

    /**
     * One level. Radii are girth / 2π, mm; the gap is the difference, the air all round if it were even.
     *
     * @param body 0 where the body girth is not known
     */
    public record Ring(String level, double body, double garment, double gap, String words) {}

    public static Rings of(Reading reading, Words words) {
        List<Ring> rings = new ArrayList<>();
        for (EaseLine line : reading.sheet().lines()) {
            double garment = line.finished() / (2 * Math.PI);
            double body = line.body().orElse(0) / (2 * Math.PI);
            double gap = line.body().isPresent() ? garment - body : 0;
            String name = line.name();
            String text;
            if (line.body().isEmpty()) {
                text = words.of("editor.rings.nobody", Map.of("level", name, "garment", line.finished()));
            } else {
                double ease = line.finished() - line.body().getAsDouble();
                text = words.of(
                        gap >= 0 ? "editor.rings.text" : "editor.rings.stretched",
                        Map.of(
                                "level", name,
                                "garment", line.finished(),
                                "body", line.body().getAsDouble(),
                                "ease", Math.abs(ease),
                                "gap", Math.abs(gap),
                                "stretch.percent", line.stretchNeeded().orElse(0)));
            }
            rings.add(new Ring(name, body, garment, gap, text));
        }
        return new Rings(rings);
    }
}
