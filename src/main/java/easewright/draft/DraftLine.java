package easewright.draft;

/** A line of a draft that some measurements do not allow for; its name is in the bundle, under {@code draft-line.}. */
public enum DraftLine {
    DART,
    SLEEVE_CAP,
    FRONT_WAIST,
    BACK_WAIST,
    BACK_INSEAM,
    BACK_OUTSEAM,
    ROUNDED_CORNER
}
