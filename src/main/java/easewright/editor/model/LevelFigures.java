package easewright.editor.model;

import easewright.measure.LevelWidth;
import easewright.text.Words;
import java.util.Map;

/** How wide a piece is at a level, as it is told wherever a level is seen. */
public final class LevelFigures {
    private LevelFigures() {}

    /** @param width as it is told beside the other pieces of its girth */
    public static String of(LevelWidth part, String width, Words words) {
        return words.of(key(part) + ".figures", values("", part, width));
    }

    /** The same with the name of the level. */
    static String named(String level, LevelWidth part, String width, Words words) {
        return words.of(key(part), values(level, part, width));
    }

    private static String key(LevelWidth part) {
        return "editor.level.width" + (part.count() > 1 ? ".times" : "");
    }

    private static Map<String, Object> values(String level, LevelWidth part, String width) {
        return Map.of("level", level, "times", part.count(), "width", width);
    }
}
