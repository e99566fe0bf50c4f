package easewright.editor.model;

import easewright.measure.LevelWidth;
import easewright.text.Words;
import java.util.Map;

/** How wide a piece is at a level, as it is told wherever a level is seen. */
public final class LevelFigures {
    private LevelFigures() {}

    public static String of(LevelWidth part, Words words) {
        return words.of(key(part) + ".figures", values("", part));
    }

    /** The same with the name of the level. */
    static String named(String level, LevelWidth part, Words words) {
        return words.of(key(part), values(level, part));
    }

    private static String key(LevelWidth part) {
        return "editor.level.width" + (part.count() > 1 ? ".times" : "");
    }

    private static Map<String, Object> values(String level, LevelWidth part) {
        return Map.of("level", level, "times", part.count(), "width", part.net());
    }
}
