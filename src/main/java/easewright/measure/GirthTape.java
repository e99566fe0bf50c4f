package easewright.measure;

import easewright.pattern.Level;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Adds up what the pieces of one garment measure at a level. */
final class GirthTape {
    private GirthTape() {}

    /** The girth at the level; two of a limb of which left and right have pieces of their own. */
    static List<Girth> at(Level level, Optional<String> size, List<PieceMeasures> pieces) {
        List<LevelWidth> widths = new ArrayList<>();
        boolean sided = false;
        for (PieceMeasures piece : pieces) {
            Optional<LevelWidth> width = piece.level(level.name());
            if (width.isPresent() && width.get().count() > 0) {
                widths.add(width.get());
                sided |= width.get().side() != Side.BOTH;
            }
        }
        return level.limb() && sided
                ? List.of(girth(level, size, Side.LEFT, widths), girth(level, size, Side.RIGHT, widths))
                : List.of(girth(level, size, Side.BOTH, widths));
    }

    private static Girth girth(Level level, Optional<String> size, Side side, List<LevelWidth> widths) {
        List<LevelWidth> parts = new ArrayList<>();
        double sum = 0;
        for (LevelWidth width : widths) {
            if (width.side().belongsTo(side)) {
                parts.add(width);
                sum += width.counted();
            }
        }
        return new Girth(level, size, side, sum, parts);
    }
}
