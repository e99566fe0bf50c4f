package easewright.alter;

/** How a change dies away between the chosen point and the fixed points. */
public enum Taper {
    /** Evenly: a straight seam stays straight and gains a corner at the chosen point. */
    STRAIGHT,
    /** By 3τ² − 2τ³: the seam keeps its direction at the fixed points and at the chosen point. */
    SMOOTH
}
