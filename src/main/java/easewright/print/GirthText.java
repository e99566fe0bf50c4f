package easewright.print;

import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.pattern.Pattern;
import easewright.text.Adding;
import easewright.text.Words;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Girths of the garment, and how wide the pieces are that they are the sum of, so told that what stands beside each other
 * adds up: a girth is what is told of the body and of the ease together, and the widths of its pieces come to it.
 */
public final class GirthText {
    private final Words words;
    private final Pattern pattern;

    /** @param pattern with the bodies that the girths are compared with */
    public GirthText(Words words, Pattern pattern) {
        this.words = words;
        this.pattern = pattern;
    }

    /** What is told of a girth, mm. */
    public double finished(Girth girth) {
        OptionalDouble body = girth.parts().isEmpty() ? OptionalDouble.empty() : EaseSheet.body(pattern, girth);
        return body.isPresent()
                ? words.sum(body.getAsDouble(), girth.finished() - body.getAsDouble())
                : words.shown(girth.finished());
    }

    /** The same of the girth in a line of the ease sheet. */
    public static double finished(EaseLine line, Words words) {
        return line.ease().isPresent()
                ? words.sum(line.body().getAsDouble(), line.ease().getAsDouble())
                : words.shown(line.finished());
    }

    /** What is told of the widths that a girth is the sum of, in their order. */
    public List<String> widths(Girth girth) {
        return parts(girth).said();
    }

    /** Whether who multiplies and adds what is told of the widths finds what is told of the girth, as nearly everybody does. */
    public boolean addsUp(Girth girth) {
        return parts(girth).addsUp();
    }

    private Adding parts(Girth girth) {
        return words.adding(
                girth.parts().stream().mapToDouble(LevelWidth::net).toArray(),
                girth.parts().stream().mapToInt(LevelWidth::count).toArray(),
                finished(girth));
    }

    /** What is told of how wide a piece is at a level: as one of the widths of its girth, if it counts in one. */
    public String width(GarmentMeasures measures, LevelWidth width) {
        for (Girth girth : measures.girths()) {
            for (int i = 0; i < girth.parts().size(); i++) {
                LevelWidth part = girth.parts().get(i);
                if (part.pieceId().equals(width.pieceId()) && part.level().equals(width.level())) {
                    return widths(girth).get(i);
                }
            }
        }
        return words.length(width.net());
    }
}
