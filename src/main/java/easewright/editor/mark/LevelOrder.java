package easewright.editor.mark;

import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import java.util.Optional;

/** How levels follow each other down the body, as far as their kinds tell. */
public final class LevelOrder {
    private LevelOrder() {}

    /** Whether a level lies above another one on the body, as far as their kinds tell. */
    public static boolean isAbove(Pattern pattern, String level, String other) {
        Optional<Level> here = pattern.level(level);
        Optional<Level> there = pattern.level(other);
        return here.isPresent() && there.isPresent() && isAbove(here.get(), there.get());
    }

    /** The same of levels that need not be marked yet. */
    static boolean isAbove(Level level, Level other) {
        return isOfTheTrunk(level) && isOfTheTrunk(other) && level.kind().compareTo(other.kind()) < 0;
    }

    /**
     * Whether the distance of a level is stated from another one, as far as their kinds tell: on the trunk from any, on
     * an arm or a leg from one higher up, and on a leg from the trunk too.
     */
    static boolean isReferenceOf(Level level, Level other) {
        if (level.kind() == LevelKind.OTHER || other.kind() == LevelKind.OTHER) {
            return true;
        }
        if (isOfTheArm(level) || isOfTheArm(other)) {
            return isOfTheArm(level) && isOfTheArm(other) && other.kind().compareTo(level.kind()) < 0;
        }
        return !other.kind().limb() || level.kind().limb() && other.kind().compareTo(level.kind()) < 0;
    }

    private static boolean isOfTheArm(Level level) {
        return level.kind() == LevelKind.UPPER_ARM || level.kind() == LevelKind.WRIST;
    }

    /** The kinds of these stand in the order in which they follow down the body. */
    private static boolean isOfTheTrunk(Level level) {
        return !level.kind().limb() && level.kind() != LevelKind.OTHER;
    }
}
