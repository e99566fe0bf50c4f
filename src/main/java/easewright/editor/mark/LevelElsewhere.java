package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.measure.LevelGap;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.text.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is offered of a level for the other sizes of a nest, and for pieces that its girth leaves out. */
public final class LevelElsewhere {
    private final String level;
    private final Optional<String> size;
    private final List<String> lacking;
    private final List<String> unlike;
    private final boolean every;
    private final LevelLeftOut leftOut;

    private LevelElsewhere(
            String level,
            Optional<String> size,
            List<String> lacking,
            List<String> unlike,
            boolean every,
            LevelLeftOut leftOut) {
        this.level = level;
        this.size = size;
        this.lacking = lacking;
        this.unlike = unlike;
        this.every = every;
        this.leftOut = leftOut;
    }

    private static LevelElsewhere of(Desk desk, String level, LevelLeftOut leftOut, boolean placed) {
        // A size with some of its pieces only is told by what its girth leaves out.
        List<String> lacking = LevelInSizes.lacking(desk.pattern(), level).stream()
                .filter(s -> !leftOut.sizes().contains(s))
                .toList();
        List<String> unlike =
                placed || leftOut.isAny() ? List.of() : LevelInSizes.unlike(desk.pattern(), level, desk.size());
        boolean every = lacking.size() + 1 >= PatternPart.sizes(desk.pattern()).size() && lacking.size() > 1;
        return new LevelElsewhere(level, desk.size(), lacking, unlike, every, leftOut);
    }

    /** Where nothing is offered. */
    static LevelElsewhere nothing(String level) {
        return new LevelElsewhere(level, Optional.empty(), List.of(), List.of(), false, LevelLeftOut.NOTHING);
    }

    /** Of all levels of the pattern, by their names: what they leave out is looked for once. */
    public static Map<String, LevelElsewhere> of(Desk desk) {
        Pattern pattern = desk.pattern();
        List<LevelGap> gaps = LevelGap.of(pattern, desk.reading().measures());
        Map<String, LevelElsewhere> all = new HashMap<>();
        for (Level level : pattern.levels()) {
            LevelLeftOut leftOut = LevelLeftOut.of(pattern, gaps, level.name());
            all.put(level.name(), of(desk, level.name(), leftOut, false));
        }
        return all;
    }

    /** Of one that is being put on pieces: nothing is said of sizes that have it, nor of pieces left out. */
    public static LevelElsewhere ofPlaced(Desk desk, String level) {
        return of(desk, level, LevelLeftOut.NOTHING, true);
    }

    /** The pieces that the girth leaves out. */
    public LevelLeftOut leftOut() {
        return leftOut;
    }

    /** Whether there is anything to offer for other sizes. */
    public boolean isOffered() {
        return !lacking.isEmpty() || !unlike.isEmpty();
    }

    /** What the press says. */
    public String press(Words words) {
        if (lacking.isEmpty()) {
            return words.of("editor.level.as-here", Map.of("size", size.orElse("")));
        }
        String key = every ? ".all" : lacking.size() > 1 ? ".several" : "";
        return words.of("editor.level.everywhere" + key, Map.of("sizes", lacking));
    }

    /** What it does. */
    public String hint(Words words) {
        return lacking.isEmpty()
                ? words.of("editor.level.as-here.hint", Map.of("size", size.orElse("")))
                : words.of("editor.level.everywhere.hint", Map.of("level", level));
    }

    /** The pattern with it done. */
    public Pattern of(Pattern pattern) {
        return lacking.isEmpty() && size.isPresent()
                ? LevelInSizes.asIn(pattern, level, size.get())
                : LevelInSizes.everywhere(pattern, level, size);
    }
}
