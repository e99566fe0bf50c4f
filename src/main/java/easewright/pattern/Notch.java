package easewright.pattern;

import easewright.geom.Point;

/** A balance mark on the outline. Notches of the same name on mated edges meet. */
public record Notch(String name, Point at) {
    /**
     * @throws IllegalArgumentException if the name is blank
     */
    public Notch {
        Names.require(name, "notch");
    }
}
