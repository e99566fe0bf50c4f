package easewright.editor.model;

import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.print.EaseText;
import easewright.text.Words;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;

/** How wide a piece is at a level, as it is told wherever a level is seen. */
public final class LevelFigures {
    private LevelFigures() {}

    /** What is rounded so that the girth as it is shown is not the sum of what is shown of it: these very parts. */
    public static Set<LevelWidth> rounded(GarmentMeasures measures, Words words) {
        Set<LevelWidth> rounded = Collections.newSetFromMap(new IdentityHashMap<>());
        EaseText text = new EaseText(words);
        for (Girth girth : measures.girths()) {
            if (!text.addsUp(girth)) {
                girth.parts().stream().filter(part -> part.count() > 0).forEach(rounded::add);
            }
        }
        return rounded;
    }

    /**
     * @param about whether it is rounded
     */
    public static String of(LevelWidth part, boolean about, Words words) {
        return words.of(key(part) + ".figures" + (about ? ".about" : ""), values("", part));
    }

    /** The same with the name of the level. */
    static String named(String level, LevelWidth part, boolean about, Words words) {
        return words.of(key(part) + (about ? ".about" : ""), values(level, part));
    }

    private static String key(LevelWidth part) {
        return "editor.level.width" + (part.count() > 1 ? ".times" : "");
    }

    private static Map<String, Object> values(String level, LevelWidth part) {
        return Map.of("level", level, "times", part.count(), "width", part.net());
    }
}
