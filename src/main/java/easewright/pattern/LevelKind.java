package easewright.pattern;

import java.util.Locale;

/** Where on the body a level lies. Names of girths follow ISO 8559-1:2017, clause 5.3 (see docs/sources.md). */
public enum LevelKind {
    NECK(false),
    BUST(false),
    UNDERBUST(false),
    WAIST(false),
    HIGH_HIP(false),
    HIP(false),
    UPPER_ARM(true),
    WRIST(true),
    THIGH(true),
    KNEE(true),
    CALF(true),
    ANKLE(true),
    OTHER(false);

    private final boolean limb;

    LevelKind(boolean limb) {
        this.limb = limb;
    }

    /** The word for it in files that are written by hand: "high hip". What is shown is in the bundle. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether the girth is that of one arm or one leg, so that one of a pair of pieces counts. */
    public boolean limb() {
        return limb;
    }
}
