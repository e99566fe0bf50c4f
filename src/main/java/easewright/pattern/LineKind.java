package easewright.pattern;

/** What the drawn outline of a piece stands for. */
public enum LineKind {
    STITCHING,
    CUTTING
}
