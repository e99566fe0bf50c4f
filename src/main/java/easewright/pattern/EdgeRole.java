package easewright.pattern;

/** What an edge of a piece is for. */
public enum EdgeRole {
    SEAM(false),
    SHOULDER(true),
    NECK(true),
    ARMHOLE(true),
    CAP(true),
    CROTCH(true),
    WAIST(false),
    CENTRE(false),
    FOLD(true),
    HEM(false),
    OPENING(false),
    OTHER(false);

    private final boolean protectedByDefault;

    EdgeRole(boolean protectedByDefault) {
        this.protectedByDefault = protectedByDefault;
    }

    /** Whether such an edge keeps its shape and length unless the user agrees otherwise. */
    public boolean protectedByDefault() {
        return protectedByDefault;
    }
}
