package easewright.measure;

import easewright.pattern.Level;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Adds up what the pieces of one garment measure at a level. */
final class GirthTape {
    private GirthTape() {}

    /** The girth at the level; two of a limb of which left and right have pieces of their own. */
    static List<Girth> at(Level level, Optional<String> size, List<PieceMeasures> pieces) {
        List<LevelWidth> widths = new ArrayList<>();
        Set<Side> sides = EnumSet.noneOf(Side.class);
        for (PieceMeasures piece : pieces) {
            Optional<LevelWidth> width = piece.level(level.name());
            if (width.isPresent() && width.get().count() > 0) {
                widths.add(width.get());
                sides.add(width.get().side());
            }
        }
        sides.remove(Side.BOTH);
        if (!level.limb() || sides.isEmpty()) {
            return List.of(girth(level, size, Side.BOTH, widths));
        }
        List<Girth> limbs = new ArrayList<>();
        for (Side side : sides) {
            limbs.add(girth(level, size, side, widths));
        }
        return limbs;
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
